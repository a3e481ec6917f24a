package saddlebar.trace.lineage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import saddlebar.model.index.RecordIndex;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.NewCommission;
import saddlebar.model.store.RecordDraft;
import saddlebar.model.store.RecordKind;
import saddlebar.model.store.StudioLibrary;
import saddlebar.model.work.Work;

/** A commission's record on the disk, told record by record. */
final class Notebook implements AutoCloseable {
    private final Path folder;
    private final CommissionFolder commission;
    private final List<RecordDraft> drafts = new ArrayList<>();
    private RecordIndex index;

    Notebook() throws IOException {
        folder = Files.createTempDirectory("notebook");
        commission = CommissionFolder.create(folder.resolve("c"),
                NewCommission.titled("Notebook").stockedFrom(StudioLibrary.of(Path.of("../../shared").toAbsolutePath().normalize())));
    }

    /** @param settings names and values in turn; {@code pieceId} and {@code layerId} follow from piece and layer */
    Notebook did(String id, String when, RecordKind kind, Object... settings) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < settings.length; i += 2) {
            map.put((String) settings[i], settings[i + 1]);
        }
        if (map.containsKey("piece")) {
            map.put("window", map.getOrDefault("window", "W01"));
            map.put("pieceId", map.get("window") + "-" + map.get("piece"));
        }
        if (map.containsKey("layer")) {
            map.put("layerId", "L-" + map.get("layer"));
        }
        @SuppressWarnings("unchecked")
        List<String> supersedes = (List<String>) map.getOrDefault("supersedes", List.of());
        @SuppressWarnings("unchecked")
        List<String> made = (List<String>) map.getOrDefault("made", List.of());
        @SuppressWarnings("unchecked")
        List<String> used = (List<String>) map.getOrDefault("used", List.of());
        map.keySet().removeAll(List.of("supersedes", "made", "used"));
        drafts.add(RecordDraft.of(kind).withId(id).at(Instant.parse(when.length() > 10 ? when + "Z" : when + "T12:00:00Z")).with(map).superseding(supersedes)
                .making(made).using(used));
        return this;
    }

    Lineage lineage() throws IOException {
        commission.records().append(drafts);
        drafts.clear();
        if (index != null) {
            index.close();
        }
        index = RecordIndex.open(commission.path(), commission.records(), new RecordThings(), Work.UNWATCHED);
        return new Lineage(List.of(index));
    }

    @Override
    public void close() throws IOException {
        if (index != null) {
            index.close();
        }
        commission.close();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
