package saddlebar.ui.kiln;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.core.commands.operations.DefaultOperationHistory;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.kiln.table.KilnTables;
import saddlebar.model.commission.FiringSchedule;
import saddlebar.model.commission.FiringSegment;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.NewCommission;
import saddlebar.model.store.StudioLibrary;
import saddlebar.production.kiln.StudioHeat;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;

/** The bench without widgets: what is typed, what is laid, what is reckoned, and that all of it can be taken back. */
class ScheduleSheetTest {
    @TempDir
    private Path temp;
    private final DefaultOperationHistory history = new DefaultOperationHistory();
    private final CommissionDesk desk = new CommissionDesk(history);
    private final ArrayDeque<Runnable> beside = new ArrayDeque<>();
    private KilnDesk kiln;
    private OpenCommission open;
    private ScheduleSheet sheet;

    @BeforeEach
    void openOne() throws IOException {
        Path folder = temp.resolve("porch");
        CommissionFolder.create(folder, NewCommission.titled("Porch").stockedFrom(StudioLibrary.of(Path.of("../../shared")))).close();
        kiln = new KilnDesk(desk, StudioHeat.of(KilnTables.read(Path.of("../../shared"))), beside::add, Runnable::run);
        open = desk.open(folder);
        sheet = new ScheduleSheet(open.edits(), Locale.ENGLISH);
        work();
    }

    @AfterEach
    void close() throws IOException {
        desk.close();
    }

    private void work() {
        while (!beside.isEmpty()) {
            beside.poll().run();
        }
    }

    private FiringSchedule schedule() {
        return kiln.schedule().orElseThrow();
    }

    private void undo() throws Exception {
        history.undo(open.edits().context(), new NullProgressMonitor(), null);
        work();
    }

    @Test
    void whatIsTypedIsReckonedAndTakenBack() throws Exception {
        double hours = kiln.study().orElseThrow().firing().hours();
        FiringSegment heat = schedule().getSegments().get(1);
        assertEquals(Optional.empty(), sheet.take(heat, ScheduleSheet.Field.RATE, "100 K/h"));
        work();
        assertTrue(kiln.study().orElseThrow().firing().hours() > hours + 0.5, "the slower ramp takes longer");
        assertTrue(sheet.take(heat, ScheduleSheet.Field.TARGET, "1500").isPresent());
        assertTrue(sheet.take(heat, ScheduleSheet.Field.SOAK, "soon").isPresent());
        assertTrue(sheet.take(heat, ScheduleSheet.Field.RATE, "-5").isPresent());
        assertEquals(540, heat.getTargetC(), "what will not do changes nothing");
        assertEquals(Optional.empty(), sheet.take(heat, ScheduleSheet.Field.RATE, ""));
        assertEquals(null, heat.getRateKPerH());
        undo();
        undo();
        assertEquals(200, heat.getRateKPerH());
        assertEquals(hours, kiln.study().orElseThrow().firing().hours(), 1e-9);
        assertFalse(open.edits().isDirty());
    }

    @Test
    void segmentsAndSchedulesComeAndGo() throws Exception {
        List<FiringSegment> before = List.copyOf(schedule().getSegments());
        FiringSegment added = sheet.add(schedule(), 2);
        assertEquals(3, schedule().getSegments().indexOf(added));
        assertEquals(650, added.getTargetC());
        sheet.move(added, -1);
        assertEquals(2, schedule().getSegments().indexOf(added));
        sheet.remove(before.get(0));
        assertEquals(before.size(), schedule().getSegments().size());
        FiringSchedule copy = sheet.copy(schedule());
        assertEquals("trace 650 2", copy.getName());
        assertFalse(copy.getId().equals(schedule().getId()));
        assertTrue(sheet.rename(copy, "matt 640").isPresent(), "the studio has one of that name");
        assertEquals(Optional.empty(), sheet.rename(copy, "trace 650 gentle"));
        sheet.remove(copy);
        for (int i = 0; i < 6; i++) {
            undo();
        }
        assertEquals(before, List.copyOf(schedule().getSegments()));
        assertEquals(4, open.folder().studio().getSchedules().size());
    }

    @Test
    void anEmptyScheduleSaysSoAndNothingIsLost() throws Exception {
        while (!schedule().getSegments().isEmpty()) {
            sheet.remove(schedule().getSegments().get(0));
        }
        work();
        assertTrue(kiln.study().isEmpty());
        assertTrue(kiln.trouble().contains("no segment"), kiln.trouble());
        assertEquals(540, sheet.add(schedule(), -1).getTargetC());
        work();
        assertTrue(kiln.study().isPresent());
    }

    @Test
    void adviceIsLiveAndFollowsTheLoad() {
        assertTrue(kiln.study().orElseThrow().advice().stream().noneMatch(problem -> problem.code().equals("ramp-fast")));
        kiln.choose(kiln.choice().withThickness(10).withLargest(400));
        work();
        assertTrue(kiln.study().orElseThrow().advice().stream().anyMatch(problem -> problem.code().equals("ramp-fast")));
        String stain = open.folder().studio().getPaints().stream().filter(paint -> paint.getName().equals("silver stain amber")).findFirst().orElseThrow()
                .getId();
        kiln.choose(kiln.choice().withPaint(stain));
        work();
        assertTrue(kiln.study().orElseThrow().advice().stream().anyMatch(problem -> problem.code().equals("paint-overfired")));
    }

    @Test
    void closingForgetsAll() throws IOException {
        desk.close();
        assertTrue(kiln.study().isEmpty() && kiln.history().isEmpty() && kiln.schedule().isEmpty() && kiln.shelf().isEmpty());
        assertTrue(Files.exists(temp.resolve("porch/studio/studio.saddlebar")));
    }
}
