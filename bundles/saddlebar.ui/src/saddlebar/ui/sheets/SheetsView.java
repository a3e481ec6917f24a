package saddlebar.ui.sheets;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.part.ViewPart;

import saddlebar.model.commission.PaperSize;
import saddlebar.model.commission.Placement;
import saddlebar.model.commission.Printer;
import saddlebar.model.commission.ProcessSetting;
import saddlebar.model.commission.Sheet;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.TonerSide;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.code.BitonalSettings;
import saddlebar.stencil.code.SheetPdf;
import saddlebar.stencil.printer.PrinterTestPage;
import saddlebar.stencil.sheet.ComposedSheet;
import saddlebar.stencil.sheet.Paper;
import saddlebar.stencil.sheet.SheetPlan;
import saddlebar.ui.Columns;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.desk.UndoHere;
import saddlebar.ui.make.MonitorWork;
import saddlebar.ui.screening.ScreenWords;

/** The sheets of the commission: pictures, files, what lies on each, the side that their toner touches, and the printer that they are bent for. */
public final class SheetsView extends ViewPart {
    private static final int NARROWEST_PT = 140;

    private CommissionDesk desk;
    private UndoHere undo;
    private Display display;
    private TableViewer sheets;
    private TableViewer placements;
    private SheetCanvas picture;
    private Button open;
    private Button tape;
    private Button beds;
    private Label side;
    private Combo sides;
    private Button confirm;
    private PrinterPanel printer;
    private final CommissionDesk.Listener onDesk = new CommissionDesk.Listener() {
        @Override
        public void opened(OpenCommission commission) {
            show();
        }

        @Override
        public void closing(OpenCommission commission) {
            sheets.setInput(List.of());
            choose(Optional.empty());
        }

        @Override
        public void changed(OpenCommission commission) {
            show();
        }
    };

    @Override
    public void createPartControl(Composite parent) {
        display = parent.getDisplay();
        SashForm halves = new SashForm(parent, SWT.HORIZONTAL);
        ScrolledComposite scroll = new ScrolledComposite(halves, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        Composite left = new Composite(scroll, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(4, 4).spacing(4, 4).applyTo(left);
        scroll.setContent(left);
        picture = new SheetCanvas(halves);
        halves.setWeights(3, 2);
        desk = getSite().getService(CommissionDesk.class);
        undo = new UndoHere(getViewSite(), desk);
        sheets = sheets(left);
        Composite buttons = new Composite(left, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).equalWidth(true).applyTo(buttons);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(buttons);
        open = button(buttons, ScreenWords.Sheets_openPdf, () -> launch(chosen().flatMap(sheet -> file(sheet, sheetPdf(sheet)))));
        tape = button(buttons, ScreenWords.Sheets_openTape, () -> launch(chosen().flatMap(sheet -> file(sheet, "-tape-plan.pdf"))));
        beds = button(buttons, ScreenWords.Sheets_openBeds,
                () -> launch(desk.commission().map(found -> found.path().resolve("made/beds")).filter(Files::isDirectory)));
        placements = placements(left);
        toner(left);
        printer = new PrinterPanel(left, this::editStudio, this::writeTest);
        desk.addListener(onDesk);
        show();
        scroll.addListener(SWT.Resize, event -> scroll.setMinSize(left.computeSize(Math.max(NARROWEST_PT, scroll.getClientArea().width), SWT.DEFAULT, true)));
    }

    private TableViewer sheets(Composite parent) {
        TableViewer viewer = table(parent, 110);
        Columns columns = new Columns(viewer, (TableColumnLayout) viewer.getTable().getParent().getLayout());
        columns.add(ScreenWords.Sheets_columnNumber, 1, "12", ColumnLabelProvider.createTextProvider(one -> String.valueOf(((Sheet) one).getNumber())));
        columns.add(ScreenWords.Sheets_columnPaper, 2, "tabloid", ColumnLabelProvider.createTextProvider(one -> ((Sheet) one).getPaper()));
        columns.add(ScreenWords.Sheets_columnStencils, 1, "12",
                ColumnLabelProvider.createTextProvider(one -> String.valueOf(((Sheet) one).getPlacements().size())));
        columns.add(ScreenWords.Sheets_columnState, 4, ScreenWords.Sheets_ready,
                ColumnLabelProvider.createTextProvider(one -> desk.commission().map(found -> SheetWords.state((Sheet) one, found.path())).orElse("")));
        viewer.addSelectionChangedListener(event -> choose(chosen()));
        return viewer;
    }

    private TableViewer placements(Composite parent) {
        TableViewer viewer = table(parent, 90);
        Columns columns = new Columns(viewer, (TableColumnLayout) viewer.getTable().getParent().getLayout());
        columns.add(ScreenWords.Sheets_columnStencil, 3, "W01 matt, stencil 12",
                ColumnLabelProvider.createTextProvider(one -> SheetWords.stencil((Placement) one)));
        columns.add(ScreenWords.Sheets_columnPlace, 2, "123.4, 123.4 mm, 90°",
                ColumnLabelProvider.createTextProvider(one -> SheetWords.place((Placement) one)));
        columns.add(ScreenWords.Sheets_columnPieces, 2, "1, 2, 3, 4", ColumnLabelProvider.createTextProvider(one -> SheetWords.pieces((Placement) one)));
        viewer.addSelectionChangedListener(event -> picture.choose(Optional.ofNullable((Placement) viewer.getStructuredSelection().getFirstElement())));
        return viewer;
    }

    private static TableViewer table(Composite parent, int highPt) {
        Composite frame = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).hint(NARROWEST_PT, highPt).applyTo(frame);
        frame.setLayout(new TableColumnLayout());
        TableViewer viewer = new TableViewer(frame, SWT.FULL_SELECTION | SWT.SINGLE | SWT.BORDER | SWT.V_SCROLL);
        viewer.getTable().setHeaderVisible(true);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        return viewer;
    }

    private void toner(Composite parent) {
        Group group = new Group(parent, SWT.NONE);
        group.setText(ScreenWords.Sheets_groupSide);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(6, 4).spacing(6, 3).applyTo(group);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(group);
        side = new Label(group, SWT.WRAP);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(NARROWEST_PT, SWT.DEFAULT).applyTo(side);
        sides = new Combo(group, SWT.READ_ONLY | SWT.DROP_DOWN);
        sides.setItems(ScreenWords.Sheets_print, ScreenWords.Sheets_squeegee);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(sides);
        confirm = button(group, ScreenWords.Sheets_confirm, () -> confirm(sides.getSelectionIndex() == 1 ? TonerSide.SQUEEGEE : TonerSide.PRINT));
    }

    private static Button button(Composite parent, String words, Runnable what) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(words);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(button);
        button.addListener(SWT.Selection, event -> what.run());
        return button;
    }

