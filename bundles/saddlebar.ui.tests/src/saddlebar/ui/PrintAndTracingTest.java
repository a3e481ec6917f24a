package saddlebar.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.NewCommission;
import saddlebar.model.store.StudioLibrary;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.CommissionOpening;
import saddlebar.ui.desk.OpenCommission;

/** The Print bench and the Tracing bench in the real workbench. */
@ExtendWith(WorkbenchExtension.class)
class PrintAndTracingTest {
    private static final String PRINT_BENCH = "saddlebar.ui.bench.print";
    private static final String TRACING_BENCH = "saddlebar.ui.bench.tracing";
    private static final List<String> VIEWS = List.of("saddlebar.ui.view.rack", "saddlebar.ui.view.today", "saddlebar.ui.view.mix",
            "saddlebar.ui.view.pullCard", "saddlebar.ui.view.flaws", "saddlebar.ui.view.wayBack", "saddlebar.ui.view.exposed", "saddlebar.ui.view.suspects",
            "saddlebar.ui.view.thenNow");

    @TempDir
    private Path temp;
    private OpenCommission open;

    @BeforeEach
    void openOne() throws IOException {
        Path folder = temp.resolve("porch");
        StudioLibrary tables = StudioLibrary.installed().orElseThrow(() -> new IllegalStateException("-Dsaddlebar.shared is not set"));
        CommissionFolder.create(folder, NewCommission.titled("Porch").stockedFrom(tables)).close();
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

    private static Optional<Table> table(String column) {
        return Screen.all(Screen.window().getShell(), Table.class).stream()
                .filter(table -> Arrays.stream(table.getColumns()).anyMatch(found -> found.getText().equals(column))).findFirst();
    }

    @Test
    void allPartsOpenOnTheirBenches() throws InterruptedException {
        for (String bench : new String[] {PRINT_BENCH, TRACING_BENCH}) {
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
    void theRackHangsEveryFrameOfTheStudio() throws InterruptedException {
        int frames = Screen.get(() -> open.folder().studio().getFrames().size());
        assertTrue(frames > 0);
        Screen.run(() -> {
            PlatformUI.getWorkbench().showPerspective(PRINT_BENCH, Screen.window());
            Screen.page().showView("saddlebar.ui.view.rack");
        });
        Screen.await("the rack", () -> table("frame").filter(rack -> rack.getItemCount() == frames).isPresent());
        Screen.run(() -> assertEquals("empty", table("frame").orElseThrow().getItem(0).getText(2)));
    }
}
