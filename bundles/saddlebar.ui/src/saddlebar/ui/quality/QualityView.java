package saddlebar.ui.quality;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ExecutorService;
import java.util.function.Function;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

import saddlebar.model.commission.DesignLayer;
import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;
import saddlebar.production.facts.RecipeReader;
import saddlebar.stencil.LineCourse;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.quality.PatchQuality;
import saddlebar.stencil.quality.QualityRun;
import saddlebar.ui.Columns;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.screening.Background;
import saddlebar.ui.screening.ChosenLayer;
import saddlebar.ui.screening.LayerPart;
import saddlebar.ui.screening.NewestWins;
import saddlebar.ui.screening.ScreenWords;
import saddlebar.ui.screening.ScreeningWords;
import saddlebar.ui.screening.TypedNumber;

/** How even the tones of the chosen layer's recipe are: as plots, and as a table. */
public final class QualityView extends ViewPart implements LayerPart {
    private static final int NARROWEST_PT = 100;
    private static final int DISTANCE_PT = 70;

    private record Asked(ScreeningRecipe recipe, double distanceM) {
    }

    private final ExecutorService thread = Background.thread("saddlebar quality of tones");
    private final NewestWins<Asked> runs = new NewestWins<>(thread, this::measure);
    private CommissionDesk desk;
    private ChosenLayer chosen;
    private Optional<DesignLayer> layer = Optional.empty();
    private Display display;
    private Composite body;
    private Label facts;
    private Text distance;
    private QualityCanvas canvas;
    private TableViewer table;
    private double distanceM = 2;
    private Optional<Asked> asked = Optional.empty();
    private Optional<QualityRun> run = Optional.empty();

