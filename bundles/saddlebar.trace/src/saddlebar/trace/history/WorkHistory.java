package saddlebar.trace.history;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import saddlebar.model.index.IndexedRecord;
import saddlebar.model.index.Mention;
import saddlebar.model.store.RecordLine;
import saddlebar.trace.suspect.WorkUnit;

/**
 * Gathers what was done to each layer of each piece into units. A {@code pull} begins a unit; the {@code fire} records after it for the same window,
 * piece and layer, up to the next {@code pull} there, belong to it and bring their factors. {@code fire} records without a pull before them are a unit
 * too. A unit is good unless a later {@code defect} names the same three; a defect without a layer speaks of every layer of its piece. Records that a
 * later one supersedes do not count. Records are taken in the order of their time, equal times in the order of the files.
 *
 * <p>Where {@code fuse} records tell when a screen was loaded, each pull on it also has {@code mesh_age}: how many loads that frame had seen before.
 */
public final class WorkHistory {
    /** Words of a record that may have something to do with a flaw: the columns of an old notebook. */
    public static final List<String> FACTORS = List.of("who", "stencil", "sheet", "screen", "mesh", "paint", "lot", "mix", "medium", "pull", "firing",
            "schedule",
            "shelf_place");
    /** Numbers taken on the way. */
    public static final List<String> MEASURES = List.of("peak_c", "humidity", "pull", "heat_work", "temperature_c");
    private static final Set<String> WORDS = new HashSet<>(FACTORS);
    private static final Set<String> KINDS = Set.of("pull", "fire", "defect", "fuse");

    static {
        WORDS.addAll(List.of("window", "piece", "layer", "defect"));
    }

    private final Optional<String> kind;
    private final Optional<String> window;
    private final List<Entry> entries = new ArrayList<>();
    private final Set<String> superseded = new HashSet<>();
    private final Map<String, String> shared = new HashMap<>();

    /**
     * @param kind   only defects of this kind count as flaws; all if empty
     * @param window only work on this window; all if empty
     */
    public WorkHistory(Optional<String> kind, Optional<String> window) {
        this.kind = kind;
        this.window = window;
    }

    /** What is kept of a record until the units are asked for. */
    private record Entry(String id, Instant time, String kind, Map<String, String> words, Map<String, Double> measures) {
        String word(String name) {
            return words.getOrDefault(name, "");
        }
    }

    /** Takes one line; lines of other kinds are passed over. */
    public void take(RecordLine line) {
        superseded.addAll(line.supersedes());
        if (KINDS.contains(line.kind())) {
            Map<String, String> words = new HashMap<>();
            Map<String, Double> measures = new HashMap<>();
            WORDS.forEach(name -> put(words, name, name.equals("who") ? line.who() : word(line.settings().get(name))));
            MEASURES.forEach(name -> {
                if (line.settings().get(name) instanceof Number number && Double.isFinite(number.doubleValue())) {
                    measures.put(name, number.doubleValue());
                }
            });
            entries.add(new Entry(line.id(), line.time(), line.kind(), words, measures));
        }
    }

    /** Takes what an index keeps of a record; the index has passed over superseded ones. */
    public void take(IndexedRecord record) {
        if (KINDS.contains(record.kind())) {
            Map<String, String> words = new HashMap<>();
            for (Mention mention : record.mentions()) {
                int end = mention.thing().indexOf('=');
                String name = shared.computeIfAbsent(mention.thing().substring(0, end), same -> same);
                if (WORDS.contains(name)) {
                    words.put(name, shared.computeIfAbsent(mention.thing().substring(end + 1), same -> same));
                }
            }
            entries.add(new Entry(record.id(), record.time(), record.kind(), words, record.measures()));
        }
    }

    private void put(Map<String, String> words, String name, String word) {
        if (!word.isEmpty()) {
            words.put(name, shared.computeIfAbsent(word, same -> same));
        }
    }

    /** One layer on one piece: {@code W01/12/matt}. */
    private record Place(String window, String piece, String layer) {
        static Place of(Entry entry) {
            return new Place(entry.word("window"), entry.word("piece"), entry.word("layer"));
        }

