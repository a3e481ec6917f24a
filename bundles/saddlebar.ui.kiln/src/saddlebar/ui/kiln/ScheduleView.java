package saddlebar.ui.kiln;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.resource.JFaceColors;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.part.ViewPart;

import saddlebar.kiln.search.FoundSchedule;
import saddlebar.model.commission.FiringSchedule;
import saddlebar.model.commission.FiringSegment;
import saddlebar.model.problem.Problem;
import saddlebar.ui.Columns;
import saddlebar.ui.desk.OpenCommission;

/** The schedule's segments, typed in; beside them what to look at in it, live; and the search for a shorter one. */
public final class ScheduleView extends ViewPart {
    private static final int NARROW_PT = 80;

    private KilnDesk kiln;
    private final Runnable onKiln = this::refresh;
    private Composite body;
    private ScheduleHead head;
    private SegmentTable segments;
    private TableViewer advice;
    private Label wrong;
    private Label facts;
    private Link shorter;
    private List<Button> editing = List.of();
    private List<Action> copying = List.of();
    private Action search;
    private boolean searching;
    private Optional<FoundSchedule> found = Optional.empty();

    @Override
    public void createPartControl(Composite parent) {
        kiln = getSite().getService(KilnDesk.class);
        body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 4).spacing(6, 3).applyTo(body);
        head = new ScheduleHead(body, kiln, this::say);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head);
        SashForm halves = new SashForm(body, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().grab(true, true).hint(NARROW_PT, NARROW_PT).applyTo(halves);
        Composite left = new Composite(halves, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(4, 2).applyTo(left);
        segments = new SegmentTable(left, this::sheet, this::say);
        GridDataFactory.fillDefaults().grab(true, true).hint(NARROW_PT, NARROW_PT).applyTo(left.getChildren()[0]);
        buttons(left);
        advice(halves);
        halves.setWeights(55, 45);
        wrong = line();
        wrong.setForeground(JFaceColors.getErrorText(parent.getDisplay()));
        facts = line();
        shorter = new Link(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(NARROW_PT, SWT.DEFAULT).exclude(true).applyTo(shorter);
        shorter.addListener(SWT.Selection, event -> keep());
        say("");
        actions();
        kiln.addListener(onKiln);
        refresh();
    }

    private Label line() {
        Label label = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(NARROW_PT, SWT.DEFAULT).applyTo(label);
        return label;
    }

    private void buttons(Composite left) {
        Composite column = new Composite(left, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 1).applyTo(column);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.BEGINNING).applyTo(column);
        Button add = button(column, Messages.Schedule_add, () -> withSheet((sheet, schedule) -> segments.choose(sheet.add(schedule,
                segments.chosen().map(schedule.getSegments()::indexOf).orElse(schedule.getSegments().size() - 1)))));
        Button remove = button(column, Messages.Schedule_remove, () -> withSegment(ScheduleSheet::remove));
        Button up = button(column, Messages.Schedule_up, () -> withSegment((sheet, segment) -> sheet.move(segment, -1)));
        Button down = button(column, Messages.Schedule_down, () -> withSegment((sheet, segment) -> sheet.move(segment, 1)));
        editing = List.of(add, remove, up, down);
    }

    /** What is done with the schedule as a whole. */
    private void actions() {
        IToolBarManager bar = getViewSite().getActionBars().getToolBarManager();
        search = action(bar, Messages.Schedule_search, this::search);
        copying = List.of(action(bar, Messages.Schedule_copy, () -> withSheet((sheet, schedule) -> choose(sheet.copy(schedule)))),
                action(bar, Messages.Schedule_rename, () -> withSheet(this::rename)),
                action(bar, Messages.Schedule_delete, () -> withSheet((sheet, schedule) -> sheet.remove(schedule))));
    }

    private static Action action(IToolBarManager bar, String words, Runnable doing) {
        Action action = new Action(words) {
            @Override
            public void run() {
                doing.run();
            }
        };
        bar.add(action);
        return action;
    }

    private static Button button(Composite parent, String words, Runnable action) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(words);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(button);
        button.addListener(SWT.Selection, event -> action.run());
        return button;
    }

    private void advice(Composite parent) {
        Composite frame = new Composite(parent, SWT.NONE);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        advice = new TableViewer(frame, SWT.FULL_SELECTION | SWT.SINGLE | SWT.BORDER | SWT.V_SCROLL);
        advice.getTable().setHeaderVisible(true);
        new Columns(advice, layout).add(Messages.Schedule_advice, 1, "", KilnWords.problems());
        advice.setContentProvider(ArrayContentProvider.getInstance());
    }

    private Optional<ScheduleSheet> sheet() {
        return kiln.canEdit() ? kiln.commission().map(OpenCommission::edits).map(edits -> new ScheduleSheet(edits, KilnWords.locale())) : Optional.empty();
    }

    private void withSheet(BiConsumer<ScheduleSheet, FiringSchedule> action) {
        sheet().ifPresent(sheet -> kiln.schedule().ifPresent(schedule -> action.accept(sheet, schedule)));
    }

    private void withSegment(BiConsumer<ScheduleSheet, FiringSegment> action) {
        sheet().ifPresent(sheet -> segments.chosen().ifPresent(segment -> action.accept(sheet, segment)));
    }

    private void choose(FiringSchedule schedule) {
        kiln.choose(kiln.choice().withSchedule(schedule.getId()).withFiring(""));
    }

    private void rename(ScheduleSheet sheet, FiringSchedule schedule) {
        InputDialog dialog = new InputDialog(getSite().getShell(), Messages.Schedule_rename, Messages.Schedule_name, schedule.getName(), null);
        if (dialog.open() == Window.OK) {
            say(sheet.rename(schedule, dialog.getValue()).orElse(""));
        }
    }

    private void search() {
        kiln.study().ifPresent(study -> {
            searching = true;
            search.setEnabled(false);
            tell(Messages.Schedule_searching);
            Consumer<Runnable> onScreen = task -> getSite().getShell().getDisplay().asyncExec(() -> {
                if (!body.isDisposed()) {
                    task.run();
                }
            });
            new OptimiseJob(study, shortest -> onScreen.accept(() -> found(study, shortest)), why -> onScreen.accept(() -> {
                searching = false;
                tell(why);
                search.setEnabled(true);
            })).schedule();
        });
    }

    private void found(KilnStudy study, FoundSchedule shortest) {
        found = Optional.of(shortest);
        searching = false;
        search.setEnabled(true);
        tell(NLS.bind(Messages.Schedule_shorter, new Object[] {KilnWords.number(shortest.firing().hoursToOpen(), 1),
                KilnWords.number(study.firing().hoursToOpen(), 1), KilnWords.number(shortest.firing().energy().kWh(), 1),
                KilnWords.number(study.firing().energy().kWh(), 1),
                shortest.heldBackBy().isEmpty() ? Messages.Schedule_heldByNothing : String.join(", ", shortest.heldBackBy())})
                + (kiln.canEdit() ? " " + Messages.Schedule_take : ""));
    }

    private void keep() {
        found.ifPresent(shortest -> withSheet((sheet, schedule) -> {
            found = Optional.empty();
            choose(sheet.keep(shortest.schedule(), schedule, NLS.bind(Messages.Schedule_shortName, shortest.schedule().name())));
            tell(Messages.Schedule_testPiece);
        }));
    }

    private void tell(String words) {
        shorter.setText(words);
        shorter.setVisible(!words.isEmpty());
        ((GridData) shorter.getLayoutData()).exclude = words.isEmpty();
        body.layout(true, true);
    }

    private void say(String words) {
        if (wrong != null) {
            wrong.setText(words);
            ((GridData) wrong.getLayoutData()).exclude = words.isEmpty();
            wrong.setVisible(!words.isEmpty());
            body.layout(true, true);
        }
    }

    private void refresh() {
        if (body.isDisposed()) {
            return;
        }
        head.refresh();
        segments.show(kiln.schedule());
        Optional<KilnStudy> study = kiln.study();
        List<Problem> problems = study.map(KilnStudy::advice).orElse(List.of());
        if (!problems.equals(advice.getInput())) {
            advice.setInput(problems);
        }
        facts.setText(study.map(shown -> KilnWords.facts(shown.firing())).orElseGet(() -> kiln.commission().isEmpty()
                ? Messages.Kiln_openFirst
                : kiln.trouble().isEmpty() ? Messages.Kiln_reckoning : kiln.trouble()));
        editing.forEach(button -> button.setEnabled(kiln.canEdit() && kiln.schedule().isPresent()));
        copying.forEach(action -> action.setEnabled(kiln.canEdit() && kiln.schedule().isPresent()));
        search.setEnabled(study.isPresent() && !searching);
        body.layout(true, true);
    }

    @Override
    public void setFocus() {
        segments.focus();
    }

    @Override
    public void dispose() {
        if (kiln != null) {
            kiln.removeListener(onKiln);
        }
        super.dispose();
    }
}
