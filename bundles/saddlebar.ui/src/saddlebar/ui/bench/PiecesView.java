package saddlebar.ui.bench;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerComparator;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.part.ViewPart;

import saddlebar.model.commission.MakingState;
import saddlebar.model.commission.Piece;
import saddlebar.production.pieces.NumberOrder;
import saddlebar.ui.Columns;
import saddlebar.ui.Lengths;
import saddlebar.ui.Messages;
import saddlebar.ui.StudioPreferences;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.desk.SelectionOf;
import saddlebar.production.light.GlassLook;
import saddlebar.production.light.RectMm;
import saddlebar.production.light.ScenePiece;
import saddlebar.ui.properties.PropertiesPage;
import saddlebar.ui.tree.MakingWords;
import saddlebar.ui.tree.StateBoard;

/** The pieces of the window on the Easel as a table: the same to a screen reader as the Easel is to the eye. */
public final class PiecesView extends ViewPart implements ISelectionListener {
    /** A line of the table: the piece as shown, and the model's piece where there is one. */
    private record Line(ScenePiece shown, Optional<Piece> made, GlassLook glass, Object thing) {
    }

    private TableViewer table;
    private LineSelection selection;
    private EaselFollower follower;
    private boolean following;
    private StateBoard states;
    private final Runnable onStates = () -> table.refresh();
    private CommissionDesk desk;
    private final CommissionDesk.Listener onDesk = new CommissionDesk.Listener() {
        @Override
        public void changed(OpenCommission commission) {
            table.refresh(); // locks and groups are no matter of the scene
        }
    };

    @Override
    public void createPartControl(Composite parent) {
        states = getSite().getService(StateBoard.class);
        Composite frame = new Composite(parent, SWT.NONE);
        table = new TableViewer(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        table.getTable().setHeaderVisible(true);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        Lengths lengths = StudioPreferences.lengths();
        Columns columns = new Columns(table, layout);
        column(columns, Messages.Property_number, 0, "888", line -> line.shown.number(), Comparator.comparingInt(line -> number(line.shown.number())));
        column(columns, Messages.Property_glass, 3, "pale straw", line -> line.glass.name().isEmpty() ? Messages.Glass_unchosen : line.glass.name(),
                Comparator.comparing(line -> line.glass.name()));
        column(columns, Messages.Property_state, 1, MakingWords.of(MakingState.ON_SHEET),
                line -> state(line).map(MakingWords::of).orElse(Messages.State_notMade),
                Comparator.comparing(line -> state(line).map(Enum::ordinal).orElse(-1)));
        column(columns, Messages.Property_size, 1, lengths.size(388.8, 388.8), line -> {
            RectMm bounds = line.shown.contour().bounds();
            return lengths.size(bounds.widthMm(), bounds.heightMm());
        }, Comparator.comparingDouble(line -> Math.max(line.shown.contour().bounds().widthMm(), line.shown.contour().bounds().heightMm())));
        column(columns, Messages.Property_area, 1, lengths.area(28888), line -> lengths.area(line.shown.contour().areaMm2()),
                Comparator.comparingDouble(line -> line.shown.contour().areaMm2()));
        column(columns, Messages.Pieces_lock, 0, Messages.Pieces_locked, line -> isLocked(line) ? Messages.Pieces_locked : "",
                Comparator.comparing(PiecesView::isLocked));
        column(columns, Messages.Pieces_group, 1, "sky", PiecesView::group, Comparator.comparing(PiecesView::group));
        table.setContentProvider(ArrayContentProvider.getInstance());
        selection = new LineSelection();
        getSite().setSelectionProvider(selection);
        table.addSelectionChangedListener(event -> chosenHere());
        getSite().getPage().addSelectionListener(this);
        states.addListener(onStates);
        desk = getSite().getService(CommissionDesk.class);
        desk.addListener(onDesk);
        menus();
        follower = new EaselFollower(getSite().getPage(), this::follow);
        follow(follower.front());
    }

    private void column(Columns columns, String title, int share, String widest, Function<Line, String> text, Comparator<Line> order) {
        TableColumn column = columns.add(title, share, widest, ColumnLabelProvider.createTextProvider(line -> text.apply((Line) line)));
        column.addListener(SWT.Selection, event -> {
            boolean again = table.getTable().getSortColumn() == column && table.getTable().getSortDirection() == SWT.UP;
            table.getTable().setSortColumn(column);
            table.getTable().setSortDirection(again ? SWT.DOWN : SWT.UP);
            table.setComparator(new ViewerComparator() {
                @Override
                public int compare(Viewer viewer, Object one, Object other) {
                    int way = order.compare((Line) one, (Line) other);
                    return again ? -way : way;
                }
            });
        });
    }

    private static String group(Line line) {
        return line.made.map(Piece::getGroup).orElse("");
    }

    private static boolean isLocked(Line line) {
        return line.made.map(Piece::isLocked).orElse(false);
    }

    /** Numbers anew from the part's own menu, locks from that of a line too. */
    private void menus() {
        PieceEdits edits = new PieceEdits(getSite().getWorkbenchWindow());
        IMenuManager own = getViewSite().getActionBars().getMenuManager();
        own.add(numbering(edits));
        MenuManager menu = new MenuManager();
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(shown -> {
            Optional<Piece> piece = Optional.ofNullable((Line) table.getStructuredSelection().getFirstElement()).flatMap(Line::made);
            boolean locked = piece.map(Piece::isLocked).orElse(false);
            boolean grouped = piece.map(Piece::getGroup).isPresent();
            String words = locked
                    ? grouped ? Messages.Pieces_unlockGroup : Messages.Pieces_unlock
                    : grouped ? Messages.Pieces_lockGroup : Messages.Pieces_lockOne;
            Action lock = action(words, () -> piece.ifPresent(one -> edits.lock(one, !locked)));
            lock.setEnabled(piece.isPresent() && edits.isPossible());
            shown.add(lock);
            shown.add(numbering(edits));
        });
        table.getTable().setMenu(menu.createContextMenu(table.getTable()));
    }

    private MenuManager numbering(PieceEdits edits) {
        MenuManager orders = new MenuManager(Messages.Pieces_numberAnew);
        orders.add(numbering(edits, Messages.Pieces_byReading, NumberOrder.READING));
        orders.add(numbering(edits, Messages.Pieces_byColumns, NumberOrder.COLUMNS));
        orders.add(numbering(edits, Messages.Pieces_bySize, NumberOrder.SIZE));
        orders.add(numbering(edits, Messages.Pieces_byGlass, NumberOrder.GLASS));
        return orders;
    }

    private Action numbering(PieceEdits edits, String words, NumberOrder order) {
        return action(words, () -> follower.front().ifPresent(editor -> edits.number(editor.window().windowName(), order)));
    }

    private static Action action(String words, Runnable deed) {
        return new Action(words) {
            @Override
            public void run() {
                deed.run();
            }
        };
    }

    private Optional<MakingState> state(Line line) {
        return line.made.map(states.states()::of);
    }

    private static int number(String text) {
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException e) {
            return Integer.MAX_VALUE; // a pane without a number stands last
        }
    }

