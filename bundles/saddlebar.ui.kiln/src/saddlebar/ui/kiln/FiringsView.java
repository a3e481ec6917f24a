package saddlebar.ui.kiln;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;

import org.eclipse.jface.dialogs.IInputValidator;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.part.ViewPart;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.production.kiln.FiringBook;
import saddlebar.production.kiln.KilnHistory;
import saddlebar.production.kiln.ReviewedFiring;
import saddlebar.ui.Columns;

/** The recorded firings, newest first; a log is attached by a file dialog or dropped on its line, and held against the schedule. */
public final class FiringsView extends ViewPart {
    private static final int NARROW_PT = 60;

    private KilnDesk kiln;
    private final Runnable onKiln = this::refresh;
    private Composite body;
    private TableViewer table;
    private Label review;
    private Label months;
    private TableViewer problems;
    private List<Button> ofFiring = List.of();
    private Button learn;
    private boolean showing;

    @Override
    public void createPartControl(Composite parent) {
        kiln = getSite().getService(KilnDesk.class);
        body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 4).spacing(6, 3).applyTo(body);
        firings();
        review = line();
        Composite row = new Composite(body, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(4).spacing(4, 0).applyTo(row);
        Button log = button(row, Messages.Firings_attach, this::attach);
        Button witness = button(row, Messages.Firings_witness, this::witness);
        Button meter = button(row, Messages.Firings_meter, this::meter);
        ofFiring = List.of(log, witness, meter);
        learn = button(row, Messages.Firings_learn, this::learn);
        months = line();
        Composite frame = new Composite(body, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).hint(NARROW_PT, NARROW_PT).applyTo(frame);
        frame.setLayout(new TableColumnLayout());
        problems = new TableViewer(frame, SWT.FULL_SELECTION | SWT.SINGLE | SWT.BORDER | SWT.V_SCROLL);
        problems.getTable().setHeaderVisible(true);
        new Columns(problems, (TableColumnLayout) frame.getLayout()).add(Messages.Shelf_look, 1, "", KilnWords.problems());
        problems.setContentProvider(ArrayContentProvider.getInstance());
        kiln.addListener(onKiln);
        refresh();
    }

    private void firings() {
        Composite frame = new Composite(body, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).hint(NARROW_PT, 2 * NARROW_PT).applyTo(frame);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        table = new TableViewer(frame, SWT.FULL_SELECTION | SWT.SINGLE | SWT.BORDER | SWT.V_SCROLL);
        table.getTable().setHeaderVisible(true);
        Columns columns = new Columns(table, layout);
        add(columns, Messages.Firings_name, 1, "F000", one -> one.firing().name());
        add(columns, Messages.Firings_day, 1, "00.00.00", one -> KilnWords.day(one.firing().when()));
        add(columns, Messages.Schedule_schedule, 2, "trace 650", one -> one.firing().scheduleName());
        add(columns, Messages.Firings_peak, 1, "650 °C", one -> one.peakC().map(c -> KilnWords.number(c, 0) + " \u00b0C").orElse(""));
        add(columns, Messages.Firings_pieces, 1, "000", one -> String.valueOf(one.firing().pieces().size()));
        add(columns, Messages.Firings_verdict, 2, Messages.Verdict_asScheduled, one -> one.review().map(found -> KilnWords.verdict(found.verdict())).orElse(
                ""));
        add(columns, "kWh", 1, "00.0", one -> KilnWords.text(one.kWh(), 1));
        table.setContentProvider(ArrayContentProvider.getInstance());
        table.addSelectionChangedListener(event -> {
            if (!showing && table.getStructuredSelection().getFirstElement() instanceof ReviewedFiring one) {
                kiln.choose(kiln.choice().withFiring(one.firing().name()));
            }
        });
        DropTarget target = new DropTarget(table.getTable(), DND.DROP_COPY | DND.DROP_LINK | DND.DROP_DEFAULT);
        target.setTransfer(FileTransfer.getInstance());
        target.addDropListener(new DropTargetAdapter() {
            @Override
            public void dragEnter(DropTargetEvent event) {
                event.detail = event.detail == DND.DROP_DEFAULT ? DND.DROP_COPY : event.detail;
            }

            @Override
            public void drop(DropTargetEvent event) {
                Optional<ReviewedFiring> on = event.item != null && event.item.getData() instanceof ReviewedFiring one ? Optional.of(one) : kiln.firing();
                if (event.data instanceof String[] files && files.length > 0 && on.isPresent()) {
                    Path file = Path.of(files[0]);
                    body.getDisplay().asyncExec(() -> attach(on.get(), file)); // the drag ends first
                }
            }
        });
    }

    private static void add(Columns columns, String title, int share, String widest, Function<ReviewedFiring, String> words) {
        columns.add(title, share, widest, ColumnLabelProvider.createTextProvider(one -> words.apply((ReviewedFiring) one)));
    }

    private Label line() {
        Label label = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(NARROW_PT, SWT.DEFAULT).applyTo(label);
        return label;
    }

