package saddlebar.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.commission.FiringSchedule;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.NewCommission;
import saddlebar.model.store.StudioLibrary;
import saddlebar.model.work.Work;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.CommissionOpening;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.make.BringChoice;
import saddlebar.ui.make.Bringer;
import saddlebar.ui.tree.WindowNode;

/** The Kiln bench, the Glazing bench and Money as a person meets them, over one commission with one window. */
@ExtendWith(WorkbenchExtension.class)
class KilnAndMoneyTest {
    private static final String ART = """
            <svg xmlns="http://www.w3.org/2000/svg" width="120mm" height="80mm" viewBox="0 0 120 80">
              <g id="glass" data-name="Glass"><rect width="60" height="80" fill="#2e6fb0"/><rect x="60" width="60" height="80" fill="#e9c46a"/></g>
              <g id="trace" data-name="Trace"><path d="M10 60h100v3h-100z"/></g>
              <g id="cutline" data-name="Cutline" fill="none" stroke="#000"><rect width="120" height="80"/><path d="M60 0V80"/></g>
            </svg>
            """;
    private static final String KILN_BENCH = "saddlebar.ui.bench.kiln";
    private static final String GLAZING_BENCH = "saddlebar.ui.bench.glazing";
    private static final List<String> VIEWS = List.of("saddlebar.ui.view.kilnChart", "saddlebar.ui.view.schedule", "saddlebar.ui.view.shelf",
            "saddlebar.ui.view.firings", "saddlebar.ui.view.metal", "saddlebar.ui.view.bars", "saddlebar.ui.view.money");

    @TempDir
    private Path temp;
    private OpenCommission open;

    @BeforeEach
    void openOne() throws IOException {
        Path folder = temp.resolve("porch");
        StudioLibrary tables = StudioLibrary.installed().orElseThrow(() -> new IllegalStateException("-Dsaddlebar.shared is not set"));
        CommissionFolder.create(folder, NewCommission.titled("Porch").stockedFrom(tables)).close();
        Path art = Files.writeString(temp.resolve("porch.svg"), ART);
        Bringer bringer = Screen.get(() -> Screen.window().getService(Bringer.class));
        bringer.bring(folder, new BringChoice(art, "W01", "Ebb tide", OptionalDouble.empty()), Work.UNWATCHED);
        assertTrue(Screen.get(() -> new CommissionOpening(Screen.window()).open(folder)));
        open = Screen.get(() -> Screen.window().getService(CommissionDesk.class).commission().orElseThrow());
    }

    @AfterEach
    void putItAway() throws InterruptedException {
        Job.getJobManager().cancel(null);
        Screen.run(() -> {
            Screen.window().getService(CommissionDesk.class).close();
            Screen.page().closeAllEditors(false);
        });
        Screen.settle();
    }

    private static List<Table> tables() {
        return Screen.all(Screen.window().getShell(), Table.class);
    }

    private static Optional<Table> table(String column) {
        return tables().stream().filter(table -> Arrays.stream(table.getColumns()).anyMatch(found -> found.getText().equals(column))).findFirst();
    }

    private static boolean says(String words) {
        return Screen.all(Screen.window().getShell(), Label.class).stream().anyMatch(label -> label.getText().contains(words));
    }

    private static void press(String words) {
        Button button = Screen.all(Screen.window().getShell(), Button.class).stream().filter(found -> found.getText().equals(words)).findFirst().orElseThrow();
        assertTrue(button.isEnabled(), words);
        button.notifyListeners(SWT.Selection, new Event());
    }

    @Test
    void allPartsOpenOnTheirBenches() throws InterruptedException {
        for (String bench : new String[] {KILN_BENCH, GLAZING_BENCH, Ids.DESK_BENCH}) {
            Screen.run(() -> PlatformUI.getWorkbench().showPerspective(bench, Screen.window()));
            for (String view : VIEWS) {
                IViewPart part = Screen.get(() -> Screen.page().showView(view));
                assertNotNull(part, view);
                assertFalse(part.getClass().getSimpleName().contains("Error"), view + " could not be shown");
            }
        }
        Screen.settle();
    }

    @Test
    void theScheduleIsSimulatedEditedAndTakenBack() throws InterruptedException {
        Screen.run(() -> PlatformUI.getWorkbench().showPerspective(KILN_BENCH, Screen.window()));
        Screen.await("the schedule simulated", () -> says("annealed"));
        FiringSchedule schedule = open.folder().studio().getSchedules().get(0);
        int segments = Screen.get(() -> table("Rate").orElseThrow().getItemCount());
        assertEquals(schedule.getSegments().size(), segments);
        Screen.run(() -> press("Add"));
        Screen.await("one more segment", () -> table("Rate").orElseThrow().getItemCount() == segments + 1);
        Screen.run(() -> Screen.window().getService(IHandlerService.class).executeCommand("org.eclipse.ui.edit.undo", null));
        Screen.await("taken back", () -> table("Rate").orElseThrow().getItemCount() == segments);
        assertFalse(Screen.get(() -> open.isDirty()));
    }

    @Test
    void aWindowIsLaidOnTheShelf() throws InterruptedException {
        Screen.run(() -> {
            PlatformUI.getWorkbench().showPerspective(KILN_BENCH, Screen.window());
            Screen.page().showView(Ids.TREE_VIEW).getSite().getSelectionProvider().setSelection(new StructuredSelection(new WindowNode("W01")));
        });
        Screen.settle();
        Screen.run(() -> press("Lay What Is Chosen"));
        Screen.await("two pieces on the shelf", () -> table("From front left").orElseThrow().getItemCount() == 2);
        Screen.run(() -> assertEquals("W01/1", table("From front left").orElseThrow().getItem(0).getText(0)));
    }

    @Test
    void moneyIsReckonedLineByLineAndThePanelIsWeighed() throws InterruptedException {
        Screen.run(() -> {
            PlatformUI.getWorkbench().showPerspective(Ids.DESK_BENCH, Screen.window());
            Screen.page().showView("saddlebar.ui.view.money");
        });
        Screen.await("an estimate", () -> table("Unit price").filter(lines -> lines.getItemCount() > 8).isPresent());
        Screen.run(() -> assertTrue(says("four cases in five")));
        Screen.run(() -> PlatformUI.getWorkbench().showPerspective(GLAZING_BENCH, Screen.window()));
        Screen.await("a panel weighed", () -> table("Lifting index").filter(panels -> panels.getItemCount() == 1).isPresent());
        Screen.run(() -> assertTrue(says("Lead in solder")));
    }
}
