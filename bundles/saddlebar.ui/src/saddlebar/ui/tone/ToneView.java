package saddlebar.ui.tone;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
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
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.part.ViewPart;

import saddlebar.artwork.ArtworkReaders;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.Mesh;
import saddlebar.model.commission.PaperSize;
import saddlebar.model.commission.StencilRecipe;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.ToneCalibration;
import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;
import saddlebar.production.facts.CalibrationChoice;
import saddlebar.production.facts.RecipeReader;
import saddlebar.production.studio.CalibrationBook;
import saddlebar.production.studio.WedgeFile;
import saddlebar.production.studio.WedgePicture;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.process.Face;
import saddlebar.stencil.process.TonerSide;
import saddlebar.stencil.sheet.Paper;
import saddlebar.stencil.tone.GrayHistogram;
import saddlebar.stencil.tone.MeasuredWedge;
import saddlebar.stencil.tone.WedgeReading;
import saddlebar.stencil.wedge.WedgeLayout;
import saddlebar.stencil.wedge.WedgePhotograph;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.desk.UndoHere;
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

/** Tone of the chosen layer: its curve, its grays, what wedges say, and the calibrations that the studio keeps. */
public final class ToneView extends ViewPart implements LayerPart, TonePanel.Orders {
    private static final int NARROWEST_PT = 120;

    private record Asked(PreviewAsk ask, OpenCommission open) {
    }

    private final ExecutorService thread = Background.thread("saddlebar grays of a layer");
    private final NewestWins<Asked> grays = new NewestWins<>(thread, this::read);
    private final PreviewRoom room = new PreviewRoom();
    private CommissionDesk desk;
    private UndoHere undo;
    private ChosenLayer chosen;
    private Optional<DesignLayer> layer = Optional.empty();
    private Display display;
    private Label facts;
    private CurveCanvas canvas;
    private TonePanel panel;
    private Optional<Asked> asked = Optional.empty();
    private Optional<GrayHistogram> histogram = Optional.empty();
    private Optional<List<WedgeReading>> typed = Optional.empty();

    @Override
    public void createPartControl(Composite parent) {
        display = parent.getDisplay();
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 4).spacing(6, 3).applyTo(body);
        facts = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(NARROWEST_PT, SWT.DEFAULT).applyTo(facts);
        SashForm halves = new SashForm(body, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().grab(true, true).hint(NARROWEST_PT, NARROWEST_PT).applyTo(halves);
        canvas = new CurveCanvas(halves, this::curve);
        panel = new TonePanel(halves, this);
        halves.setWeights(5, 6);
        desk = getSite().getService(CommissionDesk.class);
        undo = new UndoHere(getViewSite(), desk);
        chosen = new ChosenLayer(getSite().getPage(), desk, this::follow);
    }

    private Optional<StencilRecipe> recipe() {
        return layer().map(DesignLayer::getRecipe);
    }

    private Optional<LayerScreen> screen() {
        return layer().filter(found -> found.getRecipe() != null).flatMap(found -> desk.commission().map(open -> new LayerScreen(open, found)));
    }

    private Optional<Studio> studio() {
        return desk.commission().map(open -> open.commission().getStudio());
    }

    private void follow(Optional<DesignLayer> next) {
        if (!next.equals(layer)) {
            typed = Optional.empty();
        }
        layer = next;
        show();
    }

    private void show() {
        if (canvas.isDisposed()) {
            return;
        }
        Optional<Asked> now = Optional.empty();
        String wrong = "";
        try {
            now = screen().flatMap(found -> found.ask(Optional.empty())).flatMap(ask -> desk.commission().map(open -> new Asked(ask, open)));
        } catch (Refusal e) {
            wrong = e.getMessage();
        }
        boolean otherArt = !now.map(found -> found.ask().artLayer() + found.ask().art()).equals(asked.map(found -> found.ask().artLayer() + found.ask().art()));
        asked = now;
        if (otherArt) {
            histogram = Optional.empty();
            now.ifPresentOrElse(grays::ask, grays::forget);
        }
        Optional<ToneCalibration> inUse = screen().flatMap(LayerScreen::calibration);
        facts.setText(wrong.isEmpty() ? words(inUse) : wrong);
        boolean edits = desk.canEdit() && recipe().isPresent();
        Optional<Studio> studio = studio();
        panel.show(recipe().map(found -> CurvePoints.of(found.getCurve())), kept(studio), inUse, edits, inUse.isPresent() || typed.isPresent());
        canvas.show(shown(inUse), edits);
        facts.getParent().layout(true, true);
    }

