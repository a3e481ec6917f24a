package saddlebar.production.check;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

import saddlebar.model.commission.MakingState;
import saddlebar.model.commission.Piece;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.RecordBook;
import saddlebar.model.store.RecordLine;
import saddlebar.model.store.RecordReading;

/** What the records say has been done with pieces and stencils. A later record counts; a record that was superseded does not. */
final class PrintedPieces {
    private final Map<String, MakingState> byPieceAndLayer = new HashMap<>();
    private final Map<String, MakingState> byStencil = new HashMap<>();
    private final Map<String, MakingState> byPiece = new HashMap<>();

    static PrintedPieces of(CommissionFolder folder) throws IOException {
        PrintedPieces found = new PrintedPieces();
        List<RecordLine> lines = new ArrayList<>(lines(folder.studioFolder().records()));
        lines.addAll(lines(folder.records()));
        Set<String> superseded = new HashSet<>();
        lines.forEach(line -> superseded.addAll(line.supersedes()));
        lines.removeIf(line -> superseded.contains(line.id()));
        lines.sort(Comparator.comparing(RecordLine::time));
        lines.forEach(found::take);
        return found;
    }

    private static List<RecordLine> lines(RecordBook book) throws IOException {
        try (RecordReading reading = book.read()) {
            return reading.toList();
        }
    }

    private void take(RecordLine line) {
        Map<String, Object> settings = line.settings();
        switch (line.kind()) {
            case "fuse" -> ids(settings, "stencilIds").forEach(stencil -> byStencil.put(stencil, MakingState.ON_SCREEN));
            case "pull" -> ids(settings, "pieceIds").forEach(piece -> byPieceAndLayer.put(key(piece, settings), MakingState.PRINTED));
            case "fire" -> shelf(settings);
            case "glaze" -> ids(settings, "pieceIds").forEach(piece -> byPiece.put(piece, MakingState.GLAZED));
            case "defect" -> byPieceAndLayer.put(key(String.valueOf(settings.get("pieceId")), settings), MakingState.IN_DOUBT);
            case "remake" -> byPiece.put(String.valueOf(settings.get("pieceId")), MakingState.TO_REMAKE);
            default -> {
                // other kinds move no piece on
            }
        }
    }

    private void shelf(Map<String, Object> settings) {
        if (settings.get("load") instanceof List<?> load) {
            for (Object place : load) {
                if (place instanceof Map<?, ?> one) {
                    ids(one, "layerIds").forEach(layer -> byPieceAndLayer.put(one.get("pieceId") + " " + layer, MakingState.FIRED));
                }
            }
        }
    }

    private static String key(String piece, Map<String, Object> settings) {
        return piece + " " + settings.get("layerId");
    }

    private static List<String> ids(Map<?, ?> settings, String name) {
        return settings.get(name) instanceof List<?> list ? list.stream().map(String::valueOf).toList() : List.of();
    }

    /** By its own records, else by those of the pieces that it came from. */
    MakingState state(Piece piece, String layerId, String stencilId, MakingState before) {
        return recorded(piece, id -> byPieceAndLayer.get(id + " " + layerId)).orElseGet(() -> byStencil.getOrDefault(stencilId, before));
    }

    MakingState glazed(Piece piece, MakingState otherwise) {
        return recorded(piece, byPiece::get).orElse(otherwise);
    }

    private static Optional<MakingState> recorded(Piece piece, Function<String, MakingState> found) {
        MakingState own = found.apply(piece.getId());
        return own != null
                ? Optional.of(own)
                : FormerPieces.of(piece).stream().map(Piece::getId).map(found).filter(Objects::nonNull).reduce(CommissionStatus::behind);
    }
}
