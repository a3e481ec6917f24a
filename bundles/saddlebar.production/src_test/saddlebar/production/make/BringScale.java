package saddlebar.production.make;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;

import saddlebar.artwork.Artwork;
import saddlebar.artwork.ArtworkReaders;
import saddlebar.artwork.LayerChoice;
import saddlebar.artwork.ReadSettings;

/**
 * Not a test: how long a drawing of 20,000 path segments takes to be read, its layers guessed and its lines taken, and how that grows at 4 and 16 times as
 * many. Prints the medians of five rounds after one that is not counted, and the exponent of growth.
 */
final class BringScale {
    private static final int SEGMENTS = 20_000;
    private static final int ROUNDS = 5;

    private BringScale() {
    }

    public static void main(String[] none) throws IOException {
        Path folder = Files.createTempDirectory("bring-scale");
        double[] medians = new double[3];
        for (int step = 0; step < 3; step++) {
            int segments = SEGMENTS << 2 * step;
            Path art = Files.writeString(folder.resolve("art" + segments + ".svg"), drawing(segments), StandardCharsets.US_ASCII);
            double[] seconds = new double[ROUNDS];
            for (int round = -1; round < ROUNDS; round++) {
                long start = System.nanoTime();
                int lines = read(art);
                if (round >= 0) {
                    seconds[round] = (System.nanoTime() - start) / 1e9;
                }
                if (lines < segments / 20) {
                    throw new IllegalStateException(lines + " lines came of " + segments + " segments");
                }
            }
            Arrays.sort(seconds);
            medians[step] = seconds[ROUNDS / 2];
            System.out.printf(Locale.ROOT, "%d segments: %.2f s%n", segments, medians[step]);
            Files.delete(art);
        }
        Files.delete(folder);
        System.out.printf(Locale.ROOT, "exponent of growth %.2f%n", Math.log(medians[2] / medians[0]) / Math.log(16));
    }

    private static int read(Path art) throws IOException {
        try (Artwork artwork = ArtworkReaders.ownReaders().read(art, ReadSettings.asDrawn())) {
            artwork.guesses();
            return artwork.lines(LayerChoice.of(artwork.chosenLayer("layer1")), Artwork.CUT_FLATNESS_MM).size();
        }
    }

    /** Wavy outlines of 20 curved segments each side by side, on one layer without a telling name. */
    private static String drawing(int segments) {
        int figures = segments / 20;
        int side = (int) Math.ceil(Math.sqrt(figures));
        StringBuilder svg = new StringBuilder("<svg xmlns='http://www.w3.org/2000/svg' width='900mm' height='900mm' viewBox='0 0 900 900'>"
                + "<g id='layer1' fill='none' stroke='#000' stroke-width='.3'>\n");
        double cell = 900.0 / side;
        for (int i = 0; i < figures; i++) {
            double cx = (i % side + 0.5) * cell;
            double cy = (i / side + 0.5) * cell;
            svg.append("<path d='");
            for (int k = 0; k <= 20; k++) {
                double angle = Math.PI * k / 10;
                double r = cell * (0.35 + 0.05 * Math.cos(5 * angle));
                svg.append(String.format(Locale.ROOT, k == 0 ? "M%.3f %.3f" : "Q%.3f %.3f ", cx + r * Math.cos(angle - 0.15), cy + r * Math.sin(angle - 0.15)));
                if (k > 0) {
                    svg.append(String.format(Locale.ROOT, "%.3f %.3f", cx + r * Math.cos(angle), cy + r * Math.sin(angle)));
                }
            }
            svg.append("z'/>\n");
        }
        return svg.append("</g></svg>").toString();
    }
}
