package saddlebar.stencil.method;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Weights by tone, for 256 levels: row k of the published table for level k and for level 255 - k.
 *
 * <p>Source: Ostromoukhov, A simple and efficient error-diffusion algorithm, SIGGRAPH 2001, 567-572, appendix ({@code ostromoukhov2001.csv}).
 */
final class TonalSpreads {
    private static final String TABLE = "ostromoukhov2001.csv";

    private TonalSpreads() {
    }

    /** Half the table, level 0 to 127. */
    static List<Spread> published() {
        List<Spread> spreads = new ArrayList<>();
        try (InputStream stream = TonalSpreads.class.getResourceAsStream(TABLE);
                BufferedReader lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (line.isBlank() || line.startsWith("#") || line.startsWith("level")) {
                    continue;
                }
                String[] cells = line.split(",");
                int[] weight = {Integer.parseInt(cells[1]), Integer.parseInt(cells[2]), Integer.parseInt(cells[3])};
                if (Integer.parseInt(cells[0]) != spreads.size()) {
                    throw new IllegalStateException(TABLE + " misses level " + spreads.size());
                }
                spreads.add(new Spread(new int[] {1, -1, 0}, new int[] {0, 1, 1}, weight, weight[0] + weight[1] + weight[2]));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return spreads;
    }

    /** All 256 levels of coverage. */
    static Spread[] byLevel() {
        List<Spread> half = published();
        Spread[] spreads = new Spread[256];
        for (int level = 0; level < 128; level++) {
            spreads[level] = half.get(level);
            spreads[255 - level] = half.get(level);
        }
        return spreads;
    }
}
