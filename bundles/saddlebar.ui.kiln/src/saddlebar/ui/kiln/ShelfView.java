package saddlebar.ui.kiln;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.part.ViewPart;

import saddlebar.kiln.schedule.Schedule;
import saddlebar.kiln.shelf.ShelfLoad;
import saddlebar.kiln.shelf.ShelfPlaces;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.production.kiln.FiringBook;
import saddlebar.production.kiln.KilnHistory;
import saddlebar.production.kiln.StudioHeat;
import saddlebar.ui.Columns;
import saddlebar.ui.tree.WindowNode;

/** What lies where on the shelf: of a recorded firing, or what is being laid for the next one; with the shelf's hot and cold places. */
public final class ShelfView extends ViewPart {
    private static final int NARROW_PT = 60;

    private KilnDesk kiln;
    private final Runnable onKiln = this::refresh;
    private Composite body;
    private Label words;
    private ShelfCanvas canvas;
    private TableViewer table;
    private TableViewer problems;
    private Button lay;
    private Button enter;

    @Override
    public void createPartControl(Composite parent) {
        kiln = getSite().getService(KilnDesk.class);
        body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 4).spacing(6, 3).applyTo(body);
        words = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(NARROW_PT, SWT.DEFAULT).applyTo(words);
        SashForm halves = new SashForm(body, SWT.VERTICAL);
        GridDataFactory.fillDefaults().grab(true, true).hint(NARROW_PT, NARROW_PT).applyTo(halves);
        canvas = new ShelfCanvas(halves);
        SashForm lists = new SashForm(halves, SWT.HORIZONTAL);
        pieces(lists);
        problems = table(lists);
        new Columns(problems, (TableColumnLayout) problems.getTable().getParent().getLayout()).add(Messages.Shelf_look, 1, "", KilnWords.problems());
        halves.setWeights(70, 30);
        Composite row = new Composite(body, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(row);
        lay = button(row, Messages.Shelf_lay, this::lay);
        enter = button(row, Messages.Shelf_enter, this::enter);
        kiln.addListener(onKiln);
        refresh();
    }

    private static TableViewer table(Composite parent) {
        Composite frame = new Composite(parent, SWT.NONE);
        frame.setLayout(new TableColumnLayout());
        TableViewer viewer = new TableViewer(frame, SWT.FULL_SELECTION | SWT.MULTI | SWT.BORDER | SWT.V_SCROLL);
        viewer.getTable().setHeaderVisible(true);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        return viewer;
    }

    private void pieces(Composite parent) {
        table = table(parent);
        Columns columns = new Columns(table, (TableColumnLayout) table.getTable().getParent().getLayout());
        columns.add(Messages.Shelf_piece, 2, "W01/123", ColumnLabelProvider.createTextProvider(element -> ((ShelfLoad.Lay) element).piece()));
        columns.add(Messages.Shelf_place, 1, "A1", ColumnLabelProvider.createTextProvider(element -> kiln.shelf().map(plan -> ShelfPlan.place(
                (ShelfLoad.Lay) element, plan.load())).orElse("")));
        columns.add(Messages.Shelf_at, 2, "000, 000 mm", ColumnLabelProvider.createTextProvider(element -> KilnWords.number(((ShelfLoad.Lay) element).xMm(), 0)
                + ", " + KilnWords.number(((ShelfLoad.Lay) element).yMm(), 0) + " mm"));
    }

