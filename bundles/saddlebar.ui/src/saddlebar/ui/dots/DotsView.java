package saddlebar.ui.dots;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.part.ViewPart;

import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.MadeFile;
import saddlebar.model.commission.Mesh;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.ScreenFrame;
import saddlebar.model.commission.Stencil;
import saddlebar.model.problem.PlaceMm;
import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Units;
import saddlebar.model.work.Work;
import saddlebar.stencil.mesh.PrintThroughMesh;
import saddlebar.ui.Messages;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.make.MonitorWork;
import saddlebar.ui.screening.Background;
import saddlebar.ui.screening.ChosenLayer;
import saddlebar.ui.screening.LayerPart;
import saddlebar.ui.screening.LayerScreen;
import saddlebar.ui.screening.NewestWins;
import saddlebar.ui.screening.PreviewAsk;
import saddlebar.ui.screening.PreviewRoom;
import saddlebar.ui.screening.ScreenWords;
import saddlebar.ui.screening.ScreeningWords;
import saddlebar.ui.screening.StencilPlace;

/**
 * The dots of the chosen stencil, as its file has them or as its layer's recipe would make them now; of a layer its first stencil, of a piece its
 * matt's, or what else prints on it. A change of the recipe shows what it makes.
 */
public final class DotsView extends ViewPart implements ISelectionListener, LayerPart {
    private static final int[] NOWHERE = {0, 0};

    /** A preview wanted of an open commission. */
    private record Asked(PreviewAsk ask, OpenCommission open) {
    }

    private CommissionDesk desk;
    private Display display;
    private DotsCanvas dots;
    private Button meshShown;
    private Button printShown;
    private final List<Runnable> whenPreviewed = new ArrayList<>();
    private Label facts;
    private Optional<Stencil> shown = Optional.empty();
    private Job reading;
    private Optional<StencilBits> made = Optional.empty();
    private int[] madePlacePx = NOWHERE;
    private Button asMade;
    private Button asRecipe;
    private ChosenLayer chosen;
    private Optional<DesignLayer> layer = Optional.empty();
    private Optional<PreviewAsk> asked = Optional.empty();
    private Optional<PreviewRoom.Preview> preview = Optional.empty();
    private final PreviewRoom room = new PreviewRoom();
    private final ExecutorService thread = Background.thread("saddlebar preview of dots");
    private final NewestWins<Asked> previews = new NewestWins<>(thread, this::screen);
    private final ExecutorService printing = Background.thread("saddlebar print foretold");
    private final NewestWins<Runnable> prints = new NewestWins<>(printing, (what, work) -> what.run());
    private final CommissionDesk.Listener onDesk = new CommissionDesk.Listener() {
        @Override
        public void closing(OpenCommission commission) {
            show(Optional.empty());
        }
    };

