package saddlebar.stencil.code;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

import org.junit.jupiter.api.Test;

/** All bytes that fuzzing by coverage (releng/fuzz) found to matter, and those it found to fail. */
class FuzzCorpusTest {
    private static final Path CORPUS = Path.of("src_test/saddlebar/stencil/code/fuzz-corpus.zip");

    @Test
    void everyOneIsReadOrRefused() throws IOException {
        int count = 0;
        try (ZipInputStream corpus = new ZipInputStream(Files.newInputStream(CORPUS))) {
            for (ZipEntry entry = corpus.getNextEntry(); entry != null; entry = corpus.getNextEntry()) {
                byte[] bytes = corpus.readAllBytes();
                assertDoesNotThrow(() -> FuzzedReaders.fuzzerTestOneInput(bytes), entry.getName());
                count++;
            }
        }
        assertTrue(count > 20, count + " in the corpus");
    }
}
