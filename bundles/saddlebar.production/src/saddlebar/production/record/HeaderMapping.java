package saddlebar.production.record;

import java.io.IOException;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import saddlebar.model.problem.Refusal;

/**
 * What the headings and words of a studio's own notebook mean.
 *
 * @param columns heading to column; empty for the columns' own names
 * @param dates   in which order a date with strokes is written: {@code dmy} or {@code mdy}; empty if it has not been said
 */
public record HeaderMapping(Map<String, String> columns, String dates) {
    /** The columns' own names. */
    public static final HeaderMapping OWN = new HeaderMapping(Map.of(), "");
    /** Headings that are met in notebooks, English and German, without capitals, marks and blanks (words of the trade; common practice, no source). */
    private static final Map<String, List<String>> MET = new LinkedHashMap<>();
    private static final Map<String, List<String>> KINDS = new LinkedHashMap<>();

    static {
        MET.put("when", List.of("date", "day", "time", "datetime", "datum", "tag", "zeit", "zeitpunkt", "dated"));
        MET.put("kind", List.of("what", "action", "task", "step", "work", "done", "activity", "art", "arbeit", "schritt", "taetigkeit", "was"));
        MET.put("who", List.of("by", "name", "person", "maker", "hand", "printedby", "wer", "von", "werker"));
        MET.put("window", List.of("win", "light", "panel", "fenster", "feld", "windowno", "windownumber"));
        MET.put("piece", List.of("pieceno", "piecenumber", "glass", "glassno", "no", "nr", "pc", "stueck", "stuecknr", "scherbe", "teil"));
        MET.put("layer", List.of("coat", "pass", "schicht", "lage", "design"));
        MET.put("stencil", List.of("schablone", "stencilno"));
        MET.put("sheet", List.of("film", "sheetno", "folie", "blatt", "bogen"));
        MET.put("screen", List.of("frame", "screenno", "frameno", "sieb", "rahmen", "siebnr"));
        MET.put("mesh", List.of("gauze", "meshcount", "threads", "gewebe", "siebgewebe"));
        MET.put("paint", List.of("colour", "color", "pigment", "farbe", "malfarbe"));
        MET.put("lot", List.of("batch", "lotno", "charge", "chargennr"));
        MET.put("mix", List.of("mixture", "mixno", "mischung", "ansatz"));
        MET.put("medium", List.of("binder", "vehicle", "oil", "bindemittel", "malmittel"));
        MET.put("pull", List.of("pullno", "print", "printno", "stroke", "zug", "druck", "drucknr", "abzug"));
        MET.put("firing", List.of("firingno", "kilnload", "load", "brand", "brandnr", "ofenladung"));
        MET.put("schedule", List.of("program", "programme", "brennkurve", "kurve", "profil"));
        MET.put("shelf_place", List.of("shelf", "place", "position", "shelfplace", "platz", "ofenplatz", "lageimofen"));
        MET.put("peak_c", List.of("peak", "temp", "top", "peaktemp", "peakc", "maxc", "hoechsttemperatur", "spitze", "brenntemperatur"));
        MET.put("heat_work", List.of("heatwork", "waermearbeit"));
        MET.put("temperature_c", List.of("roomtemp", "roomtemperature", "raumtemperatur"));
        MET.put("humidity", List.of("rh", "damp", "luftfeuchte", "feuchte", "luftfeuchtigkeit"));
        MET.put("powder_g", List.of("powder", "pulver"));
        MET.put("medium_g", List.of("mediumg", "oilg"));
        MET.put("hours", List.of("hrs", "stunden", "dauer"));
        MET.put("defect", List.of("flaw", "fault", "problem", "trouble", "fehler", "mangel"));
        MET.put("severity", List.of("how bad", "grade", "schwere"));
        MET.put("note", List.of("notes", "remark", "remarks", "comment", "comments", "notiz", "bemerkung", "anmerkung"));
        KINDS.put("pull", List.of("print", "printed", "printing", "pulled", "druck", "drucken", "gedruckt"));
        KINDS.put("fire", List.of("fired", "firing", "kiln", "brand", "brennen", "gebrannt"));
        KINDS.put("fuse", List.of("fused", "load screen", "loaded", "stencil on", "aufschmelzen", "aufgeschmolzen"));
        KINDS.put("reclaim", List.of("reclaimed", "strip", "stripped", "clean screen", "entschichten", "entschichtet"));
        KINDS.put("mix", List.of("mixed", "mixing", "mischen", "gemischt"));
        KINDS.put("glaze", List.of("glazed", "leaded", "foiled", "soldered", "verglast", "verglasen", "verbleit"));
        KINDS.put("fix", List.of("fixed", "installed", "fitted", "einbau", "eingebaut"));
        KINDS.put("defect", List.of("flaw", "fault", "bad", "fehler", "mangel"));
        KINDS.put("remake", List.of("remade", "again", "redo", "nachfertigen", "neu"));
        KINDS.put("note", List.of("notiz", "remark"));
    }

    public HeaderMapping {
        columns = Collections.unmodifiableMap(new LinkedHashMap<>(columns));
    }

    /**
     * What the headings of a notebook seem to mean. A heading that nothing is known of becomes a column of the person's own.
     *
     * @throws Refusal if the file is no table
     */
    public static HeaderMapping propose(Path file) throws IOException {
        List<String> headings = new ArrayList<>();
        NotebookTable.read(file, (place, row) -> {
            if (place.line() == 1) {
                headings.addAll(row.keySet());
            }
        });
        return propose(headings);
    }

