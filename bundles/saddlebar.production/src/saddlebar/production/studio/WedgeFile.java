package saddlebar.production.studio;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

import saddlebar.model.problem.Refusal;
import saddlebar.stencil.tone.Calibration;
import saddlebar.stencil.tone.MeasuredStep;
import saddlebar.stencil.tone.MeasuredWedge;
import saddlebar.stencil.tone.WedgeReading;

/**
 * Reads a measured wedge: CSV with the column nominal (coverage from 0 to 1) and one of effective (coverage from 0 to 1), density, or transmittance
 * (above 0 to 1).
 */
public final class WedgeFile {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setTrim(true).setIgnoreEmptyLines(true)
            .setCommentMarker('#').get();

    private WedgeFile() {
    }

    /** A calibration of its readings. */
    public static Calibration read(Path file) throws IOException {
        return Calibration.of(readings(file, 1));
    }

    /** @param n Yule-Nielsen factor, for densities and transmittances */
    public static List<WedgeReading> readings(Path file, double n) throws IOException {
        String name = String.valueOf(file.getFileName());
        if (!Files.isRegularFile(file)) {
            throw new Refusal(name, "there is no such file", "give a CSV of a measured wedge");
        }
        try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8); CSVParser rows = CSVParser.parse(in, FORMAT)) {
            return readings(name, rows, n);
        } catch (IllegalArgumentException | CharacterCodingException | UncheckedIOException notCsv) {
            String why = notCsv instanceof UncheckedIOException unread ? unread.getCause().getMessage() : notCsv.getMessage();
            throw new Refusal(name, "it is not a CSV of wedge readings: " + why, "write the columns nominal,effective with numbers from 0 to 1",
                    notCsv);
        }
    }

    private static List<WedgeReading> readings(String name, CSVParser rows, double n) {
        Map<String, Integer> header = rows.getHeaderMap();
        List<String> measures = List.of("effective", "density", "transmittance").stream().filter(header::containsKey).toList();
        if (!header.containsKey("nominal") || measures.isEmpty()) {
            throw new Refusal(name + ":1", "it has no columns nominal and effective (or density, or transmittance)", "name them in the first line");
        }
        if (measures.size() > 1) {
            throw new Refusal(name + ":1", "it has both " + measures.get(0) + " and " + measures.get(1), "keep one of them");
        }
        List<WedgeReading> readings = new ArrayList<>();
        List<MeasuredStep> steps = new ArrayList<>();
        for (CSVRecord row : rows) {
            double nominal = number(name, rows, row, "nominal", 0, 1);
            switch (measures.get(0)) {
                case "effective" -> readings.add(new WedgeReading(nominal, number(name, rows, row, "effective", 0, 1)));
                case "density" -> steps.add(new MeasuredStep(nominal, number(name, rows, row, "density", -0.5, 6)));
                default -> steps.add(MeasuredStep.ofTransmittance(nominal, number(name, rows, row, "transmittance", 1e-6, 1.1)));
            }
        }
        return steps.isEmpty() ? readings : MeasuredWedge.readings(steps, n);
    }

    private static double number(String name, CSVParser rows, CSVRecord row, String column, double least, double most) {
        String where = name + ":" + rows.getCurrentLineNumber();
        String text = row.isSet(column) ? row.get(column) : "";
        try {
            double value = Double.parseDouble(text);
            if (value >= least && value <= most) {
                return value;
            }
        } catch (NumberFormatException noNumber) {
            throw new Refusal(where, column + " is '" + text + "'", "write a number", noNumber);
        }
        throw new Refusal(where, column + " is " + text,
                column.equals("density") ? "write -log10 of the transmittance" : "write a share from 0 to 1, not per cent");
    }
}
