package saddlebar.production.kiln;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import saddlebar.kiln.schedule.Schedule;
import saddlebar.kiln.schedule.Segment;
import saddlebar.model.store.RecordLine;

/** Gathers the lines of one firing, and turns firings into the settings of a line. What a later line tells counts. */
final class FiringGather {
    private static final String FIRING = "firing";
    private static final String PIECE = "piece";
    private static final String WINDOW = "window";
    private static final String PIECE_ID = "pieceId";
    private static final String PLACE = "place";
    private static final String LAYERS = "layers";

    private final String name;
    private Instant when = Instant.MAX;
    private String kilnId = "";
    private String schedule = "";
    private Optional<Schedule> asRun = Optional.empty();
    private final List<FiredPiece> pieces = new ArrayList<>();
    private final List<FiredPiece> load = new ArrayList<>();
    private Optional<String> log = Optional.empty();
    private Optional<Double> peak = Optional.empty();
    private Optional<Double> kWh = Optional.empty();
    private final List<RecordedFiring.Witness> witnesses = new ArrayList<>();
    private Optional<String> head = Optional.empty();
    private String note = "";

    FiringGather(String name) {
        this.name = name;
    }

    static String name(RecordLine line) {
        String named = text(line.settings(), FiringBook.NAME);
        String word = text(line.settings(), FIRING);
        return !named.isEmpty() ? named : !word.isEmpty() ? word : line.id();
    }

    void take(RecordLine line) {
        Map<String, Object> settings = line.settings();
        when = line.time().isBefore(when) ? line.time() : when;
        kilnId = settings.containsKey(FiringBook.KILN) ? text(settings, FiringBook.KILN) : kilnId;
        schedule = settings.containsKey(FiringBook.SCHEDULE) ? text(settings, FiringBook.SCHEDULE) : schedule;
        peak = number(settings, FiringBook.PEAK).or(() -> number(settings, "peak_c")).or(() -> peak);
        kWh = number(settings, FiringBook.ENERGY).or(() -> kWh);
        if (!text(settings, WINDOW).isEmpty() && !text(settings, PIECE).isEmpty()) {
            String layer = text(settings, "layer");
            pieces.add(new FiredPiece(text(settings, WINDOW), text(settings, PIECE), text(settings, PIECE_ID), layer.isEmpty() ? List.of() : List.of(layer),
                    text(settings, "shelf_place"), Optional.empty(), Optional.empty()));
            return;
        }
        head = Optional.of(line.id());
        note = line.note();
        log = Optional.of(text(settings, FiringBook.CURVE)).filter(file -> !file.isEmpty()).or(() -> log);
        asRun = schedule(settings).or(() -> asRun);
        maps(settings, FiringBook.LOAD).forEach(map -> load.add(lying(map)));
        maps(settings, FiringBook.WITNESSES).forEach(map -> number(map, "shownC").ifPresent(shown -> witnesses.add(new RecordedFiring.Witness(
                text(map, PLACE), shown))));
    }

    RecordedFiring firing() {
        List<FiredPiece> all = new ArrayList<>(pieces);
        load.stream().filter(lies -> pieces.stream().noneMatch(row -> row.label().equals(lies.label()) && (lies.layers().isEmpty()
                || row.layers().containsAll(lies.layers())))).forEach(all::add);
        return new RecordedFiring(name, when, kilnId, schedule, asRun, all, log, peak, kWh, witnesses, head, note);
    }

    private Optional<Schedule> schedule(Map<String, Object> settings) {
        List<Segment> segments = new ArrayList<>();
        for (Map<String, Object> map : maps(settings, FiringBook.SEGMENTS)) {
            Optional<Double> target = number(map, "targetC");
            if (target.isEmpty()) {
                return Optional.empty();
            }
            try {
                segments.add(new Segment(text(map, FiringBook.NAME), number(map, "rateKPerH").orElse(0.0), target.get(), number(map, "soakMin").orElse(0.0)));
            } catch (IllegalArgumentException outOfRange) { // a record of another program; it is told without its schedule
                return Optional.empty();
            }
        }
        return segments.isEmpty() ? Optional.empty() : Optional.of(new Schedule(schedule.isEmpty() ? name : schedule, segments));
    }

    private static FiredPiece lying(Map<String, Object> map) {
        List<String> layers = map.get(LAYERS) instanceof List<?> list
                ? list.stream().filter(String.class::isInstance).map(String.class::cast).toList()
                : List.of();
        return new FiredPiece(text(map, WINDOW), text(map, PIECE), text(map, PIECE_ID), layers, text(map, PLACE), number(map, "xMm"), number(map, "yMm"));
    }

    static Map<String, Object> lying(FiredPiece piece) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put(WINDOW, piece.window());
        map.put(PIECE, piece.piece());
        map.put(PIECE_ID, piece.pieceId());
        map.put(LAYERS, piece.layers());
        map.put(PLACE, piece.place());
        piece.xMm().ifPresent(x -> map.put("xMm", x));
        piece.yMm().ifPresent(y -> map.put("yMm", y));
        return map;
    }

    static Map<String, Object> shown(RecordedFiring.Witness witness) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put(PLACE, witness.place());
        map.put("shownC", witness.shownC());
        return map;
    }

    static List<Map<String, Object>> segments(Schedule schedule) {
        return schedule.segments().stream().map(segment -> {
            Map<String, Object> map = new LinkedHashMap<>();
            map.put(FiringBook.NAME, segment.name());
            map.put("rateKPerH", segment.rateKPerH());
            map.put("targetC", segment.targetC());
            map.put("soakMin", segment.soakMin());
            return map;
        }).toList();
    }

    /** Everything that is known of a firing as a whole, to be added to. Rows of single pieces stay rows. */
    static Map<String, Object> settings(RecordedFiring firing) {
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put(FiringBook.NAME, firing.name());
        if (!firing.kilnId().isEmpty()) {
            settings.put(FiringBook.KILN, firing.kilnId());
        }
        if (!firing.scheduleName().isEmpty()) {
            settings.put(FiringBook.SCHEDULE, firing.scheduleName());
        }
        firing.asRun().ifPresent(schedule -> settings.put(FiringBook.SEGMENTS, segments(schedule)));
        settings.put(FiringBook.LOAD, firing.pieces().stream().map(FiringGather::lying).toList());
        firing.logFile().ifPresent(file -> settings.put(FiringBook.CURVE, file));
        firing.peakC().ifPresent(degC -> settings.put(FiringBook.PEAK, degC));
        firing.kWh().ifPresent(kWh -> settings.put(FiringBook.ENERGY, kWh));
        if (!firing.witnesses().isEmpty()) {
            settings.put(FiringBook.WITNESSES, firing.witnesses().stream().map(FiringGather::shown).toList());
        }
        return settings;
    }

    private static String text(Map<String, Object> map, String key) {
        Object value = map.get(key);
        return value instanceof String text ? text : value instanceof Number number ? number.toString() : "";
    }

    private static Optional<Double> number(Map<String, Object> map, String key) {
        return map.get(key) instanceof Number number && Double.isFinite(number.doubleValue()) ? Optional.of(number.doubleValue()) : Optional.empty();
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> maps(Map<String, Object> map, String key) {
        return map.get(key) instanceof List<?> list ? list.stream().filter(Map.class::isInstance).map(one -> (Map<String, Object>) one).toList() : List.of();
    }
}