    static HeaderMapping propose(List<String> headings) {
        Map<String, String> columns = new LinkedHashMap<>();
        Set<String> taken = new LinkedHashSet<>();
        headings.stream().filter(DeedReader.COLUMNS::contains).forEach(heading -> {
            columns.put(heading, heading);
            taken.add(heading);
        });
        for (int far = 0; far <= 2; far++) { // the same word first, then one that begins so, then one letter away
            for (String heading : headings) {
                if (!columns.containsKey(heading)) {
                    int how = far;
                    meant(heading, how).filter(taken::add).ifPresent(column -> columns.put(heading, column));
                }
            }
        }
        Map<String, String> inOrder = new LinkedHashMap<>();
        headings.forEach(heading -> inOrder.put(heading, columns.getOrDefault(heading, DeedReader.FREE + heading)));
        return new HeaderMapping(inOrder, "");
    }

    private static Optional<String> meant(String heading, int far) {
        String word = plain(heading);
        for (String column : DeedReader.COLUMNS) {
            List<String> met = new ArrayList<>(MET.getOrDefault(column, List.of()));
            met.add(plain(column));
            boolean fits = switch (far) {
                case 0 -> met.contains(word);
                case 1 -> met.stream().anyMatch(known -> known.length() > 3 && word.startsWith(known));
                default -> word.length() > 4 && met.stream().anyMatch(known -> known.length() > 4 && oneLetterAway(known, word));
            };
            if (fits) {
                return Optional.of(column);
            }
        }
        return Optional.empty();
    }

    private static String plain(String heading) {
        String german = heading.toLowerCase(Locale.ROOT).replace("ä", "ae").replace("ö", "oe").replace("ü", "ue").replace("ß", "ss");
        return Normalizer.normalize(german, Normalizer.Form.NFD).replaceAll("[^a-z0-9]", "");
    }

    /** Whether one letter put in, taken out or changed makes the one of the other. */
    static boolean oneLetterAway(String one, String two) {
        int same = 0;
        while (same < Math.min(one.length(), two.length()) && one.charAt(same) == two.charAt(same)) {
            same++;
        }
        String restOne = one.substring(same);
        String restTwo = two.substring(same);
        return switch (restOne.length() - restTwo.length()) {
            case 0 -> restOne.isEmpty() || restOne.substring(1).equals(restTwo.substring(1));
            case 1 -> restOne.substring(1).equals(restTwo);
            case -1 -> restTwo.substring(1).equals(restOne);
            default -> false;
        };
    }

    /** As it is typed again: {@code Datum=when,Stück=piece}. */
    public String text() {
        return columns.entrySet().stream().map(entry -> entry.getKey() + "=" + entry.getValue()).collect(Collectors.joining(","));
    }

    /** Whether all headings are the columns' own names. */
    public boolean isOwn() {
        return columns.entrySet().stream().allMatch(entry -> entry.getKey().equals(entry.getValue()));
    }

    public HeaderMapping withDates(String order) {
        return new HeaderMapping(columns, order);
    }

    /** @throws Refusal if two headings mean one column */
    List<String> columns(List<String> headings) {
        Map<String, String> by = new LinkedHashMap<>();
        for (String heading : headings) {
            String column = columns.getOrDefault(heading, heading);
            String other = by.put(column, heading);
            if (other != null) {
                throw new Refusal(heading, "means " + column + " as '" + other + "' does", "give one of them another meaning, or leave it out as x:" + heading);
            }
        }
        return List.copyOf(by.keySet());
    }

    /** A row in the columns' names, with the studio's words for kinds and its way to write dates. */
    Map<String, String> words(Map<String, String> row, String where) {
        Map<String, String> words = new LinkedHashMap<>();
        row.forEach((heading, word) -> words.put(columns.getOrDefault(heading, heading), word));
        if (columns.isEmpty()) {
            return words;
        }
        words.computeIfPresent("kind", (column, word) -> kind(word));
        words.computeIfPresent("when", (column, word) -> date(word, where));
        DeedReader.NUMBERS.forEach(column -> words.computeIfPresent(column, (name, word) -> word.matches("-?\\d+,\\d+") ? word.replace(',', '.') : word));
        words.computeIfPresent("humidity", (column, word) -> word.endsWith("%") ? share(word) : word);
        return words;
    }

    private static String share(String percent) {
        String number = percent.substring(0, percent.length() - 1).strip().replace(',', '.');
        return number.matches("\\d+(\\.\\d+)?") ? String.valueOf(Double.parseDouble(number) / 100) : percent;
    }

    private static String kind(String word) {
        String plain = word.toLowerCase(Locale.ROOT).strip();
        return KINDS.entrySet().stream().filter(entry -> entry.getKey().equals(plain) || entry.getValue().contains(plain)).map(Map.Entry::getKey).findFirst()
                .orElse(word);
    }

    /** {@code 14.03.2026} is day first; {@code 3/4/26} says nothing of its order by itself. */
    private String date(String word, String where) {
        String[] time = word.strip().split("[ T]+", 2);
        String[] parts = time[0].split("[./]");
        if (parts.length != 3 || !time[0].matches("\\d{1,2}[./]\\d{1,2}[./]\\d{2}(\\d{2})?")) {
            return word;
        }
        boolean dots = time[0].indexOf('.') > 0;
        if (!dots && dates.isEmpty()) {
            throw new Refusal(where, "its date '" + word + "' may be day or month first", "give --dates dmy or --dates mdy");
        }
        boolean dayFirst = dots || dates.equals("dmy");
        int year = Integer.parseInt(parts[2]);
        String day = String.format(Locale.ROOT, "%04d-%02d-%02d", year < 100 ? 2000 + year : year, Integer.parseInt(parts[dayFirst ? 1 : 0]),
                Integer.parseInt(parts[dayFirst ? 0 : 1]));
        return time.length < 2 ? day : day + "T" + (time[1].length() == 4 ? "0" + time[1] : time[1]);
    }
}
