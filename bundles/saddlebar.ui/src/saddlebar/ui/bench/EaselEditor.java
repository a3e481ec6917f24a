package saddlebar.ui.bench;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.preference.IPreferenceStore;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.ISaveablesSource;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.Saveable;
import org.eclipse.ui.contexts.IContextService;
import org.eclipse.ui.operations.UndoRedoActionGroup;
import org.eclipse.ui.part.EditorPart;

import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.production.light.PlacedMend;
import saddlebar.ui.Ids;
import saddlebar.ui.Messages;
import saddlebar.ui.StudioPreferences;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.FileDrop;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.desk.SaveableParts;
import saddlebar.ui.easel.EaselCanvas;
import saddlebar.production.light.EaselScene;
import saddlebar.ui.make.MonitorWork;
import saddlebar.ui.problems.ProblemBoard;
import saddlebar.ui.properties.PropertiesPage;
import saddlebar.production.light.SceneReader;
import saddlebar.production.light.WindowSketch;
import saddlebar.production.light.WindowSketcher;
import saddlebar.ui.tree.StateBoard;

/** The Easel with one window on it. */
public final class EaselEditor extends EditorPart implements ISaveablesSource {
    private CommissionDesk desk;
    private WindowInput input;
    private EaselCanvas easel;
    private EaselSelection selection;
    private SaveableParts saveables;
    private StateBoard states;
    private final Runnable onStates = this::showStates;
    private Job reading;
    private WindowSketch shown;
    private boolean whole;
    private final IPreferenceStore preferences = StudioPreferences.store();
    private final IPropertyChangeListener onPreferences = event -> applyPreferences();
    private final CommissionDesk.Listener onDesk = new CommissionDesk.Listener() {
        @Override
        public void opened(OpenCommission commission) {
            if (commission.path().equals(input.commission())) {
                saveables.opened(commission);
                firePropertyChange(PROP_DIRTY);
                selection.forget();
                read();
                easel.scene().ifPresent(scene -> selection.sceneShown());
            }
        }

        @Override
        public void closing(OpenCommission commission) {
            stopReading();
            saveables.closing();
        }

        @Override
        public void changed(OpenCommission commission) {
            saveables.changed();
            firePropertyChange(PROP_DIRTY);
            read();
        }
    };

    @Override
    public void init(IEditorSite site, IEditorInput editorInput) throws PartInitException {
        if (!(editorInput instanceof WindowInput window)) {
            throw new PartInitException("the Easel shows windows, not " + editorInput.getName());
        }
        setSite(site);
        setInput(editorInput);
        input = window;
        setPartName(window.windowName());
        desk = site.getService(CommissionDesk.class);
        selection = new EaselSelection(this);
        site.setSelectionProvider(selection);
        saveables = new SaveableParts(this);
    }

    @Override
    public void createPartControl(Composite parent) {
        easel = new EaselCanvas(parent);
        ours().ifPresent(commission -> easel.setColours(commission.colours()));
        applyPreferences();
        easel.whenChosen(piece -> selection.chosenOnEasel(piece));
        easel.addListener(SWT.Skin, event -> applyPreferences());
        new FileDrop(getSite().getWorkbenchWindow()).on(easel);
        MenuManager menu = new MenuManager(null, Ids.EASEL_MENU);
        easel.setMenu(menu.createContextMenu(easel));
        getSite().registerContextMenu(Ids.EASEL_MENU, menu, selection);
        getSite().getService(IContextService.class).activateContext(Ids.EASEL_CONTEXT);
        new EaselStatus(this, easel);
        getSite().getPage().addSelectionListener(selection);
        preferences.addPropertyChangeListener(onPreferences);
        JFaceResources.getColorRegistry().addListener(onPreferences);
        desk.addListener(onDesk);
        states = getSite().getService(StateBoard.class);
        states.addListener(onStates);
        ours().ifPresent(commission -> {
            saveables.begin(ours());
            new UndoRedoActionGroup(getSite(), commission.edits().context(), true).fillActionBars(getEditorSite().getActionBars());
        });
        read();
    }

    @Override
    public void dispose() {
        if (desk != null) {
            desk.removeListener(onDesk);
            stopReading();
        }
        if (states != null) {
            states.removeListener(onStates);
        }
        if (selection != null) {
            getSite().getPage().removeSelectionListener(selection);
        }
        preferences.removePropertyChangeListener(onPreferences);
        JFaceResources.getColorRegistry().removeListener(onPreferences);
        super.dispose();
    }

    public EaselCanvas easel() {
        return easel;
    }

    public WindowInput window() {
        return input;
    }

    /** The commission of this window, if it lies open. */
    public Optional<OpenCommission> ours() {
        return desk.commission().filter(commission -> commission.path().equals(input.commission()));
    }

    /** The model's pieces of the window by their ids. */
    Map<String, Piece> pieces() {
        Map<String, Piece> pieces = new HashMap<>();
        modelWindow().ifPresent(window -> window.getPanels().forEach(panel -> panel.getPieces().forEach(piece -> pieces.put(piece.getId(), piece))));
        return pieces;
    }

    /** The chosen pieces that have been made, in the model. */
    public List<Piece> chosenPieces() {
        Map<String, Piece> known = pieces();
        return easel.allChosen().stream().map(piece -> known.get(piece.id())).filter(Objects::nonNull).toList();
    }

    /** The window in the model, if its commission lies open. */
    public Optional<Window> modelWindow() {
        return ours().flatMap(commission -> commission.window(input.windowName()));
    }

    /** The model's layer of an id, if the window has it. */
    Optional<DesignLayer> layer(String id) {
        return ours().flatMap(commission -> commission.window(input.windowName())).stream().flatMap(window -> window.getPanels().stream())
                .flatMap(panel -> panel.getLayers().stream()).filter(layer -> id.equals(layer.getId())).findFirst();
    }