    @Override
    public void createPartControl(Composite parent) {
        display = parent.getDisplay();
        body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(6, 4).spacing(6, 3).applyTo(body);
        facts = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(NARROWEST_PT, SWT.DEFAULT).applyTo(facts);
        new Label(body, SWT.NONE).setText(ScreenWords.Quality_seenFrom);
        distance = new Text(body, SWT.BORDER | SWT.SINGLE);
        distance.setText(TypedNumber.DISTANCE.words(distanceM, Locale.getDefault(Locale.Category.FORMAT)));
        GridDataFactory.swtDefaults().hint(DISTANCE_PT, SWT.DEFAULT).applyTo(distance);
        distance.addListener(SWT.DefaultSelection, event -> stand());
        distance.addListener(SWT.FocusOut, event -> stand());
        SashForm halves = new SashForm(body, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().span(3, 1).grab(true, true).hint(NARROWEST_PT, NARROWEST_PT).applyTo(halves);
        canvas = new QualityCanvas(halves);
        table = table(halves);
        halves.setWeights(3, 2);
        desk = getSite().getService(CommissionDesk.class);
        chosen = new ChosenLayer(getSite().getPage(), desk, this::follow);
    }

    private static TableViewer table(Composite parent) {
        Composite frame = new Composite(parent, SWT.NONE);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        TableViewer viewer = new TableViewer(frame, SWT.FULL_SELECTION | SWT.SINGLE | SWT.BORDER | SWT.V_SCROLL);
        viewer.getTable().setHeaderVisible(true);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        Columns columns = new Columns(viewer, layout);
        columns.add(ScreenWords.Quality_columnTone, 1, "95 %", words(patch -> ScreeningWords.percent(patch.asked(), 0) + " %"));
        columns.add(ScreenWords.Quality_columnError, 1, "-0.35", words(patch -> ScreeningWords.number(100 * patch.quality().toneError(), 2)));
        columns.add(ScreenWords.Quality_columnGrain, 1, "0.75 %", words(patch -> ScreeningWords.percent(patch.quality().grain(), 2) + " %"));
        columns.add(ScreenWords.Quality_columnDirection, 1, "20.4 dB", words(patch -> ScreeningWords.number(patch.quality().anisotropyDb(), 1) + " dB"));
        columns.add(ScreenWords.Quality_columnRepeat, 1, "10.8 mm", words(patch -> ScreeningWords.number(patch.quality().repeatMm(), 1) + " mm"));
        return viewer;
    }

    private static ColumnLabelProvider words(Function<PatchQuality, String> of) {
        return ColumnLabelProvider.createTextProvider(patch -> of.apply((PatchQuality) patch));
    }

    private void stand() {
        OptionalDouble typed = TypedNumber.DISTANCE.read(distance.getText());
        if (typed.isPresent() && typed.getAsDouble() >= 0.1 && typed.getAsDouble() <= 100) {
            distanceM = typed.getAsDouble();
            show();
        } else {
            facts.setText(ScreenWords.Quality_wrongDistance);
        }
    }

    private void follow(Optional<DesignLayer> next) {
        layer = next;
        show();
    }

    private void show() {
        if (body.isDisposed()) {
            return;
        }
        Optional<Asked> now = Optional.empty();
        String words = ScreenWords.Quality_chooseOne;
        if (layer().isPresent() && layer().get().getRecipe() != null) {
            try {
                ScreeningRecipe recipe = RecipeReader.screening(layer().get().getRecipe());
                ScreeningMethods.ownMethods().method(recipe.method());
                boolean solid = recipe.method().equals("solid");
                words = solid ? ScreenWords.Quality_solid : NLS.bind(ScreenWords.Quality_measuring, ScreeningWords.layer(layer().get()));
                now = solid ? Optional.empty() : Optional.of(new Asked(flat(recipe), distanceM));
            } catch (Refusal e) {
                words = e.getMessage();
            }
        }
        if (!now.equals(asked) || now.isEmpty()) {
            asked = now;
            run = Optional.empty();
            now.ifPresentOrElse(runs::ask, runs::forget);
        }
        tell(words);
    }

    /** An even tone has no contours that lines could follow. */
    private static ScreeningRecipe flat(ScreeningRecipe recipe) {
        return recipe.lineCourse() instanceof LineCourse.Artwork ? recipe.withCourse("straight") : recipe;
    }

    /** On its own thread; tones are shown as they come, those of the spectra first. */
    private void measure(Asked wanted, Work work) {
        List<Double> order = new ArrayList<>(QualityCanvas.SHOWN);
        QualityRun.TONES.stream().filter(tone -> !order.contains(tone)).forEach(order::add);
        List<PatchQuality> patches = new ArrayList<>();
        for (double tone : order) {
            QualityRun one = one(wanted, tone, work);
            patches.addAll(one.patches());
            patches.sort(Comparator.comparingDouble(PatchQuality::asked));
            QualityRun made = new QualityRun(one.recipe(), one.distanceM(), one.cyclesPerMmARing(), patches);
            work.checkpoint();
            if (!display.isDisposed()) {
                display.asyncExec(() -> take(wanted, made));
            }
        }
    }

    private static QualityRun one(Asked wanted, double tone, Work work) {
        try {
            return QualityRun.of(ScreeningMethods.ownMethods().method(wanted.recipe().method()), wanted.recipe(), List.of(tone), wanted.distanceM(), work);
        } catch (IOException e) {
            throw new IllegalStateException("an even tone is read from memory", e);
        }
    }

    private void take(Asked of, QualityRun made) {
        if (asked.isPresent() && asked.get().equals(of)) {
            run = Optional.of(made);
            tell("");
        }
    }

    private void tell(String otherwise) {
        if (body.isDisposed()) {
            return;
        }
        canvas.show(run);
        table.setInput(run.map(QualityRun::patches).orElse(List.of()));
        facts.setText(run.map(found -> NLS.bind(ScreenWords.Quality_facts, new Object[] {layer().map(ScreeningWords::layer).orElse(""),
                ScreeningWords.number(100 * found.worstToneError(), 2), ScreeningWords.percent(found.mostGrain(), 2)})).orElse(otherwise));
        body.layout(true, true);
    }

    /** What a test waits for. */
    public Optional<QualityRun> run() {
        return run;
    }

    @Override
    public Optional<DesignLayer> layer() {
        return layer;
    }

    @Override
    public void setFocus() {
        table.getTable().setFocus();
    }

    @Override
    public void dispose() {
        if (chosen != null) {
            chosen.dispose();
        }
        runs.forget();
        thread.shutdownNow();
        super.dispose();
    }
}
