package saddlebar.ui.screening;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ExecutorService;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.resource.JFaceColors;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

import saddlebar.model.commission.DesignLayer;
import saddlebar.model.work.Work;
import saddlebar.stencil.mesh.ScoredRuling;
import saddlebar.ui.Columns;
import saddlebar.ui.Messages;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.desk.UndoHere;

/** The chosen layer's mesh, what its ruling does on it, and which pairs of ruling and angle do less. */
public final class MeshView extends ViewPart implements LayerPart {
    private static final double LEAST_M = 0.1;
    private static final double MOST_M = 100;
    private static final int DISTANCE_PT = 70;
    private static final int NARROWEST_PT = 100;

    private final ExecutorService thread = Background.thread("saddlebar mesh and ruling");
    private final NewestWins<MeshStudy.Ask> studies = new NewestWins<>(thread, this::study);
    private volatile Optional<MeshStudy> study = Optional.empty();
    private boolean shown;
    private double distanceM = 1;
    private CommissionDesk desk;
    private UndoHere undo;
    private ChosenLayer chosen;
    private Display display;
    private Composite body;
    private Label facts;
    private Label beat;
    private Label advice;
    private Text distance;
    private Label wrong;
    private TableViewer table;
    private PairChart chart;
    private Button take;

    @Override
    public void createPartControl(Composite parent) {
        display = parent.getDisplay();
        body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(6, 4).spacing(6, 3).applyTo(body);
        facts = words();
        new Label(body, SWT.NONE).setText(Messages.Mesh_seenFrom);
        distance = new Text(body, SWT.BORDER | SWT.SINGLE);
        GridDataFactory.swtDefaults().hint(DISTANCE_PT, SWT.DEFAULT).applyTo(distance);
        distance.setText(TypedNumber.DISTANCE.words(distanceM, locale()));
        distance.addListener(SWT.DefaultSelection, event -> stand());
        distance.addListener(SWT.FocusOut, event -> stand());
        wrong = new Label(body, SWT.WRAP);
        wrong.setForeground(JFaceColors.getErrorText(display));
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(NARROWEST_PT, SWT.DEFAULT).applyTo(wrong);
        beat = words();
        advice = words();
        SashForm halves = new SashForm(body, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().span(3, 1).grab(true, true).hint(NARROWEST_PT, NARROWEST_PT).applyTo(halves);
        Composite left = new Composite(halves, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 3).applyTo(left);
        pairs(left);
        chart = new PairChart(halves, this::take);
        halves.setWeights(2, 3);
        desk = getSite().getService(CommissionDesk.class);
        undo = new UndoHere(getViewSite(), desk);
        chosen = new ChosenLayer(getSite().getPage(), desk, this::show);
    }

    private Label words() {
        Label label = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().span(3, 1).grab(true, false).hint(NARROWEST_PT, SWT.DEFAULT).applyTo(label);
        return label;
    }

    private void pairs(Composite left) {
        Composite frame = new Composite(left, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(frame);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        table = new TableViewer(frame, SWT.FULL_SELECTION | SWT.SINGLE | SWT.BORDER | SWT.V_SCROLL);
        table.getTable().setHeaderVisible(true);
        Columns columns = new Columns(table, layout);
        columns.add(Messages.Mesh_columnRuling, 1, "37.5 lpi",
                ColumnLabelProvider.createTextProvider(pair -> ScreeningWords.number(((ScoredRuling) pair).lpi(), 1)));
        columns.add(Messages.Mesh_columnAngle, 1, "22.5°",
                ColumnLabelProvider.createTextProvider(pair -> ScreeningWords.number(((ScoredRuling) pair).angleDeg(), 1) + "°"));
        columns.add(Messages.Mesh_columnSeen, 1, "0.05 %",
                ColumnLabelProvider.createTextProvider(pair -> ScreeningWords.percent(((ScoredRuling) pair).score(), 2) + " %"));
        table.setContentProvider(ArrayContentProvider.getInstance());
        table.addDoubleClickListener(event -> takeSelected());
        take = new Button(left, SWT.PUSH);
        take.setText(Messages.Mesh_take);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(take);
        take.addListener(SWT.Selection, event -> takeSelected());
        table.addSelectionChangedListener(event -> enable());
    }

    private void enable() {
        take.setEnabled(desk != null && desk.canEdit() && !table.getStructuredSelection().isEmpty());
    }

    private void takeSelected() {
        if (table.getStructuredSelection().getFirstElement() instanceof ScoredRuling pair) {
            take(pair);
        }
    }

    private void take(ScoredRuling pair) {
        Optional<DesignLayer> layer = chosen.layer().filter(found -> found.getRecipe() != null && desk.canEdit());
        layer.ifPresent(found -> {
            RecipeSheet sheet = new RecipeSheet(found.getRecipe(), desk.commission().map(OpenCommission::edits), locale());
            wrong.setText(sheet.takePair(pair.lpi(), pair.angleDeg()).orElse(""));
        });
    }

    private static Locale locale() {
        return Locale.getDefault(Locale.Category.FORMAT);
    }

    private void stand() {
        OptionalDouble typed = TypedNumber.DISTANCE.read(distance.getText());
        boolean good = typed.isPresent() && typed.getAsDouble() >= LEAST_M && typed.getAsDouble() <= MOST_M;
        wrong.setText(good ? "" : Messages.Mesh_wrongDistance);
        if (good) {
            distanceM = typed.getAsDouble();
            tell();
        }
        body.layout(true, true);
    }

    private void show(Optional<DesignLayer> layer) {
        if (body.isDisposed()) {
            return;
        }
        Optional<LayerScreen> screen = layer.flatMap(found -> desk.commission().map(open -> new LayerScreen(open, found)));
        Optional<MeshStudy.Ask> ask = screen.flatMap(LayerScreen::meshAsk);
        shown = ask.isPresent();
        if (ask.isPresent()) {
            studies.ask(ask.get());
            facts.setText(MeshWords.facts(ScreeningWords.layer(layer.get()), screen.flatMap(LayerScreen::mesh).map(mesh -> mesh.getName()).orElse(""),
                    ask.get().mesh()));
        } else {
            studies.forget();
            facts.setText(layer.isEmpty() ? Messages.Recipe_chooseOne : NLS.bind(Messages.Mesh_none, ScreeningWords.layer(layer.get())));
        }
        tell();
    }

    private void study(MeshStudy.Ask ask, Work work) {
        MeshStudy made = MeshStudy.of(ask, study);
        work.checkpoint();
        study = Optional.of(made);
        if (!display.isDisposed()) {
            display.asyncExec(this::tell);
        }
    }

    private void tell() {
        if (body.isDisposed()) {
            return;
        }
        Optional<MeshStudy> told = study.filter(found -> shown);
        beat.setText(told.map(found -> MeshWords.beat(found, distanceM)).orElse(""));
        advice.setText(told.map(MeshWords::advice).orElse(""));
        List<ScoredRuling> better = told.filter(found -> found.now().isPresent()).map(MeshStudy::better).orElse(List.of());
        if (!better.equals(table.getInput())) {
            table.setInput(better);
        }
        boolean ruled = told.flatMap(MeshStudy::now).isPresent();
        chart.show(ruled ? told.get().map() : List.of(), told.flatMap(MeshStudy::now));
        enable();
        body.layout(true, true);
    }

    @Override
    public Optional<DesignLayer> layer() {
        return chosen == null ? Optional.empty() : chosen.layer();
    }

    @Override
    public void setFocus() {
        table.getTable().setFocus();
    }

    @Override
    public void dispose() {
        undo.dispose();
        if (chosen != null) {
            chosen.dispose();
        }
        studies.forget();
        thread.shutdownNow();
        super.dispose();
    }
}
