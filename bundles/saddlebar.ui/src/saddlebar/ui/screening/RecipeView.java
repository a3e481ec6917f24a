package saddlebar.ui.screening;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ExecutorService;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.part.ViewPart;

import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.ProcessSetting;
import saddlebar.model.commission.TonerSide;
import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;
import saddlebar.stencil.mesh.ScoredRuling;
import saddlebar.stencil.process.StencilProcesses;
import saddlebar.ui.Messages;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.desk.UndoHere;

/** The recipe of the chosen layer, to be typed in. Whatever is changed can be taken back, and Dots shows it at once. */
public final class RecipeView extends ViewPart implements LayerPart {
    private static final int LEAST_WIDTH_PT = 480;
    private static final RecipeField[] DOTS = {RecipeField.METHOD, RecipeField.RULING, RecipeField.ANGLE, RecipeField.DOT, RecipeField.DOT_SIZE,
            RecipeField.FILTER, RecipeField.COURSE, RecipeField.COURSE_LAYER, RecipeField.NOISE_SIDE, RecipeField.CLUMP, RecipeField.SUPERCELL,
            RecipeField.PIXELS};
    private static final RecipeField[] TONE = {RecipeField.TONE, RecipeField.FROM, RecipeField.TO, RecipeField.LEAST, RecipeField.MOST, RecipeField.ENDS};
    private static final RecipeField[] STENCIL = {RecipeField.PROCESS, RecipeField.MIRROR};
    private static final RecipeField[] LIMITS = {RecipeField.OPENING, RecipeField.BRIDGE, RecipeField.TRAP};

    private final List<FieldRow> rows = new ArrayList<>();
    private final ExecutorService thread = Background.thread("saddlebar mesh of the recipe");
    private final NewestWins<MeshStudy.Ask> studies = new NewestWins<>(thread, this::study);
    private volatile Optional<MeshStudy> study = Optional.empty();
    private CommissionDesk desk;
    private UndoHere undo;
    private ChosenLayer chosen;
    private ScrolledComposite scroll;
    private Composite body;
    private Label title;
    private Link better;
    private Composite fields;
    private Label side;
    private Label caution;
    private Display display;

