package saddlebar.production.record;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiConsumer;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.DuplicateHeaderMode;

import saddlebar.model.problem.Refusal;

/** A table of an old notebook: comma, semicolon or tab between the cells (the one that its first line has most of), UTF-8, with or without a mark at its beginning. */
final class NotebookTable {
    private NotebookTable() {
    }

    /** Where a row stands, and whether it has as many cells as there are headings. */
    record Place(String file, long line, int cells, int headings) {
        void requireWhole() {
            if (cells != headings) {
                throw new Refusal(toString(), "has " + cells + " cells where the first row names " + headings + " columns", "give every row as many cells");
            }
        }

        @Override
        public String toString() {
            return file + ":" + line;
        }
    }

    /**
     * Hands out the headings as line 1, each with an empty word, then every row.
     *
     * @throws Refusal if it is no table
     */
    static void read(Path file, BiConsumer<Place, Map<String, String>> rows) throws IOException {
        String name = String.valueOf(file.getFileName());
        if (!Files.isRegularFile(file)) {
            throw new Refusal(file.toString(), "there is no such file", "name a CSV file");
        }
        try {
            String text = Files.readString(file, StandardCharsets.UTF_8);
            text = text.startsWith("\uFEFF") ? text.substring(1) : text;
            CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(delimiter(text)).setHeader().setSkipHeaderRecord(true).setIgnoreEmptyLines(true)
                    .setTrim(true).setDuplicateHeaderMode(DuplicateHeaderMode.DISALLOW).get();
            try (CSVParser parser = CSVParser.parse(text, format)) {
                int headings = parser.getHeaderNames().size();
                Map<String, String> names = new LinkedHashMap<>();
                parser.getHeaderNames().forEach(heading -> names.put(heading, ""));
                rows.accept(new Place(name, 1, headings, headings), names);
                for (CSVRecord row : parser) {
                    rows.accept(new Place(name, parser.getCurrentLineNumber(), row.size(), headings), row.toMap());
                }
            }
        } catch (CharacterCodingException e) {
            throw new Refusal(name, "is not UTF-8 text", "save it as UTF-8", e);
        } catch (IllegalArgumentException | UncheckedIOException e) {
            throw new Refusal(name, "cannot be read as a table (" + e.getMessage() + ")", "save it as comma separated values, each heading once", e);
        }
    }

    private static char delimiter(String text) {
        int end = text.indexOf('\n');
        String first = end < 0 ? text : text.substring(0, end);
        char best = ',';
        for (char mark : new char[] {';', '\t'}) {
            if (count(first, mark) > count(first, best)) {
                best = mark;
            }
        }
        return best;
    }

    private static long count(String text, char mark) {
        return text.chars().filter(c -> c == mark).count();
    }
}
