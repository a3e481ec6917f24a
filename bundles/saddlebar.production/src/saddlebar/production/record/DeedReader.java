package saddlebar.production.record;

import java.io.IOException;
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

import saddlebar.model.problem.Refusal;
import saddlebar.model.store.RecordKind;

/**
 * Reads deeds: a studio's old notebook as a table (RFC 4180, UTF-8, columns in any order, those not needed left out, empty cells allowed), or words of the
 * form {@code column=value}. A time is ISO 8601: a day, a day with a time of the studio's clock, or an instant.
 */
public final class DeedReader {
    /** Every column that may be there. */
    public static final List<String> COLUMNS = List.of("when", "kind", "who", "window", "piece", "layer", "stencil", "sheet", "screen", "mesh", "paint", "lot",
            "mix", "medium", "pull", "firing", "schedule", "shelf_place", "peak_c", "heat_work", "temperature_c", "humidity", "powder_g", "medium_g", "hours",
            "defect", "severity", "disposition", "photo", "at", "corrects", "test", "arm", "note");
    /** Columns that hold numbers. */
    static final Set<String> NUMBERS = Set.of("peak_c", "heat_work", "temperature_c", "humidity", "powder_g", "medium_g", "hours");
    /** Begins the name of a column of the person's own; it is kept as it stands. */
    public static final String FREE = "x:";
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
        return table(file, HeaderMapping.OWN);
    }

    /**
     * A table whose headings are the studio's own.
     *
     * @param mapping what each heading means
     */
    public Table table(Path file, HeaderMapping mapping) throws IOException {
        String name = String.valueOf(file.getFileName());
        List<Deed> deeds = new ArrayList<>();
        List<Refusal> refused = new ArrayList<>();
        NotebookTable.read(file, (place, row) -> {
            if (place.line() == 1) {
                columns(name, mapping.columns(List.copyOf(row.keySet())));
                return;
            }
            try {
                place.requireWhole();
                deeds.add(deed(place.toString(), mapping.words(row, place.toString())));
            } catch (Refusal refusal) {
                refused.add(refusal);
            }
        });
        return new Table(deeds, refused);
    }

    private static void columns(String name, List<String> given) {
        for (String column : given) {
            if (!known(column)) {
                throw new Refusal(name + ":1", "there is no column '" + column + "'", "take of: " + String.join(", ", COLUMNS));
            }
        }
        for (String needed : List.of("when", "kind")) {
            if (!given.contains(needed)) {
                throw new Refusal(name + ":1", "the column '" + needed + "' is missing", "add it; every row needs it");
            }
        }
    }

    private static boolean known(String column) {
        return COLUMNS.contains(column) || column.startsWith(FREE) && column.length() > FREE.length();
    }

    /**
     * One deed from words.
     *
     * @param words by column; {@code when} may be left out and is then now
     */
    public Deed deed(String where, Map<String, String> words) {
        Map<String, String> others = new LinkedHashMap<>();
        words.forEach((column, word) -> {
            if (!known(column)) {
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
        for (String number : NUMBERS) {
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