    /** The calibrations for the layer's paint, the newest first. */
    private List<ToneCalibration> kept(Optional<Studio> studio) {
        return studio.map(found -> found.getCalibrations().stream()
                .filter(one -> layer().isPresent() && one.getPaint() == layer().get().getPaint()
                        && one.getMesh() == screen().flatMap(LayerScreen::mesh).orElse(null))
                .sorted((a, b) -> String.valueOf(b.getMeasured()).compareTo(String.valueOf(a.getMeasured()))).toList()).orElse(List.of());
    }

    private String words(Optional<ToneCalibration> inUse) {
        if (layer().isEmpty() || recipe().isEmpty()) {
            return ScreenWords.Tone_chooseOne;
        }
        String name = ScreeningWords.layer(layer().get());
        return inUse.map(found -> NLS.bind(ScreenWords.Tone_inUse, name, found.getName())).orElseGet(() -> NLS.bind(ScreenWords.Tone_noneInUse, name));
    }

    private ToneShown shown(Optional<ToneCalibration> inUse) {
        if (recipe().isEmpty()) {
            return ToneShown.NOTHING;
        }
        StencilRecipe recipe = recipe().get();
        List<WedgeReading> readings = typed.orElseGet(() -> inUse.map(CalibrationChoice::readings).orElse(List.of()));
        return ToneShown.of(readings, recipe, histogram);
    }

    /** On its own thread. */
    private void read(Asked wanted, Work work) {
        try {
            GrayHistogram read = room.histogram(wanted.ask(), wanted.open().shelf(), work);
            work.checkpoint();
            if (!display.isDisposed()) {
                display.asyncExec(() -> {
                    histogram = Optional.of(read);
                    show();
                });
            }
        } catch (IOException | Refusal e) {
            histogram = Optional.empty(); // the Dots part says why
        }
    }

    @Override
    public void curve(CurvePoints next) {
        recipe().filter(found -> desk.canEdit() && !next.words().equals(found.getCurve() == null ? "" : found.getCurve()))
                .ifPresent(found -> desk.commission().orElseThrow().edits().perform(ScreenWords.Edit_curve, found,
                        () -> found.setCurve(next.words().isEmpty() ? null : next.words())));
    }

    @Override
    public void curveOfMeasured() {
        Optional<ToneCalibration> inUse = screen().flatMap(LayerScreen::calibration);
        shown(inUse).calibration().ifPresent(found -> curve(CurvePoints.of(found)));
    }

    @Override
    public void typed(Optional<List<WedgeReading>> readings) {
        typed = readings;
        show();
    }

    @Override
    public void keep(List<WedgeReading> readings, String source) {
        Studio studio = studio().orElseThrow();
        DesignLayer layer = layer().orElseThrow();
        Mesh mesh = screen().flatMap(LayerScreen::mesh).orElseThrow(() -> new Refusal("mesh", ScreenWords.Tone_noMesh, ScreenWords.Tone_giveMesh));
        if (layer.getPaint() == null) {
            throw new Refusal("paint", ScreenWords.Tone_noPaint, ScreenWords.Tone_givePaint);
        }
        ScreeningRecipe screening = RecipeReader.screening(layer.getRecipe());
        CalibrationBook.Measured measured = CalibrationBook.Measured.of(layer.getPaint(), mesh, screening,
                ScreeningMethods.ownMethods().method(screening.method()).actual(screening), layer.getRecipe().getProcessKey(), 1, LocalDate.now(), source,
                readings);
        desk.commission().orElseThrow().edits().perform(ScreenWords.Edit_calibration, studio, () -> CalibrationBook.keep(studio, measured));
        typed = Optional.empty();
        show();
    }