    @Override
    public void createPartControl(Composite parent) {
        display = parent.getDisplay();
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(1).margins(4, 4).applyTo(body);
        Composite above = new Composite(body, SWT.NONE);
        RowLayoutFactory.fillDefaults().spacing(12).wrap(true).applyTo(above);
        GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).applyTo(above);
        asMade = new Button(above, SWT.RADIO);
        asMade.setText(Messages.Dots_asMade);
        asMade.setSelection(true);
        asRecipe = new Button(above, SWT.RADIO);
        asRecipe.setText(Messages.Dots_asRecipe);
        asMade.addListener(SWT.Selection, event -> turn(false));
        asRecipe.addListener(SWT.Selection, event -> turn(true));
        meshShown = new Button(above, SWT.CHECK);
        meshShown.setText(Messages.Dots_mesh);
        meshShown.setSelection(true);
        meshShown.addListener(SWT.Selection, event -> dots.setMesh(mesh()));
        printShown = new Button(above, SWT.CHECK);
        printShown.setText(ScreenWords.Dots_print);
        printShown.setToolTipText(ScreenWords.Dots_printHelp);
        printShown.addListener(SWT.Selection, event -> foretell());
        dots = new DotsCanvas(body);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(dots);
        dots.whenViewChanges(this::tell);
        facts = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(facts);
        desk = getSite().getService(CommissionDesk.class);
        desk.addListener(onDesk);
        getSite().getPage().addSelectionListener(this);
        show(Optional.empty());
        ISelection now = getSite().getPage().getSelection();
        if (now != null) {
            selectionChanged(null, now);
        }
        chosen = new ChosenLayer(getSite().getPage(), desk, this::follow);
    }

    /** Another layer, or something has changed: where it was the recipe, what it makes now is shown. */
    private void follow(Optional<DesignLayer> next) {
        if (dots.isDisposed()) {
            return;
        }
        boolean another = !next.equals(layer);
        layer = next;
        if (another) {
            previews.forget();
            preview = Optional.empty();
            asked = Optional.empty();
            if (shown.isPresent() && next.isPresent() && shown.get().getLayer() != next.get()) {
                show(DotsView.stencil(next.get()));
            }
            turn(next.isPresent() && shown.isEmpty());
        } else if (next.isPresent()) {
            Optional<PreviewAsk> now = ask(asked.flatMap(PreviewAsk::place));
            if (asked.isPresent() && now.isPresent() && !now.equals(asked)) {
                turn(true);
            }
        }
        asRecipe.setEnabled(next.isPresent());
        meshShown.setEnabled(anyMesh().isPresent());
        dots.setMesh(mesh());
        tell();
    }

    /** Between before and after. What may be asked for later is read now, so that it is there at once. */
    private void turn(boolean recipe) {
        asMade.setSelection(!recipe);
        asRecipe.setSelection(recipe);
        asMade.setEnabled(shown.isPresent());
        if (recipe) {
            preview.ifPresent(there -> dots.replace(there.bits(), middle(there.bits())));
            if (preview.isEmpty()) {
                dots.show(Optional.empty(), NOWHERE, layer.isPresent() ? Messages.Dots_screening : Messages.Dots_chooseOne);
            }
        } else if (made.isPresent()) {
            dots.replace(made.get(), madePlacePx);
        }
        askAgain();
        foretell();
        tell();
    }

    private void askAgain() {
        if (layer.isEmpty()) {
            return;
        }
        Optional<PreviewAsk> now = ask(asked.flatMap(PreviewAsk::place));
        if (now.isPresent() && now.equals(asked) && preview.isPresent()) {
            return;
        }
        asked = now;
        if (now.isPresent()) {
            previews.ask(new Asked(now.get(), desk.commission().orElseThrow()));
        } else if (asRecipe.getSelection()) {
            dots.show(Optional.empty(), NOWHERE, Messages.Dots_noArt);
        }
    }

    private Optional<PreviewAsk> ask(Optional<PreviewAsk.PlaceMm> kept) {
        try {
            Optional<LayerScreen> screen = desk.commission().flatMap(open -> layer.map(found -> new LayerScreen(open, found)));
            return screen.flatMap(found -> found.ask(kept.or(() -> madePlace(found.mirrored()))));
        } catch (Refusal e) {
            if (asRecipe.getSelection()) {
                dots.show(Optional.empty(), NOWHERE, e.getMessage());
            }
            return Optional.empty();
        }
    }

    /** The place of the page that the made stencil shows first. */
    private Optional<PreviewAsk.PlaceMm> madePlace(boolean mirrored) {
        return made.flatMap(bits -> {
            int x = mirrored ? bits.widthPx() - madePlacePx[0] : madePlacePx[0];
            return StencilPlace.onPage(shown.orElseThrow(), x / bits.pxPerMm(), madePlacePx[1] / bits.pxPerMm());
        });
    }

    private static int[] middle(StencilBits bits) {
        return new int[] {bits.widthPx() / 2, bits.heightPx() / 2};
    }

    /** On the preview's own thread. */
    private void screen(Asked wanted, Work work) {
        Optional<PreviewRoom.Preview> done = Optional.empty();
        String words = "";
        try {
            done = Optional.of(room.preview(wanted.ask(), wanted.open().shelf(), work));
        } catch (IOException | Refusal | UncheckedIOException e) {
            words = e.getMessage();
        }
        work.checkpoint();
        Optional<PreviewRoom.Preview> result = done;
        String otherwise = words;
        if (!display.isDisposed()) {
            display.asyncExec(() -> take(wanted.ask(), result, otherwise));
        }
    }

    private void take(PreviewAsk of, Optional<PreviewRoom.Preview> done, String words) {
        if (dots.isDisposed() || asked.isEmpty() || !asked.get().equals(of)) {
            return;
        }
        preview = done;
        // from now on the same place is looked at, whatever the recipe says
        asked = done.flatMap(there -> ask(Optional.of(there.place()))).or(() -> asked);
        if (asRecipe.getSelection()) {
            done.ifPresentOrElse(there -> {
                if (dots.bits().isPresent()) {
                    dots.replace(there.bits(), middle(there.bits()));
                } else {
                    dots.show(Optional.of(there.bits()), middle(there.bits()), "");
                }
            }, () -> dots.show(Optional.empty(), NOWHERE, words));
        }
        foretell();
        List.copyOf(whenPreviewed).forEach(Runnable::run);
        tell();
    }

    /** The print through the mesh, where that is wanted and the dots are the recipe's. */
    private void foretell() {
        Optional<Mesh> mesh = desk.commission().flatMap(open -> layer.map(found -> new LayerScreen(open, found))).flatMap(LayerScreen::mesh);
        boolean can = asRecipe.getSelection() && preview.isPresent() && mesh.isPresent();
        printShown.setEnabled(can);
        if (!can || !printShown.getSelection()) {
            dots.setPrint(Optional.empty());
            return;
        }
        PreviewRoom.Preview of = preview.get();
        double turnDeg = anyMesh().map(MeshLines::turnDeg).orElse(0.0);
        PrintThroughMesh through = PrintThroughMesh.of(new saddlebar.stencil.mesh.Mesh(mesh.get().getThreadsPerInch(), mesh.get().getThreadUm()), turnDeg);
        prints.ask(() -> {
            float[] covered = through.covered(of.paint(), of.bits().pxPerMm() * Units.MM_PER_INCH);
            if (!display.isDisposed()) {
                display.asyncExec(() -> {
                    if (!dots.isDisposed() && printShown.getSelection() && asRecipe.getSelection() && preview.isPresent() && preview.get() == of) {
                        dots.setPrint(Optional.of(covered));
                    }
                });
            }
        });
    }

    /** A place of the panel's page in the middle, if the preview holds it. */
    void lookAt(PlaceMm place) {
        preview.filter(there -> asRecipe.getSelection())
                .ifPresent(there -> {
                    double px = (place.xMm() - there.leftMm()) * there.bits().pxPerMm();
                    boolean turned = asked.filter(PreviewAsk::mirrored).isPresent();
                    dots.lookAt(turned ? there.bits().widthPx() - px : px, (place.yMm() - there.topMm()) * there.bits().pxPerMm());
                });
    }

    /** Called when another preview is there, or none any more. */
    void whenPreviewed(Runnable listener) {
        whenPreviewed.add(listener);
    }

    void unlessPreviewed(Runnable listener) {
        whenPreviewed.remove(listener);
    }

    /** What a test waits for: the preview that is there. */
    public Optional<PreviewRoom.Preview> preview() {
        return preview;
    }

    /** Whether the dots are seen as the recipe would make them. */
    public boolean showsRecipe() {
        return asRecipe.getSelection();
    }

    @Override
    public void selectionChanged(IWorkbenchPart part, ISelection selection) {
        if (part != this && selection instanceof IStructuredSelection structured) {
            stencil(structured.getFirstElement()).filter(stencil -> shown.isEmpty() || shown.get() != stencil)
                    .ifPresent(stencil -> show(Optional.of(stencil)));
        }
    }

    /** Which stencil a thing leads to. */
    static Optional<Stencil> stencil(Object thing) {
        if (thing instanceof Stencil stencil) {
            return Optional.of(stencil);
        }
        if (thing instanceof DesignLayer layer) {
            return layer.getStencils().stream().filter(stencil -> !stencil.isRetired()).min(Comparator.comparingInt(Stencil::getNumber));
        }
        if (thing instanceof Piece piece && piece.eContainer() instanceof Panel panel) {
            return panel.getLayers().stream().sorted(Comparator.comparing((DesignLayer layer) -> layer.getRole() != LayerRole.MATT))
                    .flatMap(layer -> layer.getStencils().stream())
                    .filter(stencil -> !stencil.isRetired() && stencil.getPieces().stream().anyMatch(entry -> entry.getPiece() == piece)).findFirst();
        }
        return Optional.empty();
    }

    private void show(Optional<Stencil> stencil) {
        if (reading != null) {
            reading.cancel();
            reading = null;
        }
        shown = stencil;
        made = Optional.empty();
        asked = Optional.empty();
        preview = Optional.empty();
        previews.forget();
        asMade.setSelection(true);
        asRecipe.setSelection(false);
        asMade.setEnabled(stencil.isPresent());
        dots.setMesh(mesh());
        Optional<Path> file = stencil.flatMap(this::file);
        if (file.isEmpty()) {
            dots.show(Optional.empty(), NOWHERE, stencil.isPresent() ? Messages.Dots_noFile : Messages.Dots_chooseOne);
        } else {
            dots.show(Optional.empty(), NOWHERE, Messages.Dots_reading);
            read(stencil.get(), file.get());
        }
        meshShown.setEnabled(anyMesh().isPresent());
        tell();
    }

    private Optional<Path> file(Stencil stencil) {
        return stencil.getFiles().stream().map(MadeFile::getFile).filter(file -> file != null && file.endsWith(".tif")).findFirst()
                .flatMap(file -> desk.commission().map(open -> open.path().resolve(file))).filter(Files::isRegularFile);
    }

    private void read(Stencil stencil, Path file) {
        reading = new Job(NLS.bind(Messages.Dots_job, file.getFileName())) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                try {
                    StencilBits bits = StencilBits.read(file, new MonitorWork(SubMonitor.convert(monitor, StencilBits.UNITS)));
                    int[] place = bits.halfCovered();
                    display.asyncExec(() -> take(stencil, Optional.of(bits), place, ""));
                    return Status.OK_STATUS;
                } catch (CancellationException e) {
                    return Status.CANCEL_STATUS;
                } catch (IOException | Refusal e) {
                    display.asyncExec(() -> take(stencil, Optional.empty(), NOWHERE, e.getMessage()));
                    return Status.OK_STATUS; // said where the dots would be
                }
            }
        };
        reading.setPriority(Job.SHORT);
        reading.schedule();
    }

    private void take(Stencil stencil, Optional<StencilBits> bits, int[] placePx, String words) {
        if (!dots.isDisposed() && shown.isPresent() && shown.get() == stencil) {
            made = bits;
            madePlacePx = placePx;
            asked = Optional.empty(); // before and after show the same place
            preview = Optional.empty();
            if (asMade.getSelection()) {
                dots.show(bits, placePx, words);
            }
            askAgain();
        }
    }

    private Optional<MeshLines> mesh() {
        return meshShown.getSelection() ? anyMesh() : Optional.empty();
    }

    /** That of the made stencil, else that on which the layer would be made. */
    private Optional<MeshLines> anyMesh() {
        return shown.flatMap(DotsView::meshOf).or(() -> desk.commission().flatMap(open -> layer.map(found -> new LayerScreen(open, found)))
                .flatMap(screen -> screen.mesh().map(mesh -> new MeshLines(mesh.getThreadsPerInch(), mesh.getThreadUm(),
                        screen.frame().map(ScreenFrame::getMeshTurnDeg).orElse(0.0)))));
    }

    private static Optional<MeshLines> meshOf(Stencil stencil) {
        ScreenFrame frame = stencil.getFrame();
        Mesh mesh = frame == null ? null : frame.getMesh();
        return mesh == null || mesh.getThreadsPerInch() < 1
                ? Optional.empty()
                : Optional.of(new MeshLines(mesh.getThreadsPerInch(), mesh.getThreadUm(), frame.getMeshTurnDeg()));
    }

    private void tell() {
        StringBuilder words = new StringBuilder();
        if (asRecipe.getSelection() && layer.isPresent()) {
            words.append(NLS.bind(Messages.Dots_preview, ScreeningWords.layer(layer.get())));
            words.append("   ").append(NLS.bind(Messages.Dots_zoom, number(dots.zoom())));
            words.append("   ").append(NLS.bind(Messages.Dots_share, Math.round(dots.shareInView() * 100)));
        }
        shown.filter(stencil -> asMade.getSelection()).ifPresent(stencil -> {
            String layer = stencil.getLayer() == null || stencil.getLayer().getName() == null ? "" : stencil.getLayer().getName();
            words.append(NLS.bind(Messages.Dots_stencil, layer, stencil.getNumber()));
            words.append("   ").append(NLS.bind(Messages.Dots_zoom, number(dots.zoom())));
            words.append("   ").append(NLS.bind(Messages.Dots_share, Math.round(dots.shareInView() * 100)));
            meshOf(stencil).ifPresent(mesh -> words.append("   ").append(NLS.bind(Messages.Dots_meshOpen, stencil.getFrame().getMesh().getName(),
                    Math.round(mesh.openShare() * 100))));
        });
        if (!words.toString().equals(facts.getText())) {
            facts.setText(words.toString());
            facts.getParent().layout();
        }
    }

    private static String number(double zoom) {
        return zoom >= 1 ? String.valueOf(Math.round(zoom)) : "1/" + Math.round(1 / zoom);
    }

    @Override
    public Optional<DesignLayer> layer() {
        return chosen == null ? Optional.empty() : chosen.layer();
    }

    @Override
    public void setFocus() {
        dots.setFocus();
    }

    @Override
    public void dispose() {
        if (desk != null) {
            desk.removeListener(onDesk);
            getSite().getPage().removeSelectionListener(this);
        }
        if (chosen != null) {
            chosen.dispose();
        }
        if (reading != null) {
            reading.cancel();
        }
        previews.forget();
        prints.forget();
        printing.shutdownNow();
        thread.shutdownNow();
        super.dispose();
    }
}
