package saddlebar.ui.dots;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.part.ViewPart;

import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.MendKind;
import saddlebar.model.commission.MendedPlace;
import saddlebar.model.commission.StencilRecipe;
import saddlebar.model.problem.PlaceMm;
import saddlebar.model.work.Work;
import saddlebar.ui.Columns;
import saddlebar.ui.Ids;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.Edits;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.desk.UndoHere;
import saddlebar.ui.screening.Background;
import saddlebar.ui.screening.LayerScreen;
import saddlebar.ui.screening.NewestWins;
import saddlebar.ui.screening.PreviewAsk;
import saddlebar.ui.screening.PreviewRoom;
import saddlebar.ui.screening.ScreenWords;
import saddlebar.ui.screening.ScreeningWords;

/** Places of what Dots shows that are too fine for the mesh, and those that the recipe widens already; each can be taken, and taken back. */
public final class NarrowView extends ViewPart {
    private static final int NARROWEST_PT = 120;
    /** More are a matter for the recipe, not for single places. */
    private static final int MOST = 200;

    private record Asked(PreviewRoom.Preview preview, PreviewAsk.LimitsMm limits, double dpi) {
    }

    private final ExecutorService thread = Background.thread("saddlebar narrow places");
    private final NewestWins<Asked> searches = new NewestWins<>(thread, this::search);
    private final Runnable onPreview = this::show;
    private CommissionDesk desk;
    private UndoHere undo;
    private Display display;
    private Composite body;
    private Label facts;
    private TableViewer found;
    private TableViewer taken;
    private Button take;
    private Button takeAll;
    private Button back;
    private Optional<DotsView> dots = Optional.empty();
    private Optional<Asked> asked = Optional.empty();
    private List<NarrowPlaces.Proposal> proposals = List.of();