    private static Button button(Composite parent, String words, Runnable action) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(words);
        button.addListener(SWT.Selection, event -> action.run());
        return button;
    }

    private FiringBook book() {
        return new FiringBook(kiln.commission().orElseThrow().folder());
    }

    private void attach() {
        FileDialog dialog = new FileDialog(getSite().getShell(), SWT.OPEN);
        dialog.setFilterExtensions(new String[] {"*.csv;*.txt;*.log", "*"});
        String chosen = dialog.open();
        if (chosen != null) {
            kiln.firing().ifPresent(one -> attach(one, Path.of(chosen)));
        }
    }

    private void attach(ReviewedFiring one, Path file) {
        double elementsW = kiln.studio().stream().flatMap(studio -> studio.getKilns().stream()).filter(known -> known.getId().equals(one.firing().kilnId()))
                .mapToDouble(known -> known.getPowerKw() * 1000).findFirst().orElse(Double.NaN);
        entered(Messages.Firings_attach, one, () -> book().attach(one.firing(), file, elementsW));
    }

    private void witness() {
        ask(Messages.Firings_witness, Messages.Firings_witnessAsk, typed -> Typed.witness(typed).isPresent(), Messages.Wrong_witness)
                .flatMap(Typed::witness).ifPresent(shown -> kiln.firing().ifPresent(one -> entered(Messages.Firings_witness, one,
                        () -> book().witness(one.firing(), shown.place(), shown.shownC()))));
    }

    private void meter() {
        ask(Messages.Firings_meter, Messages.Firings_meterAsk, typed -> Typed.kWh(typed).isPresent(), Messages.Wrong_meter).map(Typed::kWh)
                .filter(OptionalDouble::isPresent).ifPresent(kWh -> kiln.firing().ifPresent(one -> entered(Messages.Firings_meter, one,
                        () -> book().energy(one.firing(), kWh.getAsDouble()))));
    }

    private Optional<String> ask(String title, String question, Predicate<String> good, String wrong) {
        IInputValidator validator = typed -> typed.isBlank() ? "" : good.test(typed) ? null : wrong;
        InputDialog dialog = new InputDialog(getSite().getShell(), title, question, "", validator);
        return dialog.open() == Window.OK ? Optional.of(dialog.getValue()) : Optional.empty();
    }

    /** Something that appends a record. */
    @FunctionalInterface
    private interface Entry {
        void make() throws IOException;
    }

    private void entered(String title, ReviewedFiring one, Entry entry) {
        if (!kiln.canEdit()) {
            return;
        }
        try {
            entry.make();
            kiln.choose(kiln.choice().withFiring(one.firing().name()));
            kiln.readRecords();
        } catch (IOException | Refusal cannot) {
            MessageDialog.openError(getSite().getShell(), title, cannot.getMessage());
        }
    }

    private void learn() {
        facts().ifPresent(facts -> new LearnJob(kiln, facts, body.getDisplay()).schedule());
    }

    private Optional<KilnHistory.KilnFacts> facts() {
        String id = kiln.firing().map(one -> one.firing().kilnId()).orElse(kiln.choice().kilnId());
        return kiln.history().flatMap(known -> known.kiln(id));
    }

    private void refresh() {
        if (body.isDisposed()) {
            return;
        }
        List<ReviewedFiring> newest = new ArrayList<>(kiln.history().map(KilnHistory::firings).orElse(List.of()));
        newest.sort(Comparator.comparing((ReviewedFiring one) -> one.firing().when()).reversed());
        showing = true;
        if (!newest.equals(table.getInput())) {
            table.setInput(newest);
        }
        kiln.firing().ifPresentOrElse(one -> table.setSelection(new StructuredSelection(one)), () -> table.getTable().deselectAll());
        showing = false;
        review.setText(kiln.commission().isEmpty()
                ? Messages.Kiln_openFirst
                : newest.isEmpty() ? Messages.Firings_none : kiln.firing().map(KilnWords::review).orElse(Messages.Firings_choose));
        months.setText(facts().map(facts -> (facts.name().isEmpty() ? "" : facts.name() + ": ") + KilnWords.months(facts)).orElse("")
                + (kiln.said().isEmpty() ? "" : "\n" + kiln.said()));
        List<Problem> all = kiln.firing().map(ReviewedFiring::problems).orElseGet(() -> kiln.history().map(KilnHistory::problems).orElse(List.of()));
        if (!all.equals(problems.getInput())) {
            problems.setInput(all);
        }
        ofFiring.forEach(button -> button.setEnabled(kiln.canEdit() && kiln.firing().isPresent()));
        learn.setEnabled(kiln.canEdit() && facts().filter(facts -> !facts.lessons().isEmpty() && !facts.id().isEmpty()).isPresent());
        learn.setToolTipText(NLS.bind(Messages.Firings_learnTip, String.valueOf(facts().map(facts -> facts.lessons().size()).orElse(0))));
        body.layout(true, true);
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