    private Optional<Sheet> chosen() {
        return Optional.ofNullable((Sheet) sheets.getStructuredSelection().getFirstElement());
    }

    private Optional<Studio> studio() {
        return desk.commission().map(found -> found.commission().getStudio());
    }

    private static String sheetPdf(Sheet sheet) {
        return String.format("sheet-%02d.pdf", sheet.getNumber());
    }

    private Optional<Path> file(Sheet sheet, String ending) {
        return desk.commission().flatMap(found -> SheetWords.file(sheet, found.path(), ending));
    }

    private void show() {
        if (picture.isDisposed()) {
            return;
        }
        List<Sheet> all = desk.commission().map(found -> List.copyOf(found.commission().getSheets())).orElse(List.of());
        Optional<Sheet> before = chosen();
        sheets.setInput(all);
        Optional<Sheet> next = before.filter(all::contains).or(() -> all.stream().findFirst());
        next.ifPresent(sheet -> sheets.setSelection(new StructuredSelection(sheet)));
        choose(next);
        printer.show(studio().flatMap(found -> found.getPrinters().stream().findFirst()), paper(), desk.canEdit());
    }

    private Optional<PaperSize> paper() {
        return studio().flatMap(found -> found.getPapers().stream().filter(PaperSize::isInUse).findFirst());
    }

    private void choose(Optional<Sheet> sheet) {
        if (picture.isDisposed()) {
            return;
        }
        picture.show(sheet, ScreenWords.Sheets_none);
        placements.setInput(sheet.map(found -> List.copyOf(found.getPlacements())).orElse(List.of()));
        open.setEnabled(sheet.flatMap(found -> file(found, sheetPdf(found))).isPresent());
        tape.setEnabled(sheet.flatMap(found -> file(found, "-tape-plan.pdf")).isPresent());
        beds.setEnabled(desk.commission().map(found -> Files.isDirectory(found.path().resolve("made/beds"))).orElse(false));
        sheet.flatMap(found -> file(found, "-proof.png")).ifPresent(file -> read(sheet.get(), file));
        showSide(sheet);
    }