        Place wholePiece() {
            return new Place(window, piece, "");
        }

        @Override
        public String toString() {
            return window + "/" + piece + (layer.isEmpty() ? "" : "/" + layer);
        }
    }

    private static final class Draft {
        private final Place place;
        private final int time;
        private boolean bad;
        private final Map<String, String> factors = new LinkedHashMap<>();
        private final Map<String, Double> measures = new LinkedHashMap<>();

        Draft(Place place, int time) {
            this.place = place;
            this.time = time;
        }

        void add(Entry entry, String day) {
            for (String factor : FACTORS) {
                String level = entry.word(factor);
                if (!level.isEmpty()) {
                    // the person of the pull is not overwritten by the one who filled the kiln
                    factors.putIfAbsent(entry.kind().equals("fire") && factor.equals("who") ? "fired_by" : factor, level);
                }
            }
            factors.putIfAbsent(entry.kind().equals("fire") ? "fired_on" : "when", day);
            for (String measure : MEASURES) {
                Double value = entry.measures().get(measure);
                if (value != null) {
                    measures.putIfAbsent(measure, value);
                }
            }
        }
    }

    /** The units in the order in which they were begun; names are {@code window/piece/layer}, with {@code #2} for the second time and so on. */
    public List<WorkUnit> units() {
        List<Entry> inOrder = entries.stream().filter(entry -> !superseded.contains(entry.id()))
                .filter(entry -> window.isEmpty() || entry.kind().equals("fuse") || window.get().equals(entry.word("window")))
                .sorted(Comparator.comparing(Entry::time)).toList();
        List<Draft> drafts = new ArrayList<>();
        Map<Place, Draft> current = new HashMap<>();
        Map<Place, List<Draft>> ofPiece = new HashMap<>();
        Map<String, Integer> loads = new HashMap<>();
        for (Entry entry : inOrder) {
            Place place = Place.of(entry);
            switch (entry.kind()) {
                case "fuse" :
                    loads.merge(entry.word("screen"), 1, Integer::sum);
                    break;
                case "defect" :
                    flaw(entry, place, current, ofPiece);
                    break;
                default :
                    Draft draft = current.get(place);
                    if (draft == null || entry.kind().equals("pull")) {
                        draft = new Draft(place, draft == null ? 1 : draft.time + 1);
                        Draft before = current.put(place, draft);
                        drafts.add(draft);
                        List<Draft> layers = ofPiece.computeIfAbsent(place.wholePiece(), any -> new ArrayList<>(2));
                        layers.remove(before);
                        layers.add(draft);
                    }
                    draft.add(entry, day(entry.time()));
                    Integer load = loads.get(entry.word("screen"));
                    if (entry.kind().equals("pull") && load != null) {
                        draft.measures.putIfAbsent("mesh_age", load - 1.0);
                    }
                    break;
            }
        }
        return drafts.stream().map(draft -> new WorkUnit(draft.place + (draft.time > 1 ? "#" + draft.time : ""), draft.bad, draft.factors, draft.measures))
                .toList();
    }

    private void flaw(Entry defect, Place place, Map<Place, Draft> current, Map<Place, List<Draft>> ofPiece) {
        if (kind.isPresent() && !kind.get().equalsIgnoreCase(defect.word("defect"))) {
            return;
        }
        if (place.layer().isEmpty()) {
            ofPiece.getOrDefault(place, List.of()).forEach(draft -> draft.bad = true);
        } else if (current.containsKey(place)) {
            current.get(place).bad = true;
        }
    }

    private String day(Instant time) {
        return shared.computeIfAbsent(LocalDate.ofInstant(time, ZoneOffset.UTC).toString(), same -> same);
    }

    private static String word(Object value) {
        if (value instanceof Double number && number == Math.rint(number) && Math.abs(number) < 1e15) {
            return String.format(Locale.ROOT, "%.0f", number);
        }
        return value == null ? "" : value.toString().strip();
    }
}
