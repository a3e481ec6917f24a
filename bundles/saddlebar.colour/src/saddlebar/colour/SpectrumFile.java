package saddlebar.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import saddlebar.model.problem.Refusal;

/**
 * A measured transmittance as text: CSV whose first row names the columns {@code nm} and {@code transmittance} (shares from 0 to 1) or {@code
 * percent}; lines that begin with {@code #} are remarks. Other columns are passed over.
 */
public final class SpectrumFile {
    private static final String NM = "nm";
    private static final String SHARE = "transmittance";
    private static final String PERCENT = "percent";

    private final String name;

    private SpectrumFile(String name) {
        this.name = name;
    }

    /**
     * @param name of the file, for refusals
     * @param text all of it
     * @throws Refusal with the line, if it is not such a table over the visible range
     */
    public static Spectrum read(String name, String text) {
        return new SpectrumFile(name).parse(text);
    }

    private Spectrum parse(String text) {
        List<String> names = null;
        List<double[]> readings = new ArrayList<>();
        int number = 0;
        for (String line : text.split("\r\n|\n|\r", -1)) {
            number++;
            if (line.startsWith("#") || line.isBlank()) {
                continue;
            }
            String[] cells = line.split(",", -1);
            if (names == null) {
                names = List.of(cells).stream().map(cell -> cell.strip().toLowerCase(Locale.ROOT).replace("\uFEFF", "")).toList();
                if (!names.contains(NM) || names.contains(SHARE) == names.contains(PERCENT)) {
                    throw new Refusal(name + ":" + number, "the first row names no columns nm and transmittance",
                            "write nm,transmittance with shares from 0 to 1, or nm,percent");
                }
                continue;
            }
            boolean percent = names.contains(PERCENT);
            double share = number(cells, names.indexOf(percent ? PERCENT : SHARE), number);
            readings.add(new double[] {number(cells, names.indexOf(NM), number), percent ? share / 100 : share});
        }
        return Spectrum.sampled(name, readings.stream().mapToDouble(r -> r[0]).toArray(), readings.stream().mapToDouble(r -> r[1]).toArray());
    }

    private double number(String[] cells, int column, int line) {
        String cell = column < cells.length ? cells[column].strip() : "";
        try {
            double value = Double.parseDouble(cell);
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException noNumber) {
            throw new Refusal(name + ":" + line, "'" + cell + "' is no number", "write numbers with a decimal point", noNumber);
        }
        throw new Refusal(name + ":" + line, "'" + cell + "' is no finite number", "write numbers with a decimal point");
    }
}
