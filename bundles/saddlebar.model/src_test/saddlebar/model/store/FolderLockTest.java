package saddlebar.model.store;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.problem.LockedException;

class FolderLockTest {
    @TempDir
    Path temp;

    @Test
    @Timeout(60)
    void aKilledProgramStrandsNobody() throws IOException, InterruptedException {
        Path place = temp.resolve("c");
        CommissionFolder.create(place, NewCommission.titled("t")).close();
        Process other = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp",
                System.getProperty("java.class.path"), "-Xmx64m", "-XX:TieredStopAtLevel=1", HoldLock.class.getName(), place.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
        try (BufferedReader said = new BufferedReader(new InputStreamReader(other.getInputStream(), StandardCharsets.UTF_8))) {
            assertEquals("held", said.readLine());
            LockedException locked = assertThrows(LockedException.class, () -> CommissionFolder.open(place, Access.WRITE).close());
            assertTrue(locked.getMessage().contains("process " + other.pid()), locked.getMessage());
            assertTrue(locked.getMessage().contains(System.getProperty("user.name")), locked.getMessage());
            try (CommissionFolder reader = CommissionFolder.open(place, Access.READ)) {
                assertEquals("t", reader.commission().getTitle());
            }
        } finally {
            other.destroyForcibly().waitFor(20, TimeUnit.SECONDS);
        }
        assertTrue(Files.size(place.resolve(".lock")) > 0, "the dead program's words are still there");
        try (CommissionFolder mine = CommissionFolder.open(place, Access.WRITE)) {
            mine.commission().setTitle("after");
            mine.save();
            mine.records().append(RecordDraft.of(RecordKind.NOTE).noting("after"));
            try (RecordReading reading = mine.records().read()) {
                assertEquals(2, reading.toList().size());
                assertEquals(0, reading.problems().size());
            }
        }
        assertEquals(0, Files.size(place.resolve(".lock")));
    }

    @Test
    void theSameProgramDoesNotOpenTwiceAndLosesNoLockByTrying() throws IOException {
        Path place = temp.resolve("c");
        CommissionFolder.create(place, NewCommission.titled("t")).close();
        try (FolderLock held = FolderLock.take(place, Desk.ofAnna())) {
            for (int i = 0; i < 3; i++) {
                LockedException locked = assertThrows(LockedException.class, () -> FolderLock.take(place, Desk.ofAnna()).close());
                assertTrue(locked.getMessage().contains("anna on north-desk"), locked.getMessage());
            }
            Path link = Files.createSymbolicLink(temp.resolve("link"), place);
            assertThrows(LockedException.class, () -> FolderLock.take(link, Desk.ofAnna()).close());
        }
        FolderLock.take(place, Desk.ofAnna()).close();
    }

    @Test
    void aFolderThatCannotBeWrittenIsToldAsLocked() throws IOException {
        Path place = temp.resolve("c");
        CommissionFolder.create(place, NewCommission.titled("t")).close();
        Files.delete(place.resolve(".lock"));
        Files.createDirectory(place.resolve(".lock")); // no program, not even root's, opens a folder for writing
        LockedException locked = assertThrows(LockedException.class, () -> CommissionFolder.open(place, Access.WRITE).close());
        assertTrue(locked.getMessage().contains("cannot be written"), locked.getMessage());
        assertDoesNotThrow(() -> CommissionFolder.open(place, Access.READ).close());
    }

    @Test
    void aLockThatIsALinkIsNotFollowed() throws IOException {
        Path place = temp.resolve("c");
        CommissionFolder.create(place, NewCommission.titled("t")).close();
        Path letter = Files.writeString(temp.resolve("letter.txt"), "keep me");
        Files.delete(place.resolve(".lock"));
        Files.createSymbolicLink(place.resolve(".lock"), letter);
        assertThrows(LockedException.class, () -> CommissionFolder.open(place, Access.WRITE).close());
        assertEquals("keep me", Files.readString(letter));
    }

    @Test
    void withoutLocksOfTheSystemTheWordsCount() {
        Desk desk = Desk.ofAnna();
        assertDoesNotThrow(() -> FolderLock.requireDead(temp, "", desk));
        assertDoesNotThrow(() -> FolderLock.requireDead(temp, "{\"user\":\"ben\",\"host\":\"north-desk\",\"pid\":1}", desk));
        String alive = "{\"user\":\"ben\",\"host\":\"north-desk\",\"pid\":" + desk.pid() + ",\"since\":\"x\"}";
        assertThrows(LockedException.class, () -> FolderLock.requireDead(temp, alive, desk));
        assertThrows(LockedException.class, () -> FolderLock.requireDead(temp, "{\"user\":\"ben\",\"host\":\"elsewhere\",\"pid\":1}", desk));
        assertThrows(LockedException.class, () -> FolderLock.requireDead(temp, "{\"user\":", desk));
    }
}
