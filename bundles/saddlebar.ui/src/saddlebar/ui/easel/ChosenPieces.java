package saddlebar.ui.easel;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** Which pieces are chosen, by their ids: the one that is looked at, and others beside it. */
final class ChosenPieces {
    private final Set<String> ids = new LinkedHashSet<>();

    /** The one that was chosen last. */
    Optional<String> first() {
        return ids.stream().reduce((one, later) -> later);
    }

    /** The one that is looked at first, then the others. */
    List<String> all() {
        List<String> all = new ArrayList<>(ids);
        java.util.Collections.reverse(all);
        return all;
    }

    /** @return whether that is another choice than before */
    boolean choose(Optional<String> only) {
        return chooseAll(only.stream().toList());
    }

    /** @param wanted the one to be looked at first */
    boolean chooseAll(List<String> wanted) {
        if (all().equals(wanted)) {
            return false;
        }
        ids.clear();
        for (int i = wanted.size() - 1; i >= 0; i--) {
            ids.add(wanted.get(i));
        }
        return true;
    }

    /** Takes it to the others, or away from them. */
    void turn(String id) {
        if (!ids.remove(id)) {
            ids.add(id);
        }
    }

    void keep(Predicate<String> known) {
        ids.removeIf(known.negate());
    }
}
