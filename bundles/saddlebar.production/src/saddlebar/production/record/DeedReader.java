package saddlebar.production.record;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.DuplicateHeaderMode;

import saddlebar.model.problem.Refusal;
import saddlebar.model.store.RecordKind;

/**
 * Reads deeds: a studio's old notebook as a table (RFC 4180, UTF-8, columns in any order, those not needed left out, empty cells allowed), or words of the
 * form {@code column=value}. A time is ISO 8601: a day, a day with a time of the studio's clock, or an instant.
 */
public final class DeedReader {
    /** Every column that may be there. */
    public static final List<String> COLUMNS = List.of("when", "kind", "who", "window", "piece", "layer", "stencil", "sheet", "screen", "mesh", "paint", "lot",
            "mix", "medium", "pull", "firing", "schedule", "shelf_place", "peak_c", "humidity", "defect", "severity", "note");
    /** Kinds that people tell; the others the program writes itself. */
    public static final Set<String> KINDS = Set.of("fuse", "reclaim", "mix", "pull", "fire", "glaze", "defect", "remake", "fix", "note");
    private static final Set<String> OF_A_PIECE = Set.of("pull", "fire", "defect", "remake");

    private final Instant now;
    private final ZoneId zone;

    /**
     * @param now  nothing later is taken
     * @param zone of times that name none
     */
    public DeedReader(Instant now, ZoneId zone) {
        this.now = now;
        this.zone = zone;
    }

    /** What a table holds: good rows, and a refusal for each bad one. */
    public record Table(List<Deed> deeds, List<Refusal> refused) {
        public Table {
            deeds = List.copyOf(deeds);
            refused = List.copyOf(refused);
        }
    }

    /** @throws Refusal if the file cannot be read as a table at all, or lacks a column that every row needs */
    public Table table(Path file) throws IOException {
        String name = String.valueOf(file.getFileName());
        if (!Files.isRegularFile(file)) {
            throw new Refusal(file.toString(), "there is no such file", "name a CSV file");
        }
        List<Deed> deeds = new ArrayList<>();
        List<Refusal> refused = new ArrayList<>();
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setIgnoreEmptyLines(true).setTrim(true)
                .setDuplicateHeaderMode(DuplicateHeaderMode.DISALLOW).get();
        try (CSVParser rows = CSVParser.parse(withoutMark(Files.readString(file, StandardCharsets.UTF_8)), format)) {
            columns(name, rows.getHeaderNames());
            for (CSVRecord row : rows) {
                try {
                    if (!row.isConsistent()) {
                        throw new Refusal(name + ":" + rows.getCurrentLineNumber(), "has " + row.size() + " cells where the first row names "
                                + rows.getHeaderNames().size() + " columns", "give every row as many cells");
                    }
                    deeds.add(deed(name + ":" + rows.getCurrentLineNumber(), row.toMap()));
                } catch (Refusal refusal) {
                    refused.add(refusal);
                }
            }
        } catch (CharacterCodingException e) {
            throw new Refusal(name, "is not UTF-8 text", "save it as UTF-8", e);
        } catch (IllegalArgumentException | UncheckedIOException e) {
            throw new Refusal(name, "cannot be read as a table (" + e.getMessage() + ")", "save it as comma separated values, each heading once", e);
        }
        return new Table(deeds, refused);
    }

    private static String withoutMark(String text) {
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static void columns(String name, List<String> given) {
        for (String column : given) {
            if (!COLUMNS.contains(column)) {
                throw new Refusal(name + ":1", "there is no column '" + column + "'", "take of: " + String.join(", ", COLUMNS));
            }
        }
        for (String needed : List.of("when", "kind")) {
            if (!given.contains(needed)) {
                throw new Refusal(name + ":1", "the column '" + needed + "' is missing", "add it; every row needs it");
            }
        }
    }

    /**
     * One deed from words.
     *
     * @param words by column; {@code when} may be left out and is then now
     */
    public Deed deed(String where, Map<String, String> words) {
        Map<String, String> others = new LinkedHashMap<>();
        words.forEach((column, word) -> {
            if (!COLUMNS.contains(column)) {
                throw new Refusal(where, "there is no column '" + column + "'", "take of: " + String.join(", ", COLUMNS));
            }
            if (!word.isEmpty()) {
                others.put(column, word);
            }
        });
        String kind = others.getOrDefault("kind", "");
        if (!KINDS.contains(kind) || RecordKind.ofKey(kind).isEmpty()) {
            throw new Refusal(where, kind.isEmpty() ? "kind is empty" : "there is no kind '" + kind + "'",
                    "take one of " + String.join(", ", KINDS.stream().sorted().toList()));
        }
        Instant when = others.containsKey("when") ? when(where, others.get("when")) : now;
        if (when.isAfter(now)) {
            throw new Refusal(where, "its time " + others.get("when") + " lies in the future", "mend the time, or the clock of this machine");
        }
        for (String number : List.of("peak_c", "humidity")) {
            if (others.containsKey(number)) {
                number(where, number, others.get(number));
            }
        }
        if (OF_A_PIECE.contains(kind) && (others.getOrDefault("window", "").isEmpty() || others.getOrDefault("piece", "").isEmpty())) {
            throw new Refusal(where, "a " + kind + " needs window and piece", "fill both in");
        }
        if (kind.equals("defect") && others.getOrDefault("defect", "").isEmpty()) {
            throw new Refusal(where, "a defect needs a word for what is wrong", "fill in the column defect");
        }
        String who = others.getOrDefault("who", "");
        others.keySet().removeAll(List.of("when", "kind", "who"));
        return new Deed(where, when, kind, who, others);
    }

    static double number(String where, String column, String word) {
        try {
            double value = Double.parseDouble(word);
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            // told below
        }
        throw new Refusal(where, column + " '" + word + "' is no number", "write digits with a decimal point");
    }

    private Instant when(String where, String word) {
        try {
            if (word.length() <= 10) {
                return LocalDate.parse(word).atTime(12, 0).atZone(zone).toInstant();
            }
            if (word.endsWith("Z") || word.matches(".*[+-]\\d\\d:\\d\\d$")) {
                return OffsetDateTime.parse(word.replace(' ', 'T')).withOffsetSameInstant(ZoneOffset.UTC).toInstant();
            }
            return LocalDateTime.parse(word.replace(' ', 'T')).atZone(zone).toInstant();
        } catch (DateTimeException e) {
            throw new Refusal(where, "its time '" + word + "' is none", "write it as 2026-03-14 or 2026-03-14T15:30", e);
        }
    }
}
