package saddlebar.ui.problems;

import java.util.Optional;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.part.ViewPart;

import saddlebar.model.problem.Severity;
import saddlebar.production.light.PlacedMend;
import saddlebar.ui.Columns;
import saddlebar.ui.Messages;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.CommissionOpening;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.desk.SelectionOf;

/** The one list of problems. Choosing one shows its place on the Easel if its window lies there; Enter or a double click puts it there. */
public final class ProblemsView extends ViewPart {
    private TableViewer table;
    private SelectionOf selection;
    private ProblemBoard board;
    private CommissionDesk desk;
    private Action mendAll;
    private final Runnable onBoard = this::refresh;
    private final CommissionDesk.Listener onDesk = new CommissionDesk.Listener() {
        @Override
        public void closing(OpenCommission commission) {
            board.clear();
        }

        @Override
        public void changed(OpenCommission commission) {
            mendAll.setEnabled(!board.mends().isEmpty() && desk.canEdit());
        }
    };

    @Override
    public void createPartControl(Composite parent) {
        Composite frame = new Composite(parent, SWT.NONE);
        table = new TableViewer(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        table.getTable().setHeaderVisible(true);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        Columns columns = new Columns(table, layout);
        columns.add(Messages.Problems_severity, 0, "    " + words(Severity.WARNING), new ColumnLabelProvider() {
            @Override
            public String getText(Object element) {
                return words(((PlacedProblem) element).problem().severity());
            }

            @Override
            public Image getImage(Object element) {
                return image(((PlacedProblem) element).problem().severity());
            }
        });
        columns.add(Messages.Problems_where, 1, "W01 trace 88", ColumnLabelProvider.createTextProvider(element -> ((PlacedProblem) element).problem().where()));
        columns.add(Messages.Problems_what, 6, "", new ColumnLabelProvider() {
            @Override
            public String getText(Object element) {
                return ((PlacedProblem) element).problem().message();
            }

            @Override
            public String getToolTipText(Object element) {
                return getText(element);
            }
        });
        columns.add(Messages.Problems_mend, 3, "", new ColumnLabelProvider() {
            @Override
            public String getText(Object element) {
                return board.mend((PlacedProblem) element).map(mend -> mend.mend().message()).orElse("");
            }

            @Override
            public String getToolTipText(Object element) {
                String words = getText(element);
                return words.isEmpty() ? null : words;
            }
        });
        table.setContentProvider(ArrayContentProvider.getInstance());
        table.addDoubleClickListener(event -> show((IStructuredSelection) event.getSelection()));
        selection = new SelectionOf(table) {
            @Override
            protected Object thing(Object line) {
                return line;
            }
        };
        getSite().setSelectionProvider(selection);
        board = getSite().getService(ProblemBoard.class);
        board.addListener(onBoard);
        desk = getSite().getService(CommissionDesk.class);
        desk.addListener(onDesk);
        mendActions();
        refresh();
    }

    /** One proposal by the menu of its line, all of them by the part's own bar. */
    private void mendActions() {
        MendingWindow mending = new MendingWindow(getSite().getWorkbenchWindow());
        mendAll = new Action(Messages.Mend_all) {
            @Override
            public void run() {
                mending.acceptAll(board.mends());
            }
        };
        mendAll.setToolTipText(Messages.Mend_allHint);
        getViewSite().getActionBars().getToolBarManager().add(mendAll);
        MenuManager menu = new MenuManager();
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(shown -> {
            Optional<PlacedMend> found = Optional.ofNullable(table.getStructuredSelection().getFirstElement())
                    .flatMap(line -> board.mend((PlacedProblem) line));
            Action one = new Action(Messages.Mend_this) {
                @Override
                public void run() {
                    found.ifPresent(mending::accept);
                }
            };
            one.setEnabled(found.isPresent() && mending.isPossible());
            mendAll.setEnabled(!board.mends().isEmpty() && mending.isPossible());
            shown.add(one);
            shown.add(mendAll);
        });
        table.getTable().setMenu(menu.createContextMenu(table.getTable()));
    }

    private static String words(Severity severity) {
        return switch (severity) {
            case ERROR -> Messages.Severity_error;
            case WARNING -> Messages.Severity_warning;
            case NOTE -> Messages.Severity_note;
        };
    }

    private static Image image(Severity severity) {
        ISharedImages images = PlatformUI.getWorkbench().getSharedImages();
        return images.getImage(switch (severity) {
            case ERROR -> ISharedImages.IMG_OBJS_ERROR_TSK;
            case WARNING -> ISharedImages.IMG_OBJS_WARN_TSK;
            case NOTE -> ISharedImages.IMG_OBJS_INFO_TSK;
        });
    }

    private void show(IStructuredSelection selection) {
        if (selection.getFirstElement() instanceof PlacedProblem problem && !problem.windowName().isEmpty()) {
            desk.commission().ifPresent(commission -> {
                new CommissionOpening(getSite().getWorkbenchWindow()).showWindow(commission, problem.windowName());
                table.setSelection(selection); // tell the Easel again, now that it is there
            });
        }
    }

    private void refresh() {
        var all = board.all();
        table.setInput(all);
        if (mendAll != null) {
            mendAll.setEnabled(!board.mends().isEmpty() && desk.canEdit());
        }
        setContentDescription(all.isEmpty() ? Messages.Problems_none : NLS.bind(Messages.Problems_count, all.size()));
    }

    @Override
    public void setFocus() {
        selection.focus();
    }

    @Override
    public void dispose() {
        if (board != null) {
            board.removeListener(onBoard);
            desk.removeListener(onDesk);
        }
        super.dispose();
    }
}
