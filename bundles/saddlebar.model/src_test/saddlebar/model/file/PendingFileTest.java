package saddlebar.model.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PendingFileTest {
    @TempDir
    Path temp;

    @Test
    void isSeenOnlyWhenCommitted() throws IOException {
        Path target = Files.writeString(temp.resolve("list.csv"), "old");
        try (PendingFile given = PendingFile.beside(target)) {
            given.out().write("new".getBytes());
            given.channel();
            assertEquals("old", Files.readString(target));
        }
        assertEquals("old", Files.readString(target), "closed without a commit");
        try (PendingFile kept = PendingFile.beside(target)) {
            kept.out().write("new".getBytes());
            kept.commit();
        }
        assertEquals("new", Files.readString(target));
        try (var files = Files.list(temp)) {
            assertEquals(List.of(target), files.toList(), "nothing hidden is left");
        }
    }

    @Test
    void troubleNamesTheFileThatWasAskedFor() {
        Path tooLong = temp.resolve("s".repeat(250) + ".tif"); // with what the hidden name adds, longer than a name may be
        FileSystemException trouble = assertThrows(FileSystemException.class, () -> PendingFile.beside(tooLong).close());
        assertEquals(tooLong.toString(), trouble.getFile());
        assertFalse(trouble.getMessage().contains(PendingFile.SUFFIX), trouble.getMessage());
    }
}
