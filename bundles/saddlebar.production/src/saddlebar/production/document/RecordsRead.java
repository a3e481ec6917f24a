package saddlebar.production.document;

import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import saddlebar.model.commission.Window;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.RecordBook;
import saddlebar.model.store.RecordLine;
import saddlebar.model.store.RecordReading;
import saddlebar.production.check.CommissionStatus;
import saddlebar.report.document.ReportMatter.Deed;
import saddlebar.report.document.ReportMatter.DefectFound;
import saddlebar.report.document.ReportMatter.WindowState;

/** What the records of a commission and its studio say, corrected ones left out, in the order of time. */
record RecordsRead(List<RecordLine> lines) {
    private static final int MOST_EXPOSED = 60;

    static RecordsRead of(CommissionFolder folder) throws IOException {
        List<RecordLine> all = new ArrayList<>(read(folder.studioFolder().records()));
        all.addAll(read(folder.records()));
        Set<String> superseded = new HashSet<>();
        all.forEach(line -> superseded.addAll(line.supersedes()));
        all.removeIf(line -> superseded.contains(line.id()));
        all.sort(Comparator.comparing(RecordLine::time));
        return new RecordsRead(List.copyOf(all));
    }

    private static List<RecordLine> read(RecordBook book) throws IOException {
        try (RecordReading reading = book.read()) {
            return reading.toList();
        }
    }

    static LocalDate day(RecordLine line) {
        return line.time().atZone(ZoneOffset.UTC).toLocalDate();
    }

    static String word(RecordLine line, String key) {
        Object value = line.settings().get(key);
        return value == null || value instanceof List || value instanceof Map ? "" : String.valueOf(value);
    }

    List<Deed> deeds() {
        List<Deed> deeds = new ArrayList<>();
        for (RecordLine line : lines) {
            if (line.kind().equals("stencil") || line.kind().equals("cost") || line.kind().equals("document")) {
                continue;
            }
            Map<String, String> words = new LinkedHashMap<>();
            line.settings().keySet().forEach(key -> words.put(key, word(line, key)));
            deeds.add(new Deed(day(line), line.kind(), line.who(), words, line.note()));
        }
        return deeds;
    }

    List<WindowState> states(CommissionFolder folder, List<Window> windows) throws IOException {
        List<WindowState> states = new ArrayList<>();
        for (CommissionStatus.WindowStatus window : CommissionStatus.of(folder).windows()) {
            if (windows.stream().anyMatch(wanted -> window.name().equals(wanted.getName()))) {
                Map<String, Integer> counts = new LinkedHashMap<>();
                window.pieces().forEach(piece -> counts.merge(piece.state(), 1, Integer::sum));
                states.add(new WindowState((window.name() + "  " + window.title()).strip(), window.state(), counts));
            }
        }
        return states;
    }

    /** Defects of the windows with the last print and firing of that piece and layer before them, and who else shared mix or firing. */
    List<DefectFound> defects(List<Window> windows) {
        List<DefectFound> found = new ArrayList<>();
        for (RecordLine defect : lines) {
            if (!defect.kind().equals("defect") || windows.stream().noneMatch(window -> word(defect, "window").equals(window.getName()))) {
                continue;
            }
            List<List<String>> way = new ArrayList<>();
            Set<String> exposed = new TreeSet<>();
            for (String kind : List.of("pull", "fire")) {
                lines.stream().filter(line -> line.kind().equals(kind) && samePiece(line, defect) && !line.time().isAfter(defect.time())).reduce((a, b) -> b)
                        .ifPresent(last -> {
                            way.add(List.of(kind,
                                    kind.equals("pull") ? joined(last, "screen", "stencil", "sheet") : joined(last, "firing", "schedule", "shelf_place"),
                                    day(last).toString()));
                            String key = kind.equals("pull") ? "mix" : "firing";
                            if (kind.equals("pull") && !word(last, "mix").isEmpty()) {
                                way.add(List.of("mix", joined(last, "mix", "paint", "lot"), day(last).toString()));
                            }
                            lines.stream()
                                    .filter(line -> !word(last, key).isEmpty() && line.kind().equals(kind) && word(line, key).equals(word(last, key))
                                            && !samePiece(line, defect))
                                    .forEach(line -> exposed.add(word(line, "window") + "/" + word(line, "piece")));
                        });
            }
            found.add(new DefectFound(word(defect, "window") + "/" + word(defect, "piece"), word(defect, "layer"),
                    word(defect, "defectKind").isEmpty() ? word(defect, "defect") : word(defect, "defectKind"),
                    word(defect, "severity"), day(defect), defect.who(), defect.note(),
                    word(defect, "disposition").isEmpty() ? "open" : word(defect, "disposition"), way,
                    exposed.stream().limit(MOST_EXPOSED).toList()));
        }
        return found;
    }

    private static boolean samePiece(RecordLine one, RecordLine other) {
        return word(one, "window").equals(word(other, "window")) && word(one, "piece").equals(word(other, "piece"))
                && word(one, "layer").equals(word(other, "layer"));
    }

    private static String joined(RecordLine line, String... keys) {
        List<String> words = new ArrayList<>();
        for (String key : keys) {
            if (!word(line, key).isEmpty()) {
                words.add(word(line, key));
            }
        }
        return words.isEmpty() ? "\u2013" : String.join(", ", words);
    }
}
