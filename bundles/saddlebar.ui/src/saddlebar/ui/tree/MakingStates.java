package saddlebar.ui.tree;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.MakingState;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.model.store.CommissionFolder;
import saddlebar.production.check.CommissionStatus;
import saddlebar.production.check.CommissionStatus.LayerStatus;
import saddlebar.production.check.CommissionStatus.PieceStatus;
import saddlebar.production.check.CommissionStatus.WindowStatus;

/**
 * How far everything is made, as sheets and records say; the same that the command line tells. A piece is as far as the layer that is farthest
 * behind on it.
 *
 * @param pieces  by the piece's lasting id
 * @param layers  by the layer's lasting id
 * @param painted ids of pieces on which something prints; the others wait for nothing until they are glazed
 */
public record MakingStates(Map<String, MakingState> pieces, Map<String, MakingState> layers, Set<String> painted) {
    /** Nothing has been read yet. */
    public static final MakingStates NONE = new MakingStates(Map.of(), Map.of(), Set.of());

    public MakingStates {
        pieces = Map.copyOf(pieces);
        layers = Map.copyOf(layers);
        painted = Set.copyOf(painted);
    }

    /** Reads all windows and all records: work for a thread of its own. */
    public static MakingStates of(CommissionFolder folder) throws IOException {
        Map<String, MakingState> pieces = new HashMap<>();
        Map<String, MakingState> layers = new HashMap<>();
        Set<String> painted = new HashSet<>();
        for (WindowStatus status : CommissionStatus.of(folder).windows()) {
            Window window = folder.window(status.name()).orElseThrow();
            List<Piece> ofWindow = pieces(window);
            List<DesignLayer> paintedLayers = layers(window);
            if (ofWindow.size() != status.pieces().size() || paintedLayers.size() != status.layers().size()) {
                throw new IllegalStateException("the status of " + status.name() + " does not tell of the same pieces and layers");
            }
            for (int i = 0; i < ofWindow.size(); i++) {
                PieceStatus piece = status.pieces().get(i);
                pieces.put(ofWindow.get(i).getId(), MakingState.get(piece.state()));
                if (!piece.layers().isEmpty()) {
                    painted.add(ofWindow.get(i).getId());
                }
            }
            for (int i = 0; i < paintedLayers.size(); i++) {
                LayerStatus layer = status.layers().get(i);
                layers.put(paintedLayers.get(i).getId(), MakingState.get(layer.state()));
            }
        }
        return new MakingStates(pieces, layers, painted);
    }

    /** In the order in which the status tells of them: by number, those of the same number as their panels stand. */
    private static List<Piece> pieces(Window window) {
        List<Piece> pieces = new ArrayList<>();
        for (Panel panel : window.getPanels()) {
            panel.getPieces().stream().filter(piece -> !piece.isRetired()).forEach(pieces::add);
        }
        pieces.sort(Comparator.comparingInt(Piece::getNumber));
        return pieces;
    }

    private static List<DesignLayer> layers(Window window) {
        return window.getPanels().stream().flatMap(panel -> panel.getLayers().stream()).filter(layer -> layer.getRole() != LayerRole.CUTLINE).toList();
    }

    public MakingState of(Piece piece) {
        return piece.getId() == null ? piece.getState() : pieces.getOrDefault(piece.getId(), piece.getState());
    }

    public MakingState of(DesignLayer layer) {
        return layer.getId() == null ? layer.getState() : layers.getOrDefault(layer.getId(), layer.getState());
    }

    /** States of those that are on their way: the painted ones and whatever is farther; of all if nothing prints on any. */
    List<MakingState> onTheirWay(Collection<Piece> all) {
        boolean noneIsPainted = all.stream().noneMatch(piece -> painted.contains(piece.getId()));
        return all.stream().filter(piece -> noneIsPainted || painted.contains(piece.getId()) || of(piece) != MakingState.DRAWN).map(this::of).toList();
    }
}
