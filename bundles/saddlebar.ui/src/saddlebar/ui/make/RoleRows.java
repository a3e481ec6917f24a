package saddlebar.ui.make;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import saddlebar.artwork.LayerGuess;
import saddlebar.production.bring.LayerPurpose;

/** What the layers of a drawing are for, as the person settles it before it is brought. Belongs to the screen's thread. */
final class RoleRows {
    /** In the order in which they are offered. */
    static final List<String> PURPOSES = List.of("cutline", "glass", "trace", "matt", "lettering", "stain", "enamel", LayerPurpose.NONE);

    /** Why the rows cannot be brought as they are. */
    enum Fault {
        NO_CUTLINE, TWICE
    }

    private final List<LayerPurpose> rows = new ArrayList<>();

    void read(List<LayerPurpose> purposes) {
        rows.clear();
        rows.addAll(purposes);
    }

    List<LayerPurpose> rows() {
        return List.copyOf(rows);
    }

    /** The person's word for one layer. */
    void say(String layerId, String purpose) {
        for (int i = 0; i < rows.size(); i++) {
            LayerPurpose row = rows.get(i);
            if (row.id().equals(layerId) && !row.purpose().equals(purpose)) {
                rows.set(i, new LayerPurpose(row.id(), row.label(), purpose, LayerPurpose.Source.SAID, LayerGuess.Ground.NOTHING));
            }
        }
    }

    /** A drawing without layers has no faults here: whoever brings it tells what is wrong. */
    Optional<Fault> fault() {
        Set<String> seen = new HashSet<>();
        for (LayerPurpose row : rows) {
            boolean several = row.purpose().equals(LayerPurpose.NONE) || row.purpose().equals(LayerPurpose.GLASS);
            if (!several && !seen.add(row.purpose())) {
                return Optional.of(Fault.TWICE);
            }
        }
        return rows.isEmpty() || seen.contains("cutline") ? Optional.empty() : Optional.of(Fault.NO_CUTLINE);
    }
}
