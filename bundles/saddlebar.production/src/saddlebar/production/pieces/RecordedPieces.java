package saddlebar.production.pieces;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.RecordBook;
import saddlebar.model.store.RecordLine;
import saddlebar.model.store.RecordReading;
import saddlebar.model.work.Work;

/** Which pieces the records of the bench name; what is written in a notebook under a number keeps that number. */
public final class RecordedPieces {
    private static final Set<String> BENCH = Set.of("pull", "fire", "glaze", "defect", "remake", "fix");

    private RecordedPieces() {
    }

    /** Ids of pieces that were printed, fired, glazed, found flawed, made again or fixed. */
    public static Set<String> ids(CommissionFolder folder) throws IOException {
        Set<String> ids = new HashSet<>();
        take(folder.records(), ids);
        if (!folder.hasOwnStudio()) {
            take(folder.studioFolder().records(), ids);
        }
        return ids;
    }

    private static void take(RecordBook book, Set<String> ids) throws IOException {
        try (RecordReading reading = book.read()) {
            reading.forEach(line -> take(line, ids), Work.UNWATCHED);
        }
    }

    private static void take(RecordLine line, Set<String> ids) {
        if (BENCH.contains(line.kind())) {
            add(line.settings(), ids);
            if (line.settings().get("load") instanceof List<?> load) {
                load.forEach(place -> {
                    if (place instanceof Map<?, ?> one) {
                        add(one, ids);
                    }
                });
            }
        }
    }

    private static void add(Map<?, ?> settings, Set<String> ids) {
        if (settings.get("pieceId") instanceof String id) {
            ids.add(id);
        }
        if (settings.get("pieceIds") instanceof List<?> list) {
            list.forEach(id -> ids.add(String.valueOf(id)));
        }
    }
}
