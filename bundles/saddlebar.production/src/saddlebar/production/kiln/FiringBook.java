package saddlebar.production.kiln;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import saddlebar.kiln.log.FiringLog;
import saddlebar.kiln.log.LogReader;
import saddlebar.kiln.schedule.Schedule;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.BroughtArtwork;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.RecordBook;
import saddlebar.model.store.RecordDraft;
import saddlebar.model.store.RecordKind;
import saddlebar.model.store.RecordLine;
import saddlebar.model.store.RecordReading;

/**
 * The firings of a studio in its records and in those of the commission: a notebook's row for each piece, and one line for the firing as a whole with
 * schedule, kiln, log and witnesses. Nothing is ever changed: what is added later is a new line for the whole, in place of the one before it.
 */
public final class FiringBook {
    static final String NAME = "name";
    static final String KILN = "kilnId";
    static final String SEGMENTS = "segments";
    static final String LOAD = "load";
    static final String CURVE = "curveFile";
    static final String CURVE_SHA = "curveSha256";
    static final String PEAK = "peakC";
    static final String ENERGY = "energyKwh";
    static final String WITNESSES = "witnesses";
    static final String SCHEDULE = "schedule";

    private final CommissionFolder folder;

    public FiringBook(CommissionFolder folder) {
        this.folder = folder;
    }

    /** @param firings earliest first */
    public record Read(List<RecordedFiring> firings, List<Problem> problems) {
        public Read {
            firings = List.copyOf(firings);
            problems = List.copyOf(problems);
        }

        public Optional<RecordedFiring> named(String name) {
            return firings.stream().filter(firing -> firing.name().equalsIgnoreCase(name.strip())).findFirst();
        }
    }

    public Read read() throws IOException {
        List<Problem> problems = new ArrayList<>();
        List<RecordLine> lines = new ArrayList<>(lines(folder.studioFolder().records(), problems));
        lines.addAll(lines(folder.records(), problems));
        Set<String> corrected = new HashSet<>();
        lines.forEach(line -> corrected.addAll(line.supersedes()));
        Map<String, FiringGather> byName = new LinkedHashMap<>();
        Stream<RecordLine> kept = lines.stream().filter(line -> line.kind().equals(RecordKind.FIRE.key()) && !corrected.contains(line.id()))
                .sorted(Comparator.comparing(RecordLine::time).thenComparing(RecordLine::id));
        kept.forEach(line -> byName.computeIfAbsent(FiringGather.name(line), FiringGather::new).take(line));
        List<RecordedFiring> firings = byName.values().stream().map(FiringGather::firing)
                .sorted(Comparator.comparing(RecordedFiring::when).thenComparing(RecordedFiring::name)).toList();
        return new Read(firings, problems);
    }

    private static List<RecordLine> lines(RecordBook book, List<Problem> problems) throws IOException {
        try (RecordReading reading = book.read()) {
            List<RecordLine> lines = reading.toList();
            problems.addAll(reading.problems());
            return lines;
        }
    }

    /**
     * The log that lies with a firing.
     *
     * @param elementsW power of the kiln's elements, for logs that tell only their duty; NaN if not known
     * @throws Refusal if it cannot be read
     */
    public Optional<FiringLog> log(RecordedFiring firing, double elementsW) throws IOException {
        if (firing.logFile().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(LogReader.read(folder.studioFolder().resolve(firing.logFile().get()), elementsW));
    }

    /**
     * Enters a firing that was run.
     *
     * @param kiln   which
     * @param asRun  the schedule of that day, in full
     * @param pieces what lay in it
     * @return its name, the next number of the studio
     */
    public String enter(saddlebar.model.commission.Kiln kiln, Schedule asRun, List<FiredPiece> pieces) throws IOException {
        int highest = read().firings().stream().map(RecordedFiring::name).filter(name -> name.matches("F\\d{1,6}")).mapToInt(name -> Integer.parseInt(
                name.substring(1))).max().orElse(0);
        String name = String.format(Locale.ROOT, "F%03d", highest + 1);
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put(NAME, name);
        settings.put(KILN, kiln.getId());
        settings.put(SCHEDULE, asRun.name());
        settings.put(SEGMENTS, FiringGather.segments(asRun));
        settings.put(LOAD, pieces.stream().map(FiringGather::lying).toList());
        List<String> used = pieces.stream().map(FiredPiece::pieceId).filter(id -> !id.isEmpty()).distinct().toList();
        folder.studioFolder().records().append(RecordDraft.of(RecordKind.FIRE).using(used).with(settings));
        return name;
    }

    /**
     * Lays a logger's file beside a firing: it is read first, and refused if it is no log; then copied, and entered with its peak and, if the log tells it, its
     * energy.
     */
    public FiringLog attach(RecordedFiring firing, Path csv, double elementsW) throws IOException {
        FiringLog log = LogReader.read(csv, elementsW);
        BroughtArtwork copy = folder.studioFolder().keepLog(csv);
        Map<String, Object> settings = FiringGather.settings(firing);
        settings.put(CURVE, copy.file());
        settings.put(CURVE_SHA, copy.sha256());
        settings.put(PEAK, Math.rint(log.curve().peakC() * 10) / 10);
        log.measuredKWh().ifPresent(kWh -> settings.put(ENERGY, Math.rint(kWh * 1000) / 1000));
        append(firing, settings);
        return log;
    }

    /** Enters what a witness at a place showed. */
    public void witness(RecordedFiring firing, String place, double shownC) throws IOException {
        if (place.isBlank() || !(shownC >= 0 && shownC <= 1400)) {
            throw new Refusal(firing.name(), "a witness at '" + place + "' showed " + shownC, "name the place, and a temperature from 0 to 1400 degC");
        }
        List<RecordedFiring.Witness> all = new ArrayList<>(firing.witnesses());
        all.add(new RecordedFiring.Witness(place.strip(), shownC));
        Map<String, Object> settings = FiringGather.settings(firing);
        settings.put(WITNESSES, all.stream().map(FiringGather::shown).toList());
        append(firing, settings);
    }

    /** Enters what the kiln's meter counted. */
    public void energy(RecordedFiring firing, double kWh) throws IOException {
        if (!(kWh > 0 && kWh <= 10_000)) {
            throw new Refusal(firing.name(), "its meter counted " + kWh + " kWh", "put in more than 0, up to 10000 kWh");
        }
        Map<String, Object> settings = FiringGather.settings(firing);
        settings.put(ENERGY, kWh);
        append(firing, settings);
    }

    private void append(RecordedFiring firing, Map<String, Object> settings) throws IOException {
        RecordDraft draft = RecordDraft.of(RecordKind.FIRE).at(firing.when()).with(settings).noting(firing.note())
                .using(firing.pieces().stream().map(FiredPiece::pieceId).filter(id -> !id.isEmpty()).distinct().toList())
                .superseding(firing.headId().map(List::of).orElse(List.of()));
        folder.studioFolder().records().append(draft);
    }
}
