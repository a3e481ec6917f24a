package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import saddlebar.artwork.ArtworkReaders;
import saddlebar.model.problem.LockedException;
import saddlebar.model.store.Json;
import saddlebar.model.store.RecordLine;
import saddlebar.model.work.Work;
import saddlebar.production.trace.ArtworkOfDay;
import saddlebar.production.trace.SettingRow;
import saddlebar.production.trace.ThenAndNow;
import saddlebar.production.trace.ThenAndNow.ChangedArtwork;
import saddlebar.production.trace.TraceRoom;
import saddlebar.production.trace.TraceTarget;
import saddlebar.trace.lineage.Deed;
import saddlebar.trace.lineage.Web;
import saddlebar.trace.prov.ProvWriter;

/** The way back. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "trace", sortOptions = false,
        description = "The way back from a defect or a piece: firings, pull, mix, screen, sheet, stencil and drawing that made it, and what of their settings"
                + " is otherwise today. --json answers in PROV-JSON.",
        footer = {"", "Example: saddlebar trace my-panel W01/12/matt", "Example: saddlebar trace my-panel W01/12 --difference changed.png"})
public final class TraceCommand implements BenchCommand {
    private static final int MOST = 2_000;
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
    /** Settings that a line of the answer shows, in this order; the rest is in the JSON. */
    private static final List<String> SHOWN = List.of("stencil", "label", "sheet", "screen", "mesh", "paint", "lot", "mix", "name", "medium", "pull", "firing",
            "schedule", "shelf_place", "peak_c", "heat_work", "humidity", "defect", "severity", "disposition", "method", "lpi", "angleDeg", "dpi",
            "artworkFile",
            "photo");

    private final ArtworkReaders readers;

    @Parameters(index = "0", paramLabel = "C-or-STUDIO", description = "Folder of the commission, or of a studio: then of all who joined it.")
    private Path folder;

    @Parameters(index = "1", paramLabel = "DEFECT-or-PIECE", description = "Id of a record, a piece such as W01/12, or a layer on it such as W01/12/matt.")
    private String target;

    @Option(names = "--difference", paramLabel = "FILE.png", description = "Draw what was changed in the drawing since.")
    private Path difference;

    @Option(names = "--replace", description = "The file of --difference may be there already.")
    private boolean replace;

    @Mixin
    private CommonOptions common;

    @Activate
    public TraceCommand(@Reference ArtworkReaders readers) {
        this.readers = readers;
    }

    @Override
    public Integer call() throws IOException {
        if (difference != null && !replace && Files.exists(difference)) {
            throw new LockedException(difference + " exists already; nothing was changed. Name another file, or give --replace.");
        }
        Work work = common.work(1);
        try (TraceRoom room = TraceRoom.open(folder, work)) {
            common.tell(room.problems());
            var lineage = room.lineage();
            TraceTarget from = TraceTarget.of(lineage, target);
            Web web = lineage.back(from.deeds(), MOST);
            ThenAndNow compared = ThenAndNow.of(room, web);
            List<String> drawn = new ArrayList<>();
            if (difference != null) {
                drawn.add(draw(compared, work));
            }
            common.answer(common.json() ? document(room, web, compared) : null, common.json() ? List.of() : words(room, web, compared, drawn));
            return room.problems().isEmpty() ? DONE : ATTENTION;
        }
    }

    private String draw(ThenAndNow compared, Work work) throws IOException {
        if (compared.artworks().isEmpty()) {
            return "No drawing was changed since, so no picture was made.";
        }
        ChangedArtwork changed = compared.artworks().get(0);
        new ArtworkOfDay(readers).write(changed, difference, work);
        return difference + " shows the drawing of " + changed.subject() + ": gray is in both, vermilion only then, blue only now.";
    }

    /** PROV-JSON; what is otherwise today is an entity of its own, so that the document stays one of PROV. */
    private static Object document(TraceRoom room, Web web, ThenAndNow compared) throws IOException {
        ProvWriter prov = new ProvWriter(true);
        for (Deed deed : web.deeds()) {
            prov.take(room.line(deed));
        }
        prov.take(web);
        Map<String, Object> document = prov.document();
        @SuppressWarnings("unchecked")
        Map<String, Object> entities = (Map<String, Object>) document.get("entity");
        List<Map<String, Object>> rows = new ArrayList<>();
        for (SettingRow row : compared.rows()) {
            Map<String, Object> map = new LinkedHashMap<>();
            map.put("subject", row.subject());
            map.put("setting", row.setting());
            map.put("then", row.then());
            map.put("now", row.now());
            map.put("differs", row.differs());
            rows.add(map);
        }
        entities.put("sb:then-and-now",
                Map.of("prov:label", "settings of the day beside those of today", "sb:differing", compared.differing().size(), "sb:rows",
                        Map.of("$", Json.write(rows), "type", "sb:json")));
        return document;
    }

    private static List<String> words(TraceRoom room, Web web, ThenAndNow compared, List<String> drawn) throws IOException {
        List<String> words = new ArrayList<>();
        words.add("The way back, the latest first:");
        List<Deed> latestFirst = new ArrayList<>(web.deeds());
        Collections.reverse(latestFirst);
        for (Deed deed : latestFirst) {
            words.add(line(room, deed));
        }
        if (web.cut()) {
            words.add("There is more; only " + MOST + " records are shown.");
        }
        List<SettingRow> differing = compared.differing();
        words.add("");
        if (compared.rows().isEmpty()) {
            words.add("No record here holds settings that could be compared with today's.");
        } else if (differing.isEmpty()) {
            words.add("All " + compared.rows().size() + " settings that were recorded are the same today.");
        } else {
            words.add(String.format(Locale.ROOT, "%-24s %-14s %-32s %s", "otherwise today", "setting", "then", "now"));
            differing.forEach(row -> words.add(String.format(Locale.ROOT, "%-24s %-14s %-32s %s", row.subject(), row.setting(), row.then(), row.now())));
        }
        words.addAll(drawn);
        return words;
    }

    private static String line(TraceRoom room, Deed deed) throws IOException {
        RecordLine line = room.line(deed);
        StringBuilder text = new StringBuilder(
                String.format(Locale.ROOT, "  %s  %-8s %-16s", WHEN.format(line.time().atZone(ZoneId.systemDefault())), line.kind(),
                        deed.place()));
        Set<String> told = new LinkedHashSet<>();
        for (String name : SHOWN) {
            Object value = line.settings().get(name);
            if (value != null && !value.toString().isEmpty() && !(value instanceof List) && !(value instanceof Map)) {
                told.add(name.equals("label") || name.equals("name") ? value.toString() : name + " " + value);
            }
        }
        text.append(String.join(", ", told));
        if (!line.who().isEmpty()) {
            text.append("; ").append(line.who());
        }
        return text.append("  [").append(line.id()).append(']').toString();
    }
}