    private void applyPreferences() {
        if (easel != null && !easel.isDisposed()) {
            easel.setScreenDpi(StudioPreferences.screenDpi());
            easel.setRuler(StudioPreferences.ruler());
            easel.setLook(easel.look().withSurroundRgb(StudioPreferences.surroundRgb(easel)).withLight(StudioPreferences.light()));
        }
    }

    /** Takes the window's sketch from the model here and now, and reads the artwork after it in a job. */
    private void read() {
        Optional<OpenCommission> commission = ours();
        if (commission.isEmpty()) {
            shown = null;
            easel.clear();
            easel.say(Messages.Easel_notOpen);
            return;
        }
        try {
            Optional<Window> window = commission.get().window(input.windowName());
            if (window.isEmpty()) {
                easel.clear();
                easel.say(NLS.bind(Messages.Easel_noSuchWindow, input.windowName()));
                return;
            }
            nameAfter(window.get());
            WindowSketch sketch = new WindowSketcher(commission.get().path(), commission.get().commission()).sketch(window.get());
            if (onlyOtherColours(sketch)) {
                shown = sketch;
                easel.scene().ifPresent(scene -> easel.show(scene.coloured(sketch)));
            } else if (!sketch.equals(shown)) {
                startReading(commission.get(), sketch, chosenColourway(window.get()));
            }
        } catch (Refusal e) {
            easel.clear();
            easel.say(e.getMessage());
        }
    }

    /** Then the artwork need not be read again. */
    private boolean onlyOtherColours(WindowSketch sketch) {
        return shown != null && whole && !sketch.equals(shown) && sketch.uncoloured().equals(shown.uncoloured());
    }

    private void nameAfter(Window window) {
        String title = window.getTitle();
        setPartName(title == null || title.isBlank() ? input.windowName() : input.windowName() + " " + title);
    }

    private static int chosenColourway(Window window) {
        Colourway chosen = window.getChosen();
        return chosen == null ? 0 : Math.max(0, window.getColourways().indexOf(chosen));
    }

    private void startReading(OpenCommission commission, WindowSketch sketch, int colourway) {
        stopReading();
        boolean first = shown == null;
        shown = sketch;
        whole = false;
        if (easel.scene().isEmpty()) {
            easel.say(Messages.Easel_reading);
        }
        SceneReader reader = new SceneReader(commission.shelf());
        reading = Job.create(NLS.bind(Messages.Easel_readingJob, input.windowName()), (ICoreRunnable) monitor -> readScene(reader, sketch, monitor,
                first ? Optional.of(colourway) : Optional.empty()));
        reading.schedule();
    }

    private void readScene(SceneReader reader, WindowSketch sketch, IProgressMonitor monitor, Optional<Integer> colourway) throws CoreException {
        try {
            SubMonitor progress = SubMonitor.convert(monitor, (int) Math.max(1, SceneReader.units(sketch)));
            EaselScene read = reader.read(sketch, new MonitorWork(progress), soFar -> inScreenThread(() -> show(sketch, soFar, colourway)));
            inScreenThread(() -> {
                show(sketch, read, Optional.empty());
                told(sketch, read, reader.mends());
            });
        } catch (CancellationException e) {
            throw new OperationCanceledException();
        } catch (IOException | Refusal e) {
            inScreenThread(() -> {
                easel.clear();
                easel.say(e.getMessage());
            });
            throw new CoreException(new Status(IStatus.ERROR, Ids.PLUGIN, e.getMessage(), e));
        }
    }

    private void inScreenThread(Runnable task) {
        getSite().getShell().getDisplay().asyncExec(() -> {
            if (!easel.isDisposed()) {
                task.run();
            }
        });
    }

    private void show(WindowSketch sketch, EaselScene scene, Optional<Integer> colourway) {
        if (sketch != shown) {
            return; // the window has changed since
        }
        if (easel.scene().isEmpty()) {
            colourway.ifPresent(index -> easel.setLook(easel.look().withColourway(index)));
        }
        easel.say(scene.isEmpty() ? Messages.Easel_noArtwork : "");
        easel.show(scene.withStates(states.states().pieces()));
        selection.sceneShown();
    }

    private void showStates() {
        easel.scene().filter(scene -> !scene.isEmpty()).ifPresent(scene -> {
            EaselScene now = scene.withStates(states.states().pieces());
            if (!now.states().equals(scene.states())) {
                easel.show(now);
            }
        });
    }

    private void told(WindowSketch sketch, EaselScene scene, List<PlacedMend> mends) {
        if (sketch == shown) {
            whole = true;
            getSite().getService(ProblemBoard.class).put(input.windowName(), ProblemBoard.of(input.windowName(), scene.problems()), mends);
        }
    }

    private void stopReading() {
        if (reading != null) {
            reading.cancel();
            reading = null;
        }
    }

    @Override
    public void setFocus() {
        easel.setFocus();
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        if (adapter == EaselCanvas.class) {
            return adapter.cast(easel);
        }
        T properties = PropertiesPage.adapt(adapter, this);
        return properties != null ? properties : super.getAdapter(adapter);
    }

    // ---- saving

    @Override
    public boolean isDirty() {
        return saveables != null && saveables.isDirty();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        // the workbench saves the saveables
    }

    @Override
    public void doSaveAs() {
        throw new UnsupportedOperationException("a window stays in its commission");
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }

    @Override
    public Saveable[] getSaveables() {
        return saveables.saveables();
    }

    @Override
    public Saveable[] getActiveSaveables() {
        return saveables.saveables();
    }
}