    private static Button button(Composite parent, String text, Runnable action) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(text);
        button.addListener(SWT.Selection, event -> action.run());
        return button;
    }

    /** The pieces that are chosen anywhere on the page; of a panel or a window all its pieces. */
    private List<Piece> chosen() {
        Set<Piece> pieces = new LinkedHashSet<>();
        ISelection selection = getSite().getPage().getSelection();
        List<ISelection> all = new ArrayList<>();
        if (selection != null) {
            all.add(selection);
        }
        for (var part : getSite().getPage().getViewReferences()) {
            if (part.getView(false) != null && part.getView(false).getSite().getSelectionProvider() != null) {
                all.add(part.getView(false).getSite().getSelectionProvider().getSelection());
            }
        }
        for (ISelection one : all) {
            if (pieces.isEmpty() && one instanceof IStructuredSelection structured) {
                structured.toList().forEach(thing -> pieces.addAll(pieces(thing)));
            }
        }
        return List.copyOf(pieces);
    }

    private List<Piece> pieces(Object thing) {
        if (thing instanceof Piece piece) {
            return List.of(piece);
        }
        if (thing instanceof Panel panel) {
            return panel.getPieces();
        }
        if (thing instanceof Window window) {
            return window.getPanels().stream().flatMap(panel -> panel.getPieces().stream()).toList();
        }
        return thing instanceof WindowNode node ? kiln.commission().flatMap(open -> open.window(node.name())).map(this::pieces).orElse(List.of()) : List.of();
    }

    private void lay() {
        List<Piece> pieces = chosen();
        kiln.lay(pieces);
        if (pieces.isEmpty()) {
            words.setText(Messages.Shelf_chooseFirst);
        }
    }

    private void enter() {
        if (kiln.commission().isEmpty() || kiln.kiln().isEmpty() || kiln.schedule().isEmpty() || kiln.shelf().isEmpty()) {
            return;
        }
        ShelfPlan plan = kiln.shelf().get();
        String question = NLS.bind(Messages.Shelf_enterQuestion, new Object[] {kiln.schedule().get().getName(), kiln.kiln().get().getName(),
                String.valueOf(plan.pieces().size())});
        if (MessageDialog.openConfirm(getSite().getShell(), Messages.Shelf_enter, question)) {
            try {
                Schedule asRun = StudioHeat.schedule(kiln.schedule().get());
                String name = new FiringBook(kiln.commission().get().folder()).enter(kiln.kiln().get(), asRun, plan.pieces());
                kiln.choose(kiln.choice().withFiring(name));
                kiln.readRecords();
            } catch (IOException | Refusal cannot) {
                MessageDialog.openError(getSite().getShell(), Messages.Shelf_enter, cannot.getMessage());
            }
        }
    }

    private void refresh() {
        if (body.isDisposed()) {
            return;
        }
        Optional<ShelfPlan> plan = kiln.shelf();
        String kilnId = kiln.firing().map(one -> one.firing().kilnId()).orElse(kiln.choice().kilnId());
        List<ShelfPlaces.Place> places = kiln.history().flatMap(known -> known.kiln(kilnId)).map(KilnHistory.KilnFacts::shelf).map(ShelfPlaces::places)
                .orElse(List.of());
        canvas.show(plan, places);
        table.setInput(plan.map(shown -> shown.load().lays()).orElse(List.of()));
        List<Problem> all = new ArrayList<>(plan.map(shown -> shown.load().check()).orElse(List.of()));
        kiln.history().flatMap(known -> known.kiln(kilnId)).ifPresent(facts -> all.addAll(facts.shelf().cautions()));
        problems.setInput(all);
        words.setText(said(plan));
        lay.setEnabled(kiln.commission().isPresent());
        enter.setEnabled(kiln.canEdit() && kiln.choice().firing().isEmpty() && plan.isPresent());
        body.layout(true, true);
    }

    private String said(Optional<ShelfPlan> plan) {
        if (kiln.commission().isEmpty()) {
            return Messages.Kiln_openFirst;
        }
        if (plan.isEmpty()) {
            return Messages.Kiln_noKiln;
        }
        if (kiln.firing().isPresent()) {
            return NLS.bind(Messages.Shelf_ofFiring, kiln.firing().get().firing().name(), String.valueOf(plan.get().load().lays().size()));
        }
        if (plan.get().load().lays().isEmpty()) {
            return Messages.Shelf_empty;
        }
        String use = NLS.bind(Messages.Shelf_use, String.valueOf(plan.get().load().lays().size()), KilnWords.number(100 * plan.get().load().use(), 0));
        return plan.get().left().isEmpty() ? use : use + " " + NLS.bind(Messages.Shelf_left, String.join(", ", plan.get().left()));
    }

    @Override
    public void setFocus() {
        table.getTable().setFocus();
    }

    @Override
    public void dispose() {
        if (kiln != null) {
            kiln.removeListener(onKiln);
        }
        super.dispose();
    }
}
