package saddlebar.ui.kiln;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.part.ViewPart;

import saddlebar.kiln.chart.FiringChart;
import saddlebar.kiln.chart.FiringTable;
import saddlebar.report.chart.ChartPdf;
import saddlebar.ui.Columns;

/** The Kiln chart: schedule, kiln, core, stress, and what was measured; as a picture, or the same in numbers. */
public final class ChartView extends ViewPart {
    private static final double TABLE_EVERY_MIN = 15;

    private KilnDesk kiln;
    private final Runnable onKiln = this::refresh;
    private Composite pages;
    private StackLayout stack;
    private Composite emptyPage;
    private Label empty;
    private ChartCanvas canvas;
    private Composite tablePage;
    private TableViewer table;
    private Action asTable;
    private Action export;

    @Override
    public void createPartControl(Composite parent) {
        pages = new Composite(parent, SWT.NONE);
        stack = new StackLayout();
        pages.setLayout(stack);
        emptyPage = new Composite(pages, SWT.NONE);
        FillLayout fill = new FillLayout();
        fill.marginWidth = 8;
        fill.marginHeight = 8;
        emptyPage.setLayout(fill);
        empty = new Label(emptyPage, SWT.WRAP);
        canvas = new ChartCanvas(pages);
        tablePage = new Composite(pages, SWT.NONE);
        columns();
        actions();
        kiln = getSite().getService(KilnDesk.class);
        kiln.addListener(onKiln);
        refresh();
    }

    private void columns() {
        TableColumnLayout layout = new TableColumnLayout();
        tablePage.setLayout(layout);
        table = new TableViewer(tablePage, SWT.FULL_SELECTION | SWT.MULTI | SWT.V_SCROLL | SWT.H_SCROLL);
        table.getTable().setHeaderVisible(true);
        Columns columns = new Columns(table, layout);
        add(columns, Messages.Chart_hours, row -> KilnWords.number(row.hours(), 2));
        add(columns, Messages.Table_scheduled, row -> KilnWords.number(row.scheduledC(), 0));
        add(columns, Messages.Table_kiln, row -> KilnWords.number(row.kilnC(), 0));
        add(columns, Messages.Table_core, row -> KilnWords.number(row.coreC(), 0));
        add(columns, Messages.Table_measured, row -> KilnWords.text(row.measuredC(), 0));
        add(columns, Messages.Table_lag, row -> KilnWords.number(row.lagK(), 1));
        add(columns, Messages.Table_face, row -> KilnWords.number(row.faceMpa(), 2));
        add(columns, Messages.Table_centre, row -> KilnWords.number(row.centreMpa(), 2));
        table.setContentProvider(ArrayContentProvider.getInstance());
    }

    private static void add(Columns columns, String title, Function<FiringTable.Row, String> words) {
        columns.add(title, 1, "-00.00", ColumnLabelProvider.createTextProvider(row -> words.apply((FiringTable.Row) row))).setAlignment(SWT.RIGHT);
    }

    private void actions() {
        asTable = new Action(Messages.Chart_asTable, IAction.AS_CHECK_BOX) {
            @Override
            public void run() {
                refresh();
            }
        };
        export = new Action(Messages.Chart_export) {
            @Override
            public void run() {
                kiln.study().ifPresent(ChartView.this::export);
            }
        };
        getViewSite().getActionBars().getToolBarManager().add(asTable);
        getViewSite().getActionBars().getToolBarManager().add(export);
    }

    private void export(KilnStudy study) {
        FileDialog dialog = new FileDialog(getSite().getShell(), SWT.SAVE);
        dialog.setFilterExtensions(new String[] {"*.svg", "*.pdf", "*.png", "*.csv"});
        dialog.setFilterNames(new String[] {"SVG", "PDF", "PNG", "CSV"});
        dialog.setFileName(study.firing().schedule().name() + ".svg");
        dialog.setOverwrite(true);
        String chosen = dialog.open();
        if (chosen != null) {
            try {
                write(study, Path.of(chosen));
            } catch (IOException cannot) {
                MessageDialog.openError(getSite().getShell(), Messages.Chart_export, cannot.getMessage());
            }
        }
    }

    /** The platform's dialog has asked before it names a file that is there. */
    static void write(KilnStudy study, Path file) throws IOException {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        if (name.endsWith(".csv")) {
            FiringTable.write(FiringTable.rows(study.firing(), study.ask().log(), TABLE_EVERY_MIN), file, Files.exists(file));
        } else if (name.endsWith(".pdf")) {
            ChartPdf.write(FiringChart.drawing(study.firing(), study.ask().log()), study.firing().schedule().name(), file, "Saddlebar");
        } else {
            FiringChart.write(study.firing(), study.ask().log(), file, Files.exists(file));
        }
    }

    private void refresh() {
        if (pages.isDisposed()) {
            return;
        }
        Optional<KilnStudy> study = kiln.study();
        export.setEnabled(study.isPresent());
        canvas.show(study);
        List<FiringTable.Row> rows = asTable.isChecked() && study.isPresent()
                ? FiringTable.rows(study.get().firing(), study.get().ask().log(), TABLE_EVERY_MIN)
                : List.of();
        table.setInput(rows);
        empty.setText(kiln.commission().isEmpty()
                ? Messages.Kiln_openFirst
                : !kiln.trouble().isEmpty() ? kiln.trouble() : kiln.schedule().isEmpty() ? Messages.Kiln_noSchedule : Messages.Kiln_reckoning);
        stack.topControl = study.isEmpty() ? emptyPage : asTable.isChecked() ? tablePage : canvas;
        pages.layout();
    }

    @Override
    public void setFocus() {
        pages.setFocus();
    }

    @Override
    public void dispose() {
        if (kiln != null) {
            kiln.removeListener(onKiln);
        }
        super.dispose();
    }
}
