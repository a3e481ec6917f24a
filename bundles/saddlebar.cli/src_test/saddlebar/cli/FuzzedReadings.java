package saddlebar.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

import saddlebar.production.studio.WedgeFile;
import saddlebar.model.problem.Refusal;
import saddlebar.stencil.tone.Calibration;

/**
 * Any bytes as a CSV of wedge readings: a calibration comes of it, or a refusal, and nothing else. {@code releng/fuzz} feeds this by coverage; the bytes that
 * it found to matter are kept and read again by every build ({@link FuzzCorpusTest}). The first byte is the Yule-Nielsen factor in tenths above 1.
 */
public final class FuzzedReadings {
    private static final class Scratch {
        private static final Path FILE = create();

        private static Path create() {
            try {
                Path file = Files.createTempFile("readings", ".csv");
                file.toFile().deleteOnExit();
                return file;
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    private FuzzedReadings() {
    }

    /** Called by the fuzzer, by this name. */
    public static void fuzzerTestOneInput(byte[] bytes) throws IOException {
        if (bytes.length == 0) {
            return;
        }
        Files.write(Scratch.FILE, Arrays.copyOfRange(bytes, 1, bytes.length));
        try {
            Calibration calibration = Calibration.of(WedgeFile.readings(Scratch.FILE, 1 + (bytes[0] & 0xFF) % 11 / 10.0));
            double before = -1;
            for (int i = 0; i <= 20; i++) {
                double screened = calibration.toScreen(i / 20.0);
                if (!(screened >= before && screened >= 0 && screened <= 1)) {
                    throw new IllegalStateException("the calibration falls, or leaves 0 to 1, at " + i / 20.0 + ": " + screened);
                }
                before = screened;
            }
        } catch (Refusal told) {
            if (told.getMessage().length() < 10) {
                throw new IllegalStateException("refused without a sentence", told);
            }
        }
    }

    /** Writes seeds into a folder. */
    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        String[] seeds = {"nominal,effective\n0,0\n0.25,0.3\n0.5,0.6\n0.75,0.85\n1,1\n", "nominal,density\n0,0.02\n0.1,0.1\n0.5,0.4\n0.7,0.9\n1,1.5\n",
                "# fired\nnominal,transmittance\n0,0.9\n0.2,0.7\n0.5,0.4\n0.8,0.1\n1,0.02\n", "nominal,effective\n\"0\",0\n0.5,0.7\n0.4,0.2\n1,1\n"};
        for (int i = 0; i < seeds.length; i++) {
            Files.write(folder.resolve("readings-" + i), (" " + seeds[i]).getBytes(StandardCharsets.UTF_8));
        }
    }
}
