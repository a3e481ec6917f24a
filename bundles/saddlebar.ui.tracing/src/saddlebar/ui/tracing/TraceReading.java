package saddlebar.ui.tracing;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import saddlebar.model.store.Attachment;
import saddlebar.model.store.RecordLine;
import saddlebar.model.work.Work;
import saddlebar.production.trace.ThenAndNow;
import saddlebar.production.trace.TraceRoom;
import saddlebar.trace.history.WorkHistory;
import saddlebar.trace.lineage.Deed;
import saddlebar.trace.lineage.Exposure;
import saddlebar.trace.lineage.Lineage;
import saddlebar.trace.lineage.Web;
import saddlebar.trace.suspect.Findings;
import saddlebar.trace.suspect.Level;
import saddlebar.trace.suspect.SuspectSearch;

/** Questions to the making record, off the screen's thread; each opens the records anew, for reading. */
final class TraceReading {
    private static final int MOST_STEPS = 200;
    private static final List<String> SHOWN = List.of("label", "stencil", "sheet", "screen", "mesh", "paint", "mix", "name", "pull", "firing", "shelf_place",
            "peak_c",
            "humidity", "defect", "severity", "lpi");

    private final Path folder;

    TraceReading(Path folder) {
        this.folder = folder;
    }

    /** What is always shown. */
    record Overview(List<Flaw> flaws, Findings findings) {
        static final Overview NONE = new Overview(List.of(), new Findings(0, 0, List.of(), List.of(), List.of()));
    }

    Overview overview(Work work) throws IOException {
        try (TraceRoom room = TraceRoom.open(folder, work)) {
            WorkHistory history = new WorkHistory(Optional.empty(), Optional.empty());
            List<Deed> defects = new ArrayList<>();
            for (int i = 0; i < room.sources().size(); i++) {
                int source = i;
                room.sources().get(i).index().forEach(record -> {
                    history.take(record);
                    if (record.kind().equals("defect")) {
                        defects.add(new Deed(source, record));
                    }
                });
            }
            List<Flaw> flaws = new ArrayList<>();
            for (Deed deed : defects) {
                work.checkpoint();
                flaws.add(flaw(room, deed));
            }
            flaws.sort(Comparator.comparing(Flaw::when).reversed());
            return new Overview(List.copyOf(flaws), SuspectSearch.withDefaults().among(history.units()));
        }
    }

    private static Flaw flaw(TraceRoom room, Deed deed) throws IOException {
        RecordLine line = room.line(deed);
        Map<String, Object> settings = line.settings();
        Optional<Path> photo = Optional.empty();
        boolean has = settings.get("photo") instanceof String name && !name.isEmpty();
        if (has && room.commissionOf(deed).isPresent()) {
            photo = room.commissionOf(deed).get().attachment(new Attachment((String) settings.get("photo"), String.valueOf(settings.get("photoSha256"))));
        }
        return new Flaw(deed.id(), line.time(), deed.place(), word(settings, "defect"), word(settings, "severity"), line.who(), word(settings, "window"),
                word(settings, "pieceId"), photo, has && photo.isEmpty(), number(settings.get("xMm")), number(settings.get("yMm")));
    }

    private static String word(Map<String, Object> settings, String name) {
        return settings.get(name) instanceof String word ? word : "";
    }

    private static double number(Object value) {
        return value instanceof Number number ? number.doubleValue() : Double.NaN;
    }

    Trail trail(String recordId, Work work) throws IOException {
        try (TraceRoom room = TraceRoom.open(folder, work)) {
            Lineage lineage = room.lineage();
            Optional<Deed> from = lineage.record(recordId);
            if (from.isEmpty()) {
                return Trail.NONE;
            }
            Web web = lineage.back(List.of(from.get()), MOST_STEPS);
            Map<Deed, Integer> at = new HashMap<>();
            List<Trail.Step> steps = new ArrayList<>();
            for (Deed deed : web.deeds()) {
                at.put(deed, steps.size());
                RecordLine line = room.line(deed);
                steps.add(new Trail.Step(deed.id(), line.time(), deed.kind(), deed.place(), with(line), line.who()));
            }
            List<int[]> links = web.strands().stream().map(strand -> new int[] {at.get(strand.later()), at.get(strand.earlier())}).toList();
            return new Trail(from.get().place(), steps, links, ThenAndNow.of(room, web).rows());
        }
    }

    private static String with(RecordLine line) {
        Map<String, String> words = new LinkedHashMap<>();
        for (String name : SHOWN) {
            Object value = line.settings().get(name);
            if (value instanceof String || value instanceof Number) {
                String text = value instanceof Double number && number == Math.rint(number) ? String.valueOf(number.longValue()) : value.toString();
                words.putIfAbsent(text, name.equals("label") || name.equals("name") || name.equals("defect") || name.equals("mix") || name.equals("screen")
                        || name.equals("firing") || name.equals("paint") || name.equals("shelf_place") || name.equals("severity")
                                ? text
                                : name.replace('_', ' ').replace(" c", "") + " " + text);
            }
        }
        return String.join(", ", words.values());
    }

    Met met(String recordId, String title, Work work) throws IOException {
        try (TraceRoom room = TraceRoom.open(folder, work)) {
            Lineage lineage = room.lineage();
            return new Met(title, lineage.record(recordId).map(deed -> new Exposure(lineage).of(List.of(deed))).orElse(List.of()));
        }
    }

    Met met(Level level, Work work) throws IOException {
        try (TraceRoom room = TraceRoom.open(folder, work)) {
            return new Met(level.toString(), new Exposure(room.lineage()).ofLevel(level.factor(), level.name()));
        }
    }
}
