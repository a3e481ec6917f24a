package saddlebar.ui.stock;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.operations.UndoRedoActionGroup;
import org.eclipse.ui.part.ViewPart;

import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.StockSheet;
import saddlebar.model.commission.Studio;
import saddlebar.model.problem.Refusal;
import saddlebar.nesting.Effort;
import saddlebar.production.stock.GlassLaying;
import saddlebar.production.stock.LaidGlass;
import saddlebar.production.stock.LayoutDrawings;
import saddlebar.production.stock.LayoutFile;
import saddlebar.production.stock.ShelfGlass;
import saddlebar.production.stock.StockBook;
import saddlebar.production.stock.WantedPiece;
import saddlebar.ui.Columns;
import saddlebar.ui.Ids;
import saddlebar.ui.Messages;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.make.MonitorWork;
import saddlebar.ui.stock.StockShelf.Row;

/** Glass on stock: the sheets at hand in a table, the chosen one drawn with its pieces, flaws and off-cuts; sheets and flaws taken in, pieces laid. */
public final class StockView extends ViewPart {
    private static final int ORDERS = 12;
    private TableViewer table;
    private Canvas canvas;
    private Button flaw;
    private Button lay;
    private Button add;
    private CommissionDesk desk;
    private List<LaidGlass> laid = List.of();
    private final CommissionDesk.Listener onDesk = new CommissionDesk.Listener() {
        @Override
        public void opened(OpenCommission commission) {
            read();
        }

        @Override
        public void closing(OpenCommission commission) {
            laid = List.of();
            table.setInput(List.of());
        }

        @Override
        public void changed(OpenCommission commission) {
            refresh();
        }
    };

