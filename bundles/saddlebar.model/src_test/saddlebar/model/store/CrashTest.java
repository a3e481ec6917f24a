package saddlebar.model.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import saddlebar.model.commission.Window;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;

/** Storage on a disk that fails at every single step in turn. */
class CrashTest {
    @TempDir
    Path temp;

    private Path sample;

    @BeforeEach
    void makeSample() throws IOException {
        sample = temp.resolve("sample");
        try (CommissionFolder made = CommissionFolder.create(sample, NewCommission.titled("old"), Desk.ofAnna(), steady())) {
            for (String window : List.of("W01", "W02")) {
                made.addWindow(window, "old");
            }
            made.save();
        }
    }

    /** Never fails, and does not wait for the real disk. */
    private static FrailDisk steady() {
        return new FrailDisk(Long.MAX_VALUE, true);
    }

    private Path base(String name) throws IOException {
        Path place = temp.resolve(name);
        try (Stream<Path> files = Files.walk(sample)) {
            for (Path file : files.toList()) {
                Files.copy(file, place.resolve(sample.relativize(file).toString()));
            }
        }
        return place;
    }

    private static void change(CommissionFolder open) throws IOException {
        open.commission().setTitle("new");
        open.removeWindow(open.window("W02").orElseThrow());
        open.window("W01").orElseThrow().setTitle("new");
        open.addWindow("W03", "new");
    }

