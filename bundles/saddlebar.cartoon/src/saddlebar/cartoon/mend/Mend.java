package saddlebar.cartoon.mend;

import java.util.List;
import java.util.Objects;
import java.util.Set;

import saddlebar.model.problem.PlaceMm;
import saddlebar.model.units.Require;

/**
 * One proposal.
 *
 * @param key     by which it is known again when the same artwork is read another time: kind, element and place
 * @param kind    what it does
 * @param where   the drawn line in words
 * @param at      place to look at
 * @param message one sentence: what would be done
 * @param changes the lines that change, with before and after
 * @param leansOn indexes of other lines that it counts on staying as they are
 */
public record Mend(String key, MendKind kind, String where, PlaceMm at, String message, List<LineChange> changes, Set<Integer> leansOn) {
    public Mend {
        Require.text("key", key);
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(where, "where");
        Objects.requireNonNull(at, "at");
        Require.text("message", message);
        changes = List.copyOf(changes);
        leansOn = Set.copyOf(leansOn);
        Require.within("changes", changes.size(), 1, 2);
    }
}