    @Override
    public void createPartControl(Composite parent) {
        display = parent.getDisplay();
        body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).equalWidth(true).margins(6, 4).spacing(6, 3).applyTo(body);
        facts = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(NARROWEST_PT, SWT.DEFAULT).applyTo(facts);
        new Label(body, SWT.NONE).setText(ScreenWords.Narrow_found);
        new Label(body, SWT.NONE).setText(ScreenWords.Narrow_taken);
        found = table();
        taken = table();
        Composite left = new Composite(body, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).equalWidth(true).applyTo(left);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(left);
        take = button(left, ScreenWords.Narrow_take, () -> take(chosenProposals()));
        takeAll = button(left, ScreenWords.Narrow_takeAll, () -> take(proposals));
        back = button(body, ScreenWords.Narrow_back, this::takeBack);
        found.addSelectionChangedListener(event -> enable());
        taken.addSelectionChangedListener(event -> enable());
        found.addDoubleClickListener(event -> chosenProposals().stream().findFirst().ifPresent(one -> dots.ifPresent(part -> part.lookAt(one.at()))));
        desk = getSite().getService(CommissionDesk.class);
        undo = new UndoHere(getViewSite(), desk);
        IViewPart part = getSite().getPage().findView(Ids.DOTS_VIEW);
        dots = part instanceof DotsView view ? Optional.of(view) : Optional.empty();
        dots.ifPresent(view -> view.whenPreviewed(onPreview));
        show();
    }

    private TableViewer table() {
        Composite frame = new Composite(body, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).hint(NARROWEST_PT, NARROWEST_PT / 2).applyTo(frame);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        TableViewer viewer = new TableViewer(frame, SWT.FULL_SELECTION | SWT.MULTI | SWT.BORDER | SWT.V_SCROLL);
        viewer.getTable().setHeaderVisible(true);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        Columns columns = new Columns(viewer, layout);
        columns.add(ScreenWords.Narrow_columnWhat, 2, ScreenWords.Narrow_opening, ColumnLabelProvider.createTextProvider(NarrowView::what));
        columns.add(ScreenWords.Narrow_columnPlace, 2, "123.45, 123.45 mm", ColumnLabelProvider.createTextProvider(NarrowView::where));
        columns.add(ScreenWords.Narrow_columnWidth, 1, "0.163 mm", ColumnLabelProvider.createTextProvider(NarrowView::width));
        return viewer;
    }

    private static Button button(Composite parent, String words, Runnable what) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(words);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(button);
        button.addListener(SWT.Selection, event -> what.run());
        return button;
    }

    private static String what(Object one) {
        boolean thicken = one instanceof MendedPlace mend ? mend.getKind() == MendKind.THICKEN : ((NarrowPlaces.Proposal) one).thicken();
        return thicken ? ScreenWords.Narrow_opening : ScreenWords.Narrow_bridge;
    }

    private static String where(Object one) {
        PlaceMm at = one instanceof MendedPlace mend ? new PlaceMm(mend.getXMm(), mend.getYMm()) : ((NarrowPlaces.Proposal) one).at();
        return ScreeningWords.number(at.xMm(), 2) + ", " + ScreeningWords.number(at.yMm(), 2) + " mm";
    }

    private static String width(Object one) {
        return ScreeningWords.number(one instanceof MendedPlace mend ? mend.getWidthMm() : ((NarrowPlaces.Proposal) one).widthMm(), 3) + " mm";
    }

    @SuppressWarnings("unchecked")
    private List<NarrowPlaces.Proposal> chosenProposals() {
        return found.getStructuredSelection().toList();
    }

    private Optional<StencilRecipe> recipe() {
        return dots.flatMap(DotsView::layer).map(DesignLayer::getRecipe);
    }

    private void show() {
        if (body.isDisposed()) {
            return;
        }
        Optional<LayerScreen> screen = dots.flatMap(DotsView::layer).filter(layer -> layer.getRecipe() != null)
                .flatMap(layer -> desk.commission().map(open -> new LayerScreen(open, layer)));
        Optional<Asked> now = dots.flatMap(DotsView::preview)
                .flatMap(preview -> screen.map(it -> new Asked(preview, it.limits(), recipe().map(StencilRecipe::getDpi).orElse(1200))));
        if (!now.equals(asked)) {
            asked = now;
            proposals = List.of();
            now.ifPresentOrElse(searches::ask, searches::forget);
        }
        tell();
    }

    /** On its own thread. */
    private void search(Asked wanted, Work work) {
        List<NarrowPlaces.Proposal> all = NarrowPlaces.of(wanted.preview(), wanted.limits(), wanted.dpi());
        work.checkpoint();
        if (!display.isDisposed()) {
            display.asyncExec(() -> {
                proposals = all;
                tell();
            });
        }
    }

    private void tell() {
        if (body.isDisposed()) {
            return;
        }
        facts.setText(asked.isEmpty()
                ? ScreenWords.Narrow_chooseOne
                : NLS.bind(proposals.size() > MOST ? ScreenWords.Narrow_tooMany : ScreenWords.Narrow_facts, new Object[] {proposals.size(),
                        ScreeningWords.number(asked.get().limits().openMm(), 3), ScreeningWords.number(asked.get().limits().bridgeMm(), 3)}));
        found.setInput(proposals.stream().limit(MOST).toList());
        taken.setInput(recipe().map(it -> List.copyOf(it.getMends())).orElse(List.of()));
        enable();
        body.layout(true, true);
    }

    private void enable() {
        boolean edits = desk != null && desk.canEdit();
        take.setEnabled(edits && !found.getStructuredSelection().isEmpty());
        takeAll.setEnabled(edits && !proposals.isEmpty() && proposals.size() <= MOST);
        back.setEnabled(edits && !taken.getStructuredSelection().isEmpty());
    }

    /** Takes proposals into the recipe, as one step that can be taken back. */
    public void take(List<NarrowPlaces.Proposal> wanted) {
        recipe().filter(it -> desk.canEdit() && !wanted.isEmpty()).ifPresent(it -> edits().perform(ScreenWords.Edit_widen, it, () -> {
            for (NarrowPlaces.Proposal one : wanted) {
                MendedPlace mend = CommissionFactory.eINSTANCE.createMendedPlace();
                mend.setKind(one.thicken() ? MendKind.THICKEN : MendKind.STRENGTHEN);
                mend.setXMm(one.at().xMm());
                mend.setYMm(one.at().yMm());
                mend.setWidthMm(one.widthMm());
                it.getMends().add(mend);
            }
        }));
        show();
    }

    private void takeBack() {
        List<?> gone = taken.getStructuredSelection().toList();
        recipe().ifPresent(it -> edits().perform(ScreenWords.Edit_widenBack, it, () -> it.getMends().removeAll(gone)));
        show();
    }

    private Edits edits() {
        return desk.commission().map(OpenCommission::edits).orElseThrow();
    }

    /** What a test waits for. */
    public List<NarrowPlaces.Proposal> proposals() {
        return proposals;
    }

    @Override
    public void setFocus() {
        found.getTable().setFocus();
    }

    @Override
    public void dispose() {
        undo.dispose();
        dots.ifPresent(view -> view.unlessPreviewed(onPreview));
        searches.forget();
        thread.shutdownNow();
        super.dispose();
    }
}