    /** All of the old or all of the new, and nothing else. */
    private static String state(Path place) throws IOException {
        try (CommissionFolder read = CommissionFolder.open(place, Access.WRITE, Desk.ofAnna(), steady())) {
            String title = read.commission().getTitle();
            assertEquals(title.equals("old") ? List.of("W01", "W02") : List.of("W01", "W03"), read.windowNames());
            assertEquals(List.of(title, title), read.windows().stream().map(Window::getTitle).toList());
            assertEquals(List.of(), read.links().broken());
            assertEquals(title.equals("old"), Files.exists(place.resolve("windows/W02.saddlebar")));
            try (Stream<Path> files = Files.walk(place)) {
                assertEquals(List.of(), files.filter(file -> file.toString().endsWith(".pending") || file.endsWith(SafeSave.LIST)).toList());
            }
            return title;
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void whenTheProgramIsKilledAtAnyStepOfASaveAllIsOldOrAllIsNew(boolean powerIsLostToo) throws IOException {
        List<String> states = new ArrayList<>();
        for (int step = 1;; step++) {
            Path place = base((powerIsLostToo ? "power" : "kill") + step);
            FrailDisk disk = new FrailDisk(step, true);
            boolean confirmed = false;
            try (CommissionFolder open = CommissionFolder.open(place, Access.WRITE, Desk.ofAnna(), disk)) {
                change(open);
                open.save();
                confirmed = true;
            } catch (FrailDisk.Failure e) {
                assertFalse(confirmed);
            }
            if (powerIsLostToo) {
                disk.losePower();
            }
            String state = state(place);
            states.add(state);
            if (confirmed) {
                assertEquals("new", state, "what a save has confirmed is there");
                break;
            }
        }
        assertTrue(states.size() > 20, "only " + states.size() + " steps were tried");
        assertTrue(states.contains("old"));
        assertTrue(states.lastIndexOf("old") < states.indexOf("new"), "there is one moment of the save: " + states);
        assertTrue(states.indexOf("new") < states.size() - 5, "a save past its moment is completed: " + states);
    }

    @Test
    void aSaveThatFailedCanBeRepeated() throws IOException {
        for (int step = 1;; step++) {
            Path place = base("again" + step);
            FrailDisk disk = new FrailDisk(step, false);
            boolean failed = false;
            try (CommissionFolder open = CommissionFolder.open(place, Access.WRITE, Desk.ofAnna(), disk)) {
                change(open);
                try {
                    open.save();
                } catch (FrailDisk.Failure e) {
                    failed = true;
                    open.save();
                }
            } catch (FrailDisk.Failure e) {
                assertTrue(disk.steps() < 10, "while opening");
                continue;
            }
            assertEquals("new", state(place), "failed at step " + step);
            if (!failed) {
                break;
            }
        }
    }

    @Test
    void whenMakingAFolderFailsNothingIsLeft() throws IOException {
        for (int step = 1;; step++) {
            Path parent = Files.createDirectory(temp.resolve("new" + step));
            try {
                CommissionFolder.create(parent.resolve("c"), NewCommission.titled("t"), Desk.ofAnna(), new FrailDisk(step, false)).close();
                break;
            } catch (FrailDisk.Failure e) {
                List<String> left = CommissionFolderTest.names(parent);
                assertTrue(left.isEmpty() || left.equals(List.of("c")) && Files.exists(parent.resolve("c/commission.saddlebar")), left.toString());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void whenTheProgramIsKilledAtAnyStepOfAppendingNoConfirmedRecordIsLost(boolean powerIsLostToo) throws IOException {
        for (int step = 1;; step++) {
            Path place = base((powerIsLostToo ? "records-power" : "records") + step);
            Desk desk = Desk.ofAnna();
            FrailDisk disk = new FrailDisk(Long.MAX_VALUE, true);
            List<String> confirmed = new ArrayList<>();
            boolean died = false;
            try (CommissionFolder open = CommissionFolder.open(place, Access.WRITE, desk, disk)) {
                confirmed.add(open.records().append(RecordDraft.of(RecordKind.NOTE).noting("first")).id());
                disk.failAgainAt(disk.steps() + step);
                for (int i = 0; i < 3; i++) {
                    desk.clock("2026-0" + (3 + i) + "-28T10:00:00Z");
                    open.records().append(List.of(RecordDraft.of(RecordKind.NOTE).noting("a"), RecordDraft.of(RecordKind.NOTE).noting("b")))
                            .forEach(line -> confirmed.add(line.id()));
                }
            } catch (FrailDisk.Failure e) {
                died = true;
            }
            if (powerIsLostToo) {
                disk.losePower();
            }
            try (CommissionFolder open = CommissionFolder.open(place, Access.WRITE, desk, steady())) {
                List<String> read = ids(open, Severity.WARNING);
                assertEquals(confirmed, read.subList(0, confirmed.size()), "step " + step);
                assertTrue(read.size() <= confirmed.size() + 2);
                String next = open.records().append(RecordDraft.of(RecordKind.NOTE).noting("next")).id();
                List<String> after = ids(open, Severity.NOTE);
                assertEquals(next, after.get(after.size() - 1));
                assertEquals(read, after.subList(0, read.size()));
            }
            if (!died) {
                assertTrue(step > 8, "only " + step + " steps were tried");
                break;
            }
        }
    }

    /** All ids; no problem may be worse than said. */
    private static List<String> ids(CommissionFolder open, Severity worst) throws IOException {
        try (RecordReading reading = open.records().read()) {
            List<String> ids = reading.toList().stream().map(RecordLine::id).toList();
            for (Problem problem : reading.problems()) {
                if (problem.severity().compareTo(worst) < 0) {
                    fail(problem.toString());
                }
            }
            return ids;
        }
    }

    @Test
    void anAppendThatFailsLeavesNoLineBehind() throws IOException {
        for (int step = 1; step <= 2; step++) { // the writing, the sync
            Path place = base("append" + step);
            FrailDisk disk = new FrailDisk(Long.MAX_VALUE, false);
            try (CommissionFolder open = CommissionFolder.open(place, Access.WRITE, Desk.ofAnna(), disk)) {
                open.records().append(RecordDraft.of(RecordKind.NOTE));
                disk.failAgainAt(disk.steps() + step);
                assertThrows(FrailDisk.Failure.class, () -> open.records().append(RecordDraft.of(RecordKind.NOTE)));
                assertEquals(1, ids(open, Severity.NOTE).size());
                open.records().append(RecordDraft.of(RecordKind.NOTE));
                assertEquals(2, ids(open, Severity.NOTE).size());
            }
        }
    }
}