    private void showSide(Optional<Sheet> sheet) {
        Optional<ProcessSetting> setting = setting(sheet);
        String said = setting.map(found -> SheetWords.side(found.getTonerSide())).orElse(ScreenWords.Sheets_print);
        side.setText(setting.filter(ProcessSetting::isConfirmed).isPresent()
                ? NLS.bind(ScreenWords.Sheets_confirmed, said)
                : NLS.bind(ScreenWords.Sheets_unconfirmed, said));
        sides.select(setting.map(found -> found.getTonerSide() == TonerSide.SQUEEGEE ? 1 : 0).orElse(0));
        sides.setEnabled(desk.canEdit() && setting.isPresent());
        confirm.setEnabled(desk.canEdit() && setting.isPresent());
        side.getParent().getParent().layout(true, true);
    }

    /** Of the sheet's process; where there is no sheet yet, of the studio's first. */
    private Optional<ProcessSetting> setting(Optional<Sheet> sheet) {
        return sheet.isPresent()
                ? SheetWords.process(studio(), String.valueOf(sheet.get().getProcessKey()))
                : studio().flatMap(found -> found.getProcesses().stream().findFirst());
    }

    private void read(Sheet sheet, Path file) {
        Job job = new Job(NLS.bind(ScreenWords.Sheets_reading, file.getFileName())) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                ImageData data = new ImageData(file.toString());
                display.asyncExec(() -> {
                    if (!picture.isDisposed() && chosen().filter(found -> found == sheet).isPresent()) {
                        picture.proof(data);
                    }
                });
                return Status.OK_STATUS;
            }
        };
        job.setSystem(true);
        job.schedule();
    }

    /** Says once for this studio which side its toner touches in the sheet's process. */
    public void confirm(TonerSide touches) {
        setting(chosen()).filter(found -> desk.canEdit()).ifPresent(found -> editStudio(() -> {
            found.setTonerSide(touches);
            found.setConfirmed(true);
        }));
    }

    private void editStudio(Runnable change) {
        studio().ifPresent(found -> desk.commission().orElseThrow().edits().perform(ScreenWords.Edit_studio, found, change));
    }

    private void launch(Optional<Path> file) {
        file.ifPresent(found -> Program.launch(found.toString()));
    }

    private void writeTest() {
        FileDialog dialog = new FileDialog(getSite().getShell(), SWT.SAVE);
        dialog.setFilterExtensions(new String[] {"*.pdf"});
        dialog.setOverwrite(true);
        dialog.setFileName(ScreenWords.Printer_testFile);
        String target = dialog.open();
        if (target != null) {
            writeTest(Path.of(target));
        }
    }

    /** Writes the test page of the studio's printer in the background. */
    public Job writeTest(Path target) {
        Printer of = studio().orElseThrow().getPrinters().get(0);
        String name = of.getName();
        double marginMm = of.getMarginMm();
        int dpi = of.getDpi();
        Paper on = paper().map(size -> new Paper(size.getName(), size.getWidthMm(), size.getHeightMm())).orElse(Paper.A4);
        Job job = new Job(NLS.bind(ScreenWords.Tone_writing, target.getFileName())) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                try {
                    SheetPlan plan = PrinterTestPage.plan(name, on, marginMm, dpi, ScreeningMethods.ownMethods());
                    SheetPdf.write(ComposedSheet.of(plan), target, BitonalSettings.at(dpi).withTitle(name).replacing(true),
                            new MonitorWork(SubMonitor.convert(monitor, 2 * plan.heightPx())));
                    return Status.OK_STATUS;
                } catch (CancellationException e) {
                    return Status.CANCEL_STATUS;
                } catch (IOException e) {
                    display.asyncExec(() -> printer.say(e.getMessage()));
                    return Status.OK_STATUS;
                }
            }
        };
        job.schedule();
        return job;
    }

    /** What a test types into. */
    public PrinterPanel printer() {
        return printer;
    }

    @Override
    public void setFocus() {
        sheets.getTable().setFocus();
    }

    @Override
    public void dispose() {
        undo.dispose();
        desk.removeListener(onDesk);
        super.dispose();
    }
}
