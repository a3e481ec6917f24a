package saddlebar.trace.lineage;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import saddlebar.model.index.Mention;
import saddlebar.model.index.RecordLens;
import saddlebar.model.index.Role;
import saddlebar.model.store.RecordLine;

/**
 * What a record speaks of, as PROV would say it: which things it used, which it generated, who did it. Things are named {@code id=} and an id of the model or
 * of a record, {@code art=} and a hash, {@code print=PIECE/LAYER} for what lies on the glass, {@code prints=PIECE} for all of it, or by the word of a column of
 * the notebook ({@code mix=M07}), so that a record told in words joins one told in ids.
 */
public final class RecordThings implements RecordLens {
    /** Begins the name by which a correction is found. */
    static final String CORRECTS = "corrects=";
    /** Words of a record that went into the work. */
    static final Set<String> USED_WORDS = Set.of("stencil", "sheet", "screen", "mesh", "paint", "lot", "mix", "medium", "firing", "schedule", "frame");
    /** Words that are kept to be found by. */
    static final Set<String> OTHER_WORDS = Set.of("window", "piece", "layer", "shelf_place", "defect", "defectKind", "severity", "pull", "place", "test", "arm",
            "person");
    /** Settings that hold ids of what went in. */
    private static final Set<String> USED_IDS = Set.of("screenLoadId", "screenLoadIds", "mixId", "stencilId", "stencilIds", "sheetId", "paintId", "lotId",
            "mediumId", "frameId", "frameIds", "kilnId", "scheduleId", "defectId", "layerId", "layerIds", "aboutIds", "itemId");
    /** Numbers taken on the way. */
    private static final Set<String> NUMBERS = Set.of("peak_c", "peakC", "humidity", "pull", "temperature_c", "temperatureC", "heat_work", "mesh_age", "pressC",
            "pressMin", "powderG", "mediumG", "hours", "charge");

    @Override
    public String version() {
        return "things 1";
    }

    @Override
    public List<Mention> mentions(RecordLine line) {
        Set<Mention> all = new LinkedHashSet<>();
        line.used().forEach(id -> all.add(used("id=" + id)));
        line.made().forEach(id -> all.add(made("id=" + id)));
        if (!line.who().isEmpty()) {
            all.add(new Mention(Role.BY, "who=" + line.who()));
        }
        line.supersedes().forEach(id -> all.add(new Mention(Role.ABOUT, CORRECTS + id)));
        line.settings().forEach((key, value) -> words(line.kind(), key, value, all));
        if (line.kind().equals("pull") || line.kind().equals("fire")) {
            all.add(new Mention(Role.ABOUT, "day=" + LocalDate.ofInstant(line.time(), ZoneOffset.UTC)));
        }
        art(line, all);
        prints(line, all);
        former(line, all);
        return new ArrayList<>(all);
    }

    private static Mention used(String thing) {
        return new Mention(Role.USED, thing);
    }

    private static Mention made(String thing) {
        return new Mention(Role.MADE, thing);
    }

    private static void words(String kind, String key, Object value, Set<Mention> all) {
        if (USED_WORDS.contains(key)) {
            String word = word(value);
            if (!word.isEmpty()) {
                boolean makes = kind.equals("mix") && key.equals("mix") || kind.equals("fuse") && key.equals("screen")
                        || kind.equals("reclaim") && key.equals("screen");
                all.add(new Mention(makes ? Role.MADE : Role.USED, key + "=" + word));
            }
        } else if (OTHER_WORDS.contains(key)) {
            String word = word(value);
            if (!word.isEmpty()) {
                all.add(new Mention(Role.ABOUT, key + "=" + word));
            }
        } else if (USED_IDS.contains(key)) {
            texts(value).forEach(id -> all.add(new Mention(ownId(kind, key) ? Role.MADE : Role.USED, "id=" + id)));
        } else if (key.equals("name") && kind.equals("mix")) {
            all.add(made("mix=" + word(value)));
        } else if (key.equals("name") && kind.equals("fire")) {
            all.add(made("firing=" + word(value)));
        } else if (key.equals("label") && kind.equals("stencil")) {
            all.add(made("stencil=" + word(value)));
        } else if (key.equals("number") && kind.equals("sheet")) {
            all.add(made("sheet=" + word(value)));
        }
    }

