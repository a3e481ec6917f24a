package saddlebar.colour;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** A table of the bundle: remarks with {@code #}, a row of names, then numbers; the first column is the wavelength. */
final class CieTable {
    /** Colour-matching functions and standard illuminants. */
    static final CieTable OBSERVER = read("cie1931-d65-a-5nm.csv");
    /** Components of daylight. */
    static final CieTable DAYLIGHT = read("cie-daylight-10nm.csv");

    private final List<String> names;
    private final List<double[]> rows;

    private CieTable(List<String> names, List<double[]> rows) {
        this.names = names;
        this.rows = rows;
    }

    private static CieTable read(String name) {
        try (InputStream in = CieTable.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the bundle lacks its table " + name);
            }
            var lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
            List<String> names = null;
            List<double[]> rows = new ArrayList<>();
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (line.startsWith("#") || line.isBlank()) {
                    continue;
                }
                String[] cells = line.split(",");
                if (names == null) {
                    names = List.of(cells);
                    continue;
                }
                double[] row = new double[cells.length];
                for (int i = 0; i < row.length; i++) {
                    row[i] = Double.parseDouble(cells[i]);
                }
                rows.add(row);
            }
            return new CieTable(names, rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A column at 5 nm, between rows of a coarser table straight; values may be negative, hence an array. */
    double[] column(String name) {
        int column = names.indexOf(name);
        double step = rows.get(1)[0] - rows.get(0)[0];
        double[] values = new double[Spectrum.BANDS];
        for (int band = 0; band < Spectrum.BANDS; band++) {
            double at = (Spectrum.nmOf(band) - rows.get(0)[0]) / step;
            int row = Math.min((int) at, rows.size() - 2);
            double share = at - row;
            values[band] = (1 - share) * rows.get(row)[column] + share * rows.get(row + 1)[column];
        }
        return values;
    }
}
