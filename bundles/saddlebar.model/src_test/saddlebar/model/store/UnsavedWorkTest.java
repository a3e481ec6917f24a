package saddlebar.model.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UnsavedWorkTest {
    @TempDir
    Path temp;
    Path place;

    @BeforeEach
    void make() throws IOException {
        place = temp.resolve("reading-room");
        try (CommissionFolder made = CommissionFolder.create(place, NewCommission.titled("old"), Desk.ofAnna())) {
            made.addWindow("W01", "old");
            made.addWindow("W02", "old");
            made.save();
        }
    }

    private static void edit(CommissionFolder open) throws IOException {
        open.commission().setTitle("new");
        open.studio().setCurrency("XTS");
        open.window("W01").orElseThrow().setTitle("new");
        open.removeWindow(open.window("W02").orElseThrow());
        open.addWindow("W03", "new");
    }

    /** As if killed: the lock goes with the process, nothing is tidied. */
    private void dies(Disk disk) throws IOException {
        try (CommissionFolder open = CommissionFolder.open(place, Access.WRITE, Desk.ofAnna(), disk)) {
            edit(open);
            open.unsavedNow().write();
            assertTrue(open.isModified(), "laid aside is not saved");
        }
    }

    private CommissionFolder open() throws IOException {
        return CommissionFolder.open(place, Access.WRITE, Desk.ofAnna());
    }

    @Test
    void workOfASessionThatDiedIsTakenUp() throws IOException {
        dies(new LocalDisk());
        try (CommissionFolder open = open()) {
            assertEquals("old", open.commission().getTitle(), "nothing changes before somebody says so");
            UnsavedWork work = open.unsavedWork().orElseThrow();
            assertEquals(Desk.ofAnna().now(), work.at());
            assertEquals(List.of("studio.saddlebar", "commission.saddlebar", "windows/W01.saddlebar", "windows/W03.saddlebar", "windows/W02.saddlebar"),
                    work.files());
            open.takeUp(work);
        }
        try (CommissionFolder open = open()) {
            assertEquals("new", open.commission().getTitle());
            assertEquals("XTS", open.studio().getCurrency());
            assertEquals(List.of("W01", "W03"), open.windowNames());
            assertEquals(List.of("new", "new"), open.windows().stream().map(saddlebar.model.commission.Window::getTitle).toList());
            assertEquals(Optional.empty(), open.unsavedWork());
            assertFalse(Files.exists(place.resolve(UnsavedWork.FOLDER)));
            assertFalse(open.generations("windows/W01.saddlebar").isEmpty(), "what was saved before is kept");
        }
    }

    @Test
    void aSaveAndGivingUpLeaveNothingAside() throws IOException {
        dies(new LocalDisk());
        try (CommissionFolder open = open()) {
            open.commission().setTitle("saved");
            open.save();
            assertFalse(Files.exists(place.resolve(UnsavedWork.FOLDER)));
        }
        dies(new LocalDisk());
        try (CommissionFolder open = open()) {
            open.forgetUnsaved();
            assertEquals(Optional.empty(), open.unsavedWork());
        }
    }

    @Test
    void workThatNoLongerFitsIsNotOffered() throws IOException {
        dies(new LocalDisk());
        Path window = place.resolve("windows/W01.saddlebar");
        Files.writeString(window, Files.readString(window).replace("old", "since"));
        try (CommissionFolder open = open()) {
            assertEquals(Optional.empty(), open.unsavedWork());
            assertTrue(Files.exists(place.resolve(UnsavedWork.FOLDER)), "but it is not thrown away either");
        }
    }

    @Test
    void aTornPartIsNotOffered() throws IOException {
        dies(new LocalDisk());
        try (var files = Files.list(place.resolve(UnsavedWork.FOLDER))) {
            Path part = files.filter(file -> file.toString().endsWith(".part")).findFirst().orElseThrow();
            Files.write(part, new byte[3]);
        }
        try (CommissionFolder open = open()) {
            assertEquals(Optional.empty(), open.unsavedWork());
        }
    }

    @Test
    void aPathThatLeadsOutIsRefused() throws IOException {
        dies(new LocalDisk());
        Path list = place.resolve(UnsavedWork.FOLDER).resolve("list.json");
        Files.writeString(list, Files.readString(list).replace("windows/W01.saddlebar", "../outside.saddlebar"));
        try (CommissionFolder open = open()) {
            assertThrows(saddlebar.model.problem.Refusal.class, open::unsavedWork);
        }
    }

    @Test
    void anEditMadeFirstForbidsTakingUp() throws IOException {
        dies(new LocalDisk());
        try (CommissionFolder open = open()) {
            UnsavedWork work = open.unsavedWork().orElseThrow();
            open.commission().setTitle("edited");
            assertThrows(IllegalStateException.class, () -> open.takeUp(work));
        }
    }

    /** Killed at any step of laying aside over an earlier one: the earlier or the later is found, never a mixture, and always one of them. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void killedWhileLayingAsideTheEarlierOneStays(boolean powerIsLostToo) throws IOException {
        boolean later = false;
        for (int step = 1; !later; step++) {
            place = temp.resolve((powerIsLostToo ? "power" : "kill") + step);
            try (CommissionFolder made = CommissionFolder.create(place, NewCommission.titled("old"), Desk.ofAnna(), new FrailDisk(Long.MAX_VALUE, true))) {
                made.commission().setTitle("earlier");
                made.unsavedNow().write();
            }
            FrailDisk disk = new FrailDisk(Long.MAX_VALUE, true);
            try (CommissionFolder open = CommissionFolder.open(place, Access.WRITE, Desk.ofAnna(), disk)) {
                open.commission().setTitle("later");
                disk.failAgainAt(disk.steps() + step);
                open.unsavedNow().write();
                later = true;
            } catch (FrailDisk.Failure e) {
                assertFalse(later);
            }
            if (powerIsLostToo) {
                disk.losePower();
            }
            String found;
            try (CommissionFolder open = open()) {
                open.takeUp(open.unsavedWork().orElseThrow());
            }
            try (CommissionFolder open = open()) {
                found = open.commission().getTitle();
            }
            assertTrue(List.of("earlier", "later").contains(found), found);
            assertTrue(!later || found.equals("later"), "what was laid aside without a fault is there");
            assertTrue(step < 100);
        }
    }
}