    @Override
    public void createPartControl(Composite parent) {
        desk = getSite().getService(CommissionDesk.class);
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(body);
        Composite row = new Composite(body, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(3).applyTo(row);
        add = button(row, Messages.Stock_add, this::add);
        flaw = button(row, Messages.Stock_flaw, this::flaw);
        lay = button(row, Messages.Stock_lay, this::lay);
        SashForm sash = new SashForm(body, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        Composite frame = new Composite(sash, SWT.NONE);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        table = new TableViewer(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.BORDER | SWT.V_SCROLL | SWT.H_SCROLL);
        table.getTable().setHeaderVisible(true);
        table.setContentProvider(ArrayContentProvider.getInstance());
        Columns columns = new Columns(table, layout);
        columns.add(Messages.Stock_glass, 2, "storm gray", ColumnLabelProvider.createTextProvider(each -> ((Row) each).glass()));
        columns.add(Messages.Stock_sheet, 1, "to buy 1", ColumnLabelProvider.createTextProvider(each -> name((Row) each)));
        columns.add(Messages.Stock_size, 1, "1000 \u00d7 1000", ColumnLabelProvider.createTextProvider(
                each -> Math.round(((Row) each).widthMm()) + " \u00d7 " + Math.round(((Row) each).heightMm())));
        columns.add(Messages.Stock_flaws, 0, "00", ColumnLabelProvider.createTextProvider(each -> String.valueOf(((Row) each).flaws())));
        columns.add(Messages.Stock_pieces, 0, "000", ColumnLabelProvider.createTextProvider(each -> String.valueOf(((Row) each).pieces())));
        table.addSelectionChangedListener(event -> {
            canvas.redraw();
            state();
        });
        canvas = new Canvas(sash, SWT.DOUBLE_BUFFERED | SWT.BORDER);
        canvas.addListener(SWT.Paint, event -> chosen().ifPresent(found -> InkPainter.paint(drawing(found), event.gc, canvas.getClientArea())));
        sash.setWeights(2, 3);
        desk.addListener(onDesk);
        read();
    }

    private static Button button(Composite row, String text, Runnable deed) {
        Button button = new Button(row, SWT.PUSH);
        button.setText(text);
        button.addListener(SWT.Selection, event -> deed.run());
        return button;
    }

    private static String name(Row row) {
        return row.sheet().isEmpty() ? Messages.Stock_toBuy : row.offcut() ? NLS.bind(Messages.Stock_offcut, row.name()) : row.name();
    }

    private static saddlebar.report.truesize.TrueSizeDrawing drawing(Row row) {
        return LayoutDrawings.drawing(row.laid().orElseGet(() -> new LaidGlass(row.glass(),
                ShelfGlass.of(row.sheet().orElseThrow().getGlass()).sheets().stream().filter(sheet -> sheet.name().equals(row.name())).findFirst()
                        .orElseThrow(),
                false,
                List.of(), List.of())));
    }

    private Optional<Row> chosen() {
        return Optional.ofNullable((Row) table.getStructuredSelection().getFirstElement());
    }

    /** The last layout is read with the commission; one that is torn is told and laid anew. */
    private void read() {
        laid = List.of();
        desk.commission().ifPresent(commission -> {
            new UndoRedoActionGroup(getSite(), commission.edits().context(), true).fillActionBars(getViewSite().getActionBars());
            try {
                laid = LayoutFile.read(commission.path());
            } catch (IOException | Refusal e) {
                setContentDescription(e.getMessage());
            }
        });
        refresh();
    }

    private void refresh() {
        if (table.getTable().isDisposed()) {
            return;
        }
        Optional<Row> before = chosen();
        List<Row> rows = desk.commission().map(commission -> StockShelf.rows(commission.folder().studio(), laid)).orElse(List.of());
        table.setInput(rows);
        rows.stream().filter(row -> before.filter(was -> was.glass().equals(row.glass()) && was.name().equals(row.name())).isPresent()).findFirst()
                .ifPresent(row -> table.setSelection(new org.eclipse.jface.viewers.StructuredSelection(row)));
        setContentDescription(desk.commission().isEmpty() ? Messages.Stock_openFirst : rows.isEmpty() ? Messages.Stock_empty : "");
        canvas.redraw();
        state();
    }

    private void state() {
        add.setEnabled(desk.canEdit());
        flaw.setEnabled(desk.canEdit() && chosen().flatMap(Row::sheet).isPresent());
        lay.setEnabled(desk.canEdit());
    }

    private void add() {
        OpenCommission commission = desk.commission().orElseThrow();
        Studio studio = commission.folder().studio();
        List<GlassStock> glasses = List.copyOf(studio.getGlass());
        SheetDialog dialog = new SheetDialog(getSite().getShell(), Messages.Stock_addTitle, Messages.Stock_addMessage,
                glasses.stream().map(GlassStock::getName).toList(),
                List.of(Messages.Stock_width, Messages.Stock_height), List.of("500", "800"), 10_000);
        if (dialog.open() == Window.OK) {
            edit(commission, Messages.Stock_addStep, studio,
                    () -> new StockBook(studio).add(glasses.get(dialog.chosen()), "", dialog.lengthMm(0), dialog.lengthMm(1), Optional.empty(), false, false));
        }
    }

    private void flaw() {
        OpenCommission commission = desk.commission().orElseThrow();
        StockSheet sheet = chosen().flatMap(Row::sheet).orElseThrow();
        SheetDialog dialog = new SheetDialog(getSite().getShell(), Messages.Stock_flawTitle, NLS.bind(Messages.Stock_flawMessage, sheet.getName()), List.of(),
                List.of(Messages.Stock_fromLeft, Messages.Stock_fromTop, Messages.Stock_around), List.of("100", "100", "20"), 10_000);
        if (dialog.open() == Window.OK) {
            edit(commission, Messages.Stock_flawStep, sheet,
                    () -> new StockBook(commission.folder().studio()).flaw(sheet, "flaw",
                            StockBook.round(dialog.lengthMm(0), dialog.lengthMm(1), dialog.lengthMm(2))));
        }
    }

    private void edit(OpenCommission commission, String label, org.eclipse.emf.ecore.EObject target, Runnable change) {
        try {
            commission.edits().perform(label, target, change);
        } catch (Refusal refusal) {
            MessageDialog.openError(getSite().getShell(), label, refusal.getMessage());
        }
    }

    private void lay() {
        OpenCommission commission = desk.commission().orElseThrow();
        List<WantedPiece> pieces = StockBook.wanted(commission.windowNames().stream().flatMap(name -> commission.window(name).stream()).toList());
        List<ShelfGlass> shelf = new StockBook(commission.folder().studio()).shelf();
        if (pieces.isEmpty()) {
            MessageDialog.openInformation(getSite().getShell(), Messages.Stock_lay, Messages.Stock_noPieces);
            return;
        }
        Path folder = commission.path();
        int glasses = (int) pieces.stream().map(WantedPiece::glass).distinct().count();
        Job job = Job.create(Messages.Stock_job, (ICoreRunnable) monitor -> {
            GlassLaying.Result result = new GlassLaying(GlassLaying.USUAL_GAP_MM, GlassLaying.USUAL_EDGE_MM, true, Effort.rounds(ORDERS)).lay(pieces, shelf,
                    new MonitorWork(SubMonitor.convert(monitor, glasses * GlassLaying.WORK_UNITS)));
            try {
                LayoutFile.write(folder, result);
            } catch (IOException e) {
                throw new CoreException(new Status(IStatus.WARNING, Ids.PLUGIN, e.getMessage(), e));
            }
            getSite().getShell().getDisplay().asyncExec(() -> {
                if (!table.getTable().isDisposed()) {
                    read();
                }
            });
        });
        job.setUser(true);
        job.schedule();
    }

    @Override
    public void setFocus() {
        table.getTable().setFocus();
    }

    @Override
    public void dispose() {
        desk.removeListener(onDesk);
        super.dispose();
    }
}
