package saddlebar.nesting.read;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.DuplicateHeaderMode;

import saddlebar.model.problem.Refusal;
import saddlebar.nesting.NestItem;
import saddlebar.nesting.Turns;

/**
 * Reads rectangles from CSV with the columns {@code id,width_mm,height_mm,quantity,rotate}, in any order; others are left out. An empty
 * {@code quantity} is 1, an empty {@code rotate} is {@code no}; both columns may be absent. Numbers have a decimal point. Lines that are empty
 * or begin with {@code #} are skipped.
 */
public final class RectangleList {
    private static final List<String> NEEDED = List.of("id", "width_mm", "height_mm");
    private static final CSVFormat FORMAT = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setTrim(true)
            .setIgnoreEmptyLines(true).setIgnoreSurroundingSpaces(true).setCommentMarker('#').setAllowMissingColumnNames(true)
            .setDuplicateHeaderMode(DuplicateHeaderMode.ALLOW_EMPTY).get(); // columns without a name are left out like all others not asked for

    private static final String COLUMNS = "give the columns id,width_mm,height_mm,quantity,rotate a first line of their own";

    private final String fileName;
    private long line;
    private final Map<String, Long> lineOfId = new HashMap<>();

    private RectangleList(String fileName) {
        this.fileName = fileName;
    }

    /**
     * @param csv      read to its end and closed
     * @param fileName what refusals call the file
     * @throws Refusal with file and line
     */
    public static List<NestItem> read(Reader csv, String fileName) throws IOException {
        return new RectangleList(fileName).items(new BufferedReader(csv));
    }

    private List<NestItem> items(BufferedReader csv) throws IOException {
        LineReader.skipByteOrderMark(csv);
        List<NestItem> items = new ArrayList<>();
        QuoteWatch text = new QuoteWatch(csv);
        try (CSVParser rows = CSVParser.parse(text, FORMAT)) {
            for (String column : NEEDED) {
                if (!rows.getHeaderMap().containsKey(column)) {
                    throw new Refusal(fileName + ":1", "it has no column " + column, COLUMNS);
                }
            }
            for (CSVRecord row : rows) {
                line = rows.getCurrentLineNumber();
                items.add(item(row));
            }
        } catch (IllegalArgumentException e) { // the parser's word for a heading that is empty or there twice
            throw new Refusal(fileName + ":1", "its first line does not name each column once", COLUMNS, e);
        } catch (CSVException | UncheckedIOException e) {
            if (e instanceof UncheckedIOException && !(e.getCause() instanceof CSVException)) {
                throw new IOException(e.getCause());
            }
            throw new Refusal(fileName + ":" + (text.faultyLine() > 0 ? text.faultyLine() : line + 1), "it is not comma-separated text",
                    "close every quotation mark and write the file anew", e);
        }
        if (items.isEmpty()) {
            throw new Refusal(fileName, "it lists no item", "write one line an item below the line of column names");
        }
        return List.copyOf(items);
    }

    private NestItem item(CSVRecord row) {
        String where = fileName + ":" + line;
        String id = cell(row, "id").orElseThrow(() -> new Refusal(where, "it has no id", "give each item an id of its own"));
        double widthMm = length(where, "width_mm", cell(row, "width_mm"));
        double heightMm = length(where, "height_mm", cell(row, "height_mm"));
        int quantity = cell(row, "quantity").map(text -> quantity(where, text)).orElse(1);
        Turns turns = cell(row, "rotate").map(text -> turns(where, text)).orElse(Turns.NONE);
        Long before = lineOfId.putIfAbsent(id, line);
        if (before != null) {
            throw new Refusal(where, "the id " + id + " is that of line " + before + " too", "give each item an id of its own");
        }
        try {
            return NestItem.rectangle(id, widthMm, heightMm, quantity, turns);
        } catch (Refusal e) {
            throw new Refusal(where, e.what(), e.remedy(), e);
        }
    }

    private static Optional<String> cell(CSVRecord row, String column) {
        return row.isSet(column) ? Optional.of(row.get(column)).filter(text -> !text.isBlank()) : Optional.empty();
    }

    private static double length(String where, String column, Optional<String> text) {
        try {
            double mm = Double.parseDouble(text.orElse(""));
            if (mm > 0 && mm < Double.POSITIVE_INFINITY && text.orElse("").toLowerCase(Locale.ROOT).matches("[0-9.e+-]+")) {
                return mm;
            }
        } catch (NumberFormatException e) {
            // told below
        }
        throw new Refusal(where, column + " is '" + text.orElse("") + "'", "give a length in mm above 0, such as 120 or 84.5");
    }

    private static int quantity(String where, String text) {
        if (text.matches("[0-9]{1,6}")) {
            int quantity = Integer.parseInt(text);
            if (quantity >= 1 && quantity <= NestItem.MOST) {
                return quantity;
            }
        }
        throw new Refusal(where, "quantity is '" + text + "'", "give a whole number from 1 to " + NestItem.MOST);
    }

    private static Turns turns(String where, String text) {
        return Turns.ofWord(text)
                .orElseThrow(() -> new Refusal(where, "rotate is '" + text + "'", "write no, half, quarter or free"));
    }
}