    @Override
    public void createPartControl(Composite parent) {
        display = parent.getDisplay();
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL | SWT.H_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        body = new Composite(scroll, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 4).applyTo(body);
        scroll.setContent(body);
        title = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_WIDTH_PT, SWT.DEFAULT).applyTo(title);
        better = new Link(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_WIDTH_PT, SWT.DEFAULT).exclude(true).applyTo(better);
        better.setVisible(false);
        better.addListener(SWT.Selection, event -> study.flatMap(MeshStudy::nearBetter).ifPresent(this::take));
        fields = new Composite(body, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).equalWidth(true).spacing(8, 4).applyTo(fields);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(fields);
        Composite left = column();
        Composite right = column();
        group(left, Messages.Recipe_groupDots, DOTS);
        group(right, Messages.Recipe_groupTone, TONE);
        Group process = group(left, Messages.Recipe_groupStencil, STENCIL);
        group(right, Messages.Recipe_groupLimits, LIMITS);
        side = new Label(process, SWT.WRAP);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(LEAST_WIDTH_PT / 3, SWT.DEFAULT).applyTo(side);
        caution = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_WIDTH_PT, SWT.DEFAULT).applyTo(caution);
        desk = getSite().getService(CommissionDesk.class);
        undo = new UndoHere(getViewSite(), desk);
        chosen = new ChosenLayer(getSite().getPage(), desk, this::show);
        scroll.addListener(SWT.Resize, event -> layOut());
    }

    private Composite column() {
        Composite column = new Composite(fields, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 6).applyTo(column);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(column);
        return column;
    }

    private Group group(Composite column, String name, RecipeField[] of) {
        Group group = new Group(column, SWT.NONE);
        group.setText(name);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(6, 4).spacing(8, 3).applyTo(group);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(group);
        for (RecipeField field : of) {
            rows.add(new FieldRow(group, field, this::take, this::layOut));
        }
        return group;
    }

    private Optional<RecipeSheet> sheet() {
        return chosen == null ? Optional.empty() : chosen.layer().flatMap(this::sheet);
    }

    private Optional<RecipeSheet> sheet(DesignLayer layer) {
        return Optional.ofNullable(layer.getRecipe()).map(recipe -> new RecipeSheet(recipe, desk.canEdit()
                ? desk.commission().map(OpenCommission::edits)
                : Optional.empty(), Locale.getDefault(Locale.Category.FORMAT)));
    }

    private Optional<String> take(RecipeField field, String typed) {
        return sheet().filter(RecipeSheet::canEdit).flatMap(sheet -> sheet.take(field, typed));
    }

    private void take(ScoredRuling pair) {
        sheet().filter(RecipeSheet::canEdit).ifPresent(sheet -> sheet.takePair(pair.lpi(), pair.angleDeg()));
    }

    private void show(Optional<DesignLayer> layer) {
        if (body.isDisposed()) {
            return;
        }
        Optional<RecipeSheet> sheet = layer.flatMap(this::sheet);
        fields.setVisible(sheet.isPresent());
        title.setText(layer.map(found -> sheet.isPresent() ? name(found) : NLS.bind(Messages.Recipe_none, name(found))).orElse(Messages.Recipe_chooseOne));
        caution.setText("");
        sheet.ifPresent(shown -> rows.forEach(row -> row.show(shown)));
        Optional<LayerScreen> screen = layer.filter(found -> sheet.isPresent()).flatMap(found -> desk.commission()
                .map(open -> new LayerScreen(open, found)));
        screen.ifPresent(found -> {
            side.setText(sideWords(found.process()));
            caution.setText(cautionOf(layer.get().getRecipe().getProcessKey()));
        });
        Optional<MeshStudy.Ask> ask = screen.flatMap(LayerScreen::meshAsk);
        if (ask.isPresent()) {
            studies.ask(ask.get());
        } else {
            studies.forget();
            warn(Optional.empty());
        }
        layOut();
    }

    private static String name(DesignLayer layer) {
        return ScreeningWords.layer(layer);
    }

    private static String sideWords(Optional<ProcessSetting> setting) {
        boolean squeegee = setting.filter(found -> found.getTonerSide() == TonerSide.SQUEEGEE).isPresent();
        String where = squeegee ? Messages.Toner_squeegee : Messages.Toner_print;
        return setting.filter(ProcessSetting::isConfirmed).isPresent() ? where : NLS.bind(Messages.Toner_unconfirmed, where);
    }

    private static String cautionOf(String process) {
        try {
            return StencilProcesses.ownProcesses().process(process).caution();
        } catch (Refusal e) {
            return e.getMessage();
        }
    }

    private void study(MeshStudy.Ask ask, Work work) {
        MeshStudy made = MeshStudy.of(ask, study);
        work.checkpoint();
        if (!display.isDisposed()) {
            display.asyncExec(() -> {
                study = Optional.of(made);
                warn(study.flatMap(MeshStudy::nearBetter));
            });
        }
    }

    private void warn(Optional<ScoredRuling> pair) {
        if (better.isDisposed()) {
            return;
        }
        String words = pair.map(found -> NLS.bind(Messages.Recipe_better, ScreeningWords.pair(found))).orElse("");
        if (!words.equals(better.getText())) {
            better.setText(words);
            better.setVisible(!words.isEmpty());
            ((GridData) better.getLayoutData()).exclude = words.isEmpty();
            layOut();
        }
    }

    private void layOut() {
        int width = Math.max(LEAST_WIDTH_PT, scroll.getClientArea().width);
        scroll.setMinSize(LEAST_WIDTH_PT, body.computeSize(width, SWT.DEFAULT, true).y);
        body.layout(true, true);
    }

    @Override
    public Optional<DesignLayer> layer() {
        return chosen == null ? Optional.empty() : chosen.layer();
    }

    @Override
    public void setFocus() {
        fields.setFocus();
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
