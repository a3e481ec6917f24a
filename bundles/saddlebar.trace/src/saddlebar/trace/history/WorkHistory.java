package saddlebar.trace.history;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import saddlebar.model.store.RecordLine;
import saddlebar.trace.suspect.WorkUnit;

/**
 * Gathers what was done to each layer of each piece into units. A {@code pull} begins a unit; the {@code fire} records after it for the same window,
 * piece and layer, up to the next {@code pull} there, belong to it and bring their factors. {@code fire} records without a pull before them are a unit
 * too. A unit is good unless a later {@code defect} names the same three; a defect without a layer speaks of every layer of its piece. Records that a
 * later one supersedes do not count. Records are taken in the order of their time, equal times in the order of the files.
 */
public final class WorkHistory {
    /** Words of a record that may have something to do with a flaw: the columns of an old notebook. */
    public static final List<String> FACTORS = List.of("who", "stencil", "sheet", "screen", "mesh", "paint", "lot", "mix", "medium", "pull", "firing",
            "schedule",
            "shelf_place");
    /** Numbers taken on the way. */
    public static final List<String> MEASURES = List.of("peak_c", "humidity", "pull");

    private final Optional<String> kind;
    private final Optional<String> window;
    private final List<RecordLine> lines = new ArrayList<>();
    private final Set<String> superseded = new HashSet<>();

    /**
     * @param kind   only defects of this kind count as flaws; all if empty
     * @param window only work on this window; all if empty
     */
    public WorkHistory(Optional<String> kind, Optional<String> window) {
        this.kind = kind;
        this.window = window;
    }

    /** Takes one line; lines of other kinds are passed over. */
    public void take(RecordLine line) {
        superseded.addAll(line.supersedes());
        if (line.kind().equals("pull") || line.kind().equals("fire") || line.kind().equals("defect")) {
            lines.add(line);
        }
    }

    /** One layer on one piece: {@code W01/12/matt}. */
    private record Place(String window, String piece, String layer) {
        static Place of(RecordLine line) {
            return new Place(word(line, "window"), word(line, "piece"), word(line, "layer"));
        }

        boolean sameLayer(Place other) {
            return window.equals(other.window) && piece.equals(other.piece) && (other.layer.isEmpty() || layer.equals(other.layer));
        }

        @Override
        public String toString() {
            return window + "/" + piece + (layer.isEmpty() ? "" : "/" + layer);
        }
    }

    private static final class Draft {
        private final Place place;
        private boolean bad;
        private final Map<String, String> factors = new LinkedHashMap<>();
        private final Map<String, Double> measures = new LinkedHashMap<>();

        Draft(Place place) {
            this.place = place;
        }

        void add(RecordLine line) {
            for (String factor : FACTORS) {
                String level = factor.equals("who") ? line.who() : word(line, factor);
                if (!level.isEmpty()) {
                    // the person of the pull is not overwritten by the one who filled the kiln
                    factors.putIfAbsent(line.kind().equals("fire") && factor.equals("who") ? "fired_by" : factor, level);
                }
            }
            String day = LocalDate.ofInstant(line.time(), ZoneOffset.UTC).toString();
            factors.putIfAbsent(line.kind().equals("fire") ? "fired_on" : "when", day);
            for (String measure : MEASURES) {
                if (line.settings().get(measure) instanceof Number number && Double.isFinite(number.doubleValue())) {
                    measures.putIfAbsent(measure, number.doubleValue());
                }
            }
        }
    }

    /** The units in the order in which they were begun; names are {@code window/piece/layer}, with {@code #2} for the second time and so on. */
    public List<WorkUnit> units() {
        List<RecordLine> inOrder = lines.stream().filter(line -> !superseded.contains(line.id()))
                .filter(line -> window.isEmpty() || window.get().equals(word(line, "window"))).sorted(Comparator.comparing(RecordLine::time)).toList();
        List<Draft> drafts = new ArrayList<>();
        Map<Place, Draft> current = new LinkedHashMap<>();
        Map<String, List<Draft>> ofPiece = new LinkedHashMap<>();
        for (RecordLine line : inOrder) {
            Place place = Place.of(line);
            if (line.kind().equals("defect")) {
                if (kind.isEmpty() || kind.get().equalsIgnoreCase(word(line, "defect"))) {
                    current.values().stream().filter(draft -> draft.place.sameLayer(place)).forEach(draft -> draft.bad = true);
                }
                continue;
            }
            Draft draft = current.get(place);
            if (draft == null || line.kind().equals("pull")) {
                draft = new Draft(place);
                current.put(place, draft);
                drafts.add(draft);
                ofPiece.computeIfAbsent(place.toString(), name -> new ArrayList<>()).add(draft);
            }
            draft.add(line);
        }
        List<WorkUnit> units = new ArrayList<>();
        for (Draft draft : drafts) {
            int time = ofPiece.get(draft.place.toString()).indexOf(draft) + 1;
            units.add(new WorkUnit(draft.place + (time > 1 ? "#" + time : ""), draft.bad, draft.factors, draft.measures));
        }
        return units;
    }

    private static String word(RecordLine line, String name) {
        Object value = line.settings().get(name);
        if (value instanceof Double number && number == Math.rint(number) && Math.abs(number) < 1e15) {
            return String.format(Locale.ROOT, "%.0f", number);
        }
        return value == null ? "" : value.toString().strip();
    }
}