    private void follow(Optional<EaselEditor> editor) {
        if (table.getTable().isDisposed()) {
            return;
        }
        List<Line> lines = editor.map(PiecesView::lines).orElse(List.of());
        table.setInput(lines);
        setContentDescription(lines.isEmpty() ? Messages.Pieces_none : NLS.bind(Messages.Pieces_count, lines.size()));
        editor.flatMap(easel -> easel.easel().chosen()).ifPresent(this::mark);
    }

    private static List<Line> lines(EaselEditor editor) {
        int colourway = editor.easel().look().colourway();
        return editor.easel().scene().stream().flatMap(scene -> scene.pieces().stream()).map(piece -> {
            Optional<Piece> made = editor.ours().flatMap(open -> open.piece(editor.window().windowName(), piece.id()));
            Object thing = made.isPresent() ? made.get() : new DrawnPiece(editor.window().windowName(), piece);
            return new Line(piece, made, piece.glass(colourway), thing);
        }).toList();
    }

    private void chosenHere() {
        if (!following && !selection.choosesNone() && table.getStructuredSelection().getFirstElement() instanceof Line line) {
            follower.front().ifPresent(editor -> editor.easel().choose(Optional.of(line.shown.id()), true));
        }
    }

    private void mark(ScenePiece piece) {
        following = true;
        try {
            ((List<?>) table.getInput()).stream().map(Line.class::cast).filter(line -> line.shown.id().equals(piece.id())).findFirst()
                    .ifPresent(line -> table.setSelection(new StructuredSelection(line), true));
        } finally {
            following = false;
        }
    }

    @Override
    public void selectionChanged(IWorkbenchPart part, ISelection selection) {
        if (part != this && selection instanceof IStructuredSelection) {
            follower.front().flatMap(editor -> editor.easel().chosen()).ifPresent(this::mark);
        }
    }

    @Override
    public void setFocus() {
        selection.focus();
    }

    @Override
    public void dispose() {
        if (follower != null) {
            follower.dispose();
            states.removeListener(onStates);
            desk.removeListener(onDesk);
            getSite().getPage().removeSelectionListener(this);
        }
        super.dispose();
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        T properties = PropertiesPage.adapt(adapter, this);
        return properties != null ? properties : super.getAdapter(adapter);
    }

    /** Tells others of the piece, not of our line. */
    private final class LineSelection extends SelectionOf {
        LineSelection() {
            super(table);
        }

        boolean choosesNone() {
            return isFocusing();
        }

        @Override
        protected Object thing(Object line) {
            return ((Line) line).thing;
        }
    }
}
