package saddlebar.ui.colourway;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.preference.IPreferenceStore;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.EditorPart;

import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.production.light.EaselScene;
import saddlebar.production.light.SceneReader;
import saddlebar.production.light.WindowSketch;
import saddlebar.production.light.WindowSketcher;
import saddlebar.ui.Ids;
import saddlebar.ui.Messages;
import saddlebar.ui.StudioPreferences;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.make.MonitorWork;
import saddlebar.ui.properties.PropertiesPage;

/** Two or more colourways of a window beside each other, looked at in one light and at one place; below, where they differ and what that costs. */
public final class SideBySideEditor extends EditorPart {
    private static final int LEAST = 2;
    private static final int MOST = 4;

    private CommissionDesk desk;
    private SideBySideInput input;
    private SashForm row;
    private Button more;
    private Button fewer;
    private DifferenceTable table;
    private final List<BesidePicture> pictures = new ArrayList<>();
    private Optional<EaselScene> scene = Optional.empty();
    private WindowSketch shown;
    private Job reading;
    private final IPreferenceStore preferences = StudioPreferences.store();
    private final IPropertyChangeListener onPreferences = event -> Display.getDefault().asyncExec(this::refresh);
    private final CommissionDesk.Listener onDesk = new CommissionDesk.Listener() {
        @Override
        public void opened(OpenCommission commission) {
            refresh();
        }

        @Override
        public void closing(OpenCommission commission) {
            shown = null;
            pictures.forEach(picture -> picture.clear(Messages.Easel_notOpen));
        }

        @Override
        public void changed(OpenCommission commission) {
            refresh();
        }
    };

    @Override
    public void init(IEditorSite site, IEditorInput editorInput) throws PartInitException {
        if (!(editorInput instanceof SideBySideInput besides)) {
            throw new PartInitException("colourways of windows lie side by side, not " + editorInput.getName());
        }
        setSite(site);
        setInput(editorInput);
        input = besides;
        setPartName(input.getName());
        desk = site.getService(CommissionDesk.class);
    }

    @Override
    public void createPartControl(Composite parent) {
        SashForm body = new SashForm(parent, SWT.VERTICAL);
        Composite upper = new Composite(body, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).applyTo(upper);
        row = new SashForm(upper, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).applyTo(row);
        more = new Button(upper, SWT.PUSH);
        more.setText(ColourWords.Beside_more);
        more.addListener(SWT.Selection, event -> add());
        fewer = new Button(upper, SWT.PUSH);
        fewer.setText(ColourWords.Beside_fewer);
        fewer.addListener(SWT.Selection, event -> takeAway());
        table = new DifferenceTable(body, this::choose);
        body.setWeights(7, 3);
        for (int i = 0; i < LEAST; i++) {
            hang(i);
        }
        preferences.addPropertyChangeListener(onPreferences);
        desk.addListener(onDesk);
        getSite().setSelectionProvider(table.selection());
        refresh();
    }

    private void hang(int colourway) {
        BesidePicture picture = new BesidePicture(row, colourway, this::differences);
        for (BesidePicture other : pictures) {
            other.link(picture);
            picture.link(other);
        }
        picture.whenChosen(id -> {
            pictures.forEach(each -> each.choose(id));
            table.mark(id);
        });
        pictures.add(picture);
    }

    private void add() {
        if (pictures.size() < MOST) {
            hang(pictures.size() % Math.max(1, colourways()));
            row.layout(true);
            show();
        }
    }

    private void takeAway() {
        if (pictures.size() > LEAST) {
            BesidePicture last = pictures.remove(pictures.size() - 1);
            pictures.forEach(picture -> picture.unlink(last));
            last.dispose();
            row.layout(true);
            show();
        }
    }

    private void choose(String pieceId) {
        pictures.forEach(picture -> picture.choose(pieceId));
    }

    private Optional<OpenCommission> open() {
        return desk.commission().filter(commission -> commission.path().equals(input.commission()));
    }

    private Optional<Window> window() {
        return open().flatMap(commission -> commission.window(input.windowName()));
    }

    private int colourways() {
        return window().map(window -> window.getColourways().size()).orElse(0);
    }

    private void refresh() {
        if (row.isDisposed()) {
            return;
        }
        Optional<Window> window = window();
        if (window.isEmpty()) {
            pictures.forEach(picture -> picture.clear(Messages.Easel_notOpen));
            return;
        }
        OpenCommission commission = open().orElseThrow();
        WindowSketch sketch = new WindowSketcher(commission.path(), commission.commission()).sketch(window.get());
        if (shown != null && scene.isPresent() && sketch.uncoloured().equals(shown.uncoloured())) {
            scene = scene.map(same -> same.coloured(sketch));
            shown = sketch;
            show();
        } else if (!sketch.equals(shown)) {
            shown = sketch;
            read(commission, sketch);
        }
    }

    private void read(OpenCommission commission, WindowSketch sketch) {
        stop();
        pictures.forEach(picture -> picture.clear(Messages.Easel_reading));
        Display display = row.getDisplay();
        reading = new Job(NLS.bind(Messages.Easel_readingJob, input.windowName())) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                try {
                    SubMonitor progress = SubMonitor.convert(monitor, (int) Math.max(1, SceneReader.units(sketch)));
                    EaselScene read = new SceneReader(commission.shelf()).read(sketch, new MonitorWork(progress));
                    display.asyncExec(() -> take(sketch, read));
                    return Status.OK_STATUS;
                } catch (CancellationException e) {
                    return Status.CANCEL_STATUS;
                } catch (IOException | Refusal e) {
                    return new Status(IStatus.WARNING, Ids.PLUGIN, e.getMessage(), e);
                }
            }
        };
        reading.schedule();
    }

    private void take(WindowSketch sketch, EaselScene read) {
        if (!row.isDisposed() && sketch == shown) {
            scene = Optional.of(read);
            show();
        }
    }

    private void show() {
        open().ifPresent(commission -> scene.ifPresent(read -> pictures.forEach(picture -> picture.show(read, commission.colours()))));
        more.setEnabled(pictures.size() < MOST);
        fewer.setEnabled(pictures.size() > LEAST);
        differences();
    }

    private void differences() {
        Optional<Window> window = window();
        if (window.isPresent() && scene.isPresent()) {
            table.show(open().orElseThrow(), window.get(), pictures.stream().map(BesidePicture::colourway).toList());
            pictures.forEach(picture -> picture.say(table.words(pictures.indexOf(picture))));
        }
    }

    private void stop() {
        if (reading != null) {
            reading.cancel();
            reading = null;
        }
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        T properties = PropertiesPage.adapt(adapter, this);
        return properties != null ? properties : super.getAdapter(adapter);
    }

    @Override
    public void setFocus() {
        pictures.get(0).setFocus();
    }

    @Override
    public void dispose() {
        stop();
        preferences.removePropertyChangeListener(onPreferences);
        if (desk != null) {
            desk.removeListener(onDesk);
        }
        super.dispose();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        // nothing is changed here
    }

    @Override
    public void doSaveAs() {
        throw new UnsupportedOperationException("nothing is changed here");
    }

    @Override
    public boolean isDirty() {
        return false;
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }
}
