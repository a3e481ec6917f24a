package saddlebar.stencil.code;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import saddlebar.model.problem.LockedException;
import saddlebar.model.work.Work;
import saddlebar.stencil.BitBands;

/**
 * A disk that takes no more: a second Java runs under a limit on the size of any file it writes, so that the system itself refuses a write at that
 * byte. Whatever writer and whatever byte, it is a {@link LockedException} with the target's name, the old file is as it was, and nothing else is there.
 */
class FullDiskTest {
    /** What the second Java does: try to replace files of every format, coded and plain; it ends with 4 if each time the refusal was as it should be. */
    static final class Writing {
        private Writing() {
        }

        public static void main(String[] arguments) throws IOException {
            for (String format : new String[] {"tif", "pdf", "png"}) {
                for (double share : new double[] {0.05, 0.5}) {
                    Path target = Path.of(arguments[0]).resolve("sheet." + format);
                    try (BitBands bits = Fields.noise(1200, 800, share, 1).bands()) {
                        write(bits, target, format);
                        System.exit(6);
                    } catch (LockedException e) {
                        if (!e.getMessage().startsWith(target.toString())) {
                            System.exit(5);
                        }
                    }
                }
            }
            System.exit(4);
        }

        private static void write(BitBands bits, Path target, String format) throws IOException {
            BitonalSettings settings = BitonalSettings.at(1200).replacing(true);
            switch (format) {
                case "tif" -> BitonalTiff.write(bits, target, settings, Work.UNWATCHED);
                case "pdf" -> SheetPdf.write(bits, target, settings, Work.UNWATCHED);
                default -> BitonalPng.write(bits, target, settings, Work.UNWATCHED);
            }
        }
    }

    @TempDir
    private Path folder;

    /** Limits in KiB: at the first bytes, at the head of the file, in its midst; plain bits are 117 KiB. */
    @ParameterizedTest
    @ValueSource(ints = {0, 4, 40})
    void nothingIsHalfWritten(int limitKiB) throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "no shell that limits files");
        for (String format : new String[] {"tif", "pdf", "png"}) {
            Files.writeString(folder.resolve("sheet." + format), "old");
        }
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Process process = new ProcessBuilder("/bin/bash", "-c", "ulimit -f " + limitKiB + " && exec \"$@\"", "-", java, "-XX:-UsePerfData",
                "-XX:TieredStopAtLevel=1", "-Xshare:auto", "-Xmx200m", "-cp", System.getProperty("java.class.path"), Writing.class.getName(),
                folder.toString()).redirectErrorStream(true).start();
        String said;
        try (InputStream out = process.getInputStream()) {
            said = new String(out.readAllBytes(), StandardCharsets.UTF_8);
        }
        assertEquals(4, process.waitFor(), said);
        assertTrue(said.isEmpty(), said);
        assertEquals(3, folder.toFile().list().length);
        for (String format : new String[] {"tif", "pdf", "png"}) {
            assertEquals("old", Files.readString(folder.resolve("sheet." + format)));
        }
    }
}
