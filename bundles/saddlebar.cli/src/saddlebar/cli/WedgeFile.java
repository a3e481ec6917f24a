package saddlebar.cli;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

import saddlebar.model.problem.Refusal;
import saddlebar.stencil.tone.Calibration;
import saddlebar.stencil.tone.WedgeReading;

/** Reads a measured wedge: CSV with the columns nominal and effective, coverages from 0 to 1. */
final class WedgeFile {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setTrim(true).setIgnoreEmptyLines(true)
            .setCommentMarker('#').get();

    private WedgeFile() {
    }

    static Calibration read(Path file) throws IOException {
        String name = String.valueOf(file.getFileName());
        if (!Files.isRegularFile(file)) {
            throw new Refusal(name, "there is no such file", "give --tone linear, or a CSV of a measured wedge");
        }
        List<WedgeReading> readings = new ArrayList<>();
        try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8); CSVParser rows = CSVParser.parse(in, FORMAT)) {
            if (!rows.getHeaderMap().containsKey("nominal") || !rows.getHeaderMap().containsKey("effective")) {
                throw new Refusal(name + ":1", "it has no columns nominal and effective", "name them in the first line");
            }
            for (CSVRecord row : rows) {
                readings.add(new WedgeReading(share(name, rows, row, "nominal"), share(name, rows, row, "effective")));
            }
        } catch (IllegalArgumentException | java.nio.charset.CharacterCodingException notCsv) {
            throw new Refusal(name, "it is not a CSV of wedge readings: " + notCsv.getMessage(), "write the columns nominal,effective with numbers from 0 to 1",
                    notCsv);
        }
        return Calibration.of(readings);
    }

    private static double share(String name, CSVParser rows, CSVRecord row, String column) {
        String where = name + ":" + rows.getCurrentLineNumber();
        String text = row.isSet(column) ? row.get(column) : "";
        try {
            double value = Double.parseDouble(text);
            if (value >= 0 && value <= 1) {
                return value;
            }
        } catch (NumberFormatException noNumber) {
            throw new Refusal(where, column + " is '" + text + "'", "write a number from 0 to 1", noNumber);
        }
        throw new Refusal(where, column + " is " + text, "write a share from 0 to 1, not per cent");
    }
}