    @Override
    public void writeWedge() {
        FileDialog dialog = new FileDialog(getSite().getShell(), SWT.SAVE);
        dialog.setFilterExtensions(new String[] {"*.pdf"});
        dialog.setOverwrite(true);
        dialog.setFileName(ScreenWords.Tone_wedgeFile);
        String target = dialog.open();
        if (target != null) {
            writeWedge(Path.of(target));
        }
    }

    /** Writes the wedge sheet of the layer's recipe in the background. */
    public Job writeWedge(Path target) {
        WedgeOrder order = order();
        Job job = job(NLS.bind(ScreenWords.Tone_writing, target.getFileName()), work -> order.write(target, work), order.units());
        job.schedule();
        return job;
    }

    private WedgeOrder order() {
        LayerScreen screen = screen().orElseThrow();
        DesignLayer layer = layer().orElseThrow();
        TonerSide side = screen.process().map(setting -> TonerSide.valueOf(setting.getTonerSide().name())).orElse(TonerSide.PRINT);
        Paper paper = studio().flatMap(found -> found.getPapers().stream().filter(PaperSize::isInUse).findFirst())
                .map(size -> new Paper(size.getName(), size.getWidthMm(), size.getHeightMm())).orElse(Paper.A4);
        String note = (layer.getPaint() == null ? "" : layer.getPaint().getName() + ", ") + screen.mesh().map(Mesh::getName).orElse("");
        return new WedgeOrder(RecipeReader.screening(layer.getRecipe()), layer.getRecipe().getProcessKey(), side, Face.valueOf(layer.getFace().name()), paper,
                note);
    }

    @Override
    public void readFile() {
        FileDialog dialog = new FileDialog(getSite().getShell(), SWT.OPEN);
        dialog.setFilterExtensions(new String[] {"*.csv;*.png;*.jpg;*.jpeg;*.tif;*.tiff"});
        String source = dialog.open();
        if (source != null) {
            readFile(Path.of(source));
        }
    }

    /** Readings of a CSV, or of a photograph of a wedge on a light box. */
    public Job readFile(Path source) {
        boolean table = source.toString().toLowerCase(Locale.ROOT).endsWith(".csv");
        Job job = job(NLS.bind(ScreenWords.Tone_reading, source.getFileName()), work -> {
            List<WedgeReading> readings;
            String told = "";
            if (table) {
                readings = WedgeFile.readings(source, 1);
            } else {
                WedgePhotograph.Read read = WedgePicture.read(ArtworkReaders.ownReaders(), source, WedgeLayout.usual(), List.of(), 10, work);
                readings = MeasuredWedge.readings(read.steps(), 1);
                told = read.problems().isEmpty() ? "" : read.problems().get(0).message();
            }
            String words = told;
            display.asyncExec(() -> panel.readings(readings, String.valueOf(source.getFileName()), words));
        }, 100);
        job.schedule();
        return job;
    }

    private interface Doing {
        void with(Work work) throws IOException;
    }

    private Job job(String name, Doing doing, long units) {
        Job job = new Job(name) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                try {
                    doing.with(new MonitorWork(SubMonitor.convert(monitor, (int) Math.min(Integer.MAX_VALUE, units))));
                    return Status.OK_STATUS;
                } catch (CancellationException e) {
                    return Status.CANCEL_STATUS;
                } catch (IOException | Refusal e) {
                    display.asyncExec(() -> panel.wrong(e.getMessage()));
                    return Status.OK_STATUS; // said where the readings would be
                }
            }
        };
        job.setUser(false);
        return job;
    }

    /** What a test looks at. */
    public TonePanel panel() {
        return panel;
    }

    @Override
    public Optional<DesignLayer> layer() {
        return layer;
    }

    @Override
    public void setFocus() {
        canvas.setFocus();
    }

    @Override
    public void dispose() {
        undo.dispose();
        if (chosen != null) {
            chosen.dispose();
        }
        grays.forget();
        thread.shutdownNow();
        super.dispose();
    }
}