    /** A stencil's record names the stencil that it made, not one that it used. */
    private static boolean ownId(String kind, String key) {
        return kind.equals("stencil") && key.equals("stencilId") || kind.equals("sheet") && key.equals("sheetId")
                || (kind.equals("fuse") || kind.equals("reclaim")) && (key.equals("frameId") || key.equals("frameIds"));
    }

    private static void art(RecordLine line, Set<Mention> all) {
        Object art = line.kind().equals("bring") ? line.settings().get("sha256") : line.settings().get("artworkSha256");
        if (art instanceof String sha256 && !sha256.isEmpty()) {
            all.add(line.kind().equals("bring") ? made("art=" + sha256) : used("art=" + sha256));
        }
    }

    private static void prints(RecordLine line, Set<Mention> all) {
        Map<String, Object> settings = line.settings();
        List<String> pieces = new ArrayList<>(texts(settings.get("pieceIds")));
        texts(settings.get("pieceId")).stream().filter(id -> !pieces.contains(id)).forEach(pieces::add);
        String layer = word(settings.get("layerId"));
        switch (line.kind()) {
            case "pull" :
                pieces.forEach(piece -> {
                    all.add(used("id=" + piece));
                    all.add(made(print(piece, layer)));
                });
                break;
            case "fire" :
                pieces.forEach(piece -> fired(piece, layer, all));
                if (settings.get("load") instanceof List<?> load) {
                    load.forEach(place -> onShelf(place, all));
                }
                break;
            case "defect", "remake" :
                pieces.forEach(piece -> {
                    all.add(used("id=" + piece));
                    all.add(used(layer.isEmpty() ? "prints=" + piece : print(piece, layer)));
                });
                break;
            case "glaze" :
                pieces.forEach(piece -> {
                    all.add(used("id=" + piece));
                    all.add(used("prints=" + piece));
                });
                texts(settings.get("panelId")).forEach(panel -> all.add(made("glazed=" + panel)));
                break;
            case "fix" :
                texts(settings.get("panelId")).forEach(panel -> all.add(used("glazed=" + panel)));
                break;
            default :
                break;
        }
    }

    private static void fired(String piece, String layer, Set<Mention> all) {
        all.add(used("id=" + piece));
        all.add(used(print(piece, layer)));
        all.add(made(print(piece, layer)));
    }

    private static void onShelf(Object place, Set<Mention> all) {
        if (place instanceof Map<?, ?> one) {
            String piece = word(one.get("pieceId"));
            if (!piece.isEmpty()) {
                List<String> layers = texts(one.get("layerIds"));
                (layers.isEmpty() ? List.of("") : layers).forEach(layer -> fired(piece, layer, all));
            }
        }
    }

    /** Pieces that a new drawing split or joined: {@code former} holds for each new id the ids that it came from. */
    private static void former(RecordLine line, Set<Mention> all) {
        if (line.settings().get("former") instanceof Map<?, ?> former) {
            former.forEach((id, from) -> texts(from).forEach(old -> {
                all.add(used("id=" + old));
                all.add(new Mention(Role.ABOUT, "former=" + id + ":" + old));
                all.add(new Mention(Role.ABOUT, "became=" + old + ":" + id));
            }));
        }
    }

    /** Name of what a layer puts on a piece. */
    static String print(String pieceId, String layerId) {
        return "print=" + pieceId + "/" + layerId;
    }

    @Override
    public Map<String, Double> measures(RecordLine line) {
        Map<String, Double> all = new LinkedHashMap<>();
        line.settings().forEach((key, value) -> {
            if (NUMBERS.contains(key) && value instanceof Number number && Double.isFinite(number.doubleValue())) {
                all.put(key, number.doubleValue());
            }
        });
        return all;
    }

    private static List<String> texts(Object value) {
        if (value instanceof String text) {
            return text.isEmpty() ? List.of() : List.of(text);
        }
        return value instanceof List<?> list
                ? list.stream().filter(String.class::isInstance).map(String.class::cast).filter(text -> !text.isEmpty()).distinct().toList()
                : List.of();
    }

    private static String word(Object value) {
        if (value instanceof Double number && number == Math.rint(number) && Math.abs(number) < 1e15) {
            return String.valueOf(number.longValue());
        }
        return value instanceof String || value instanceof Number || value instanceof Boolean ? value.toString().strip() : "";
    }
}
