package saddlebar.artwork;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

import saddlebar.model.problem.Refusal;

/** Finds a group by what a person calls it. */
final class Layers {
    /** More names than this help nobody. */
    private static final int MOST_NAMES = 20;

    private Layers() {
    }

    static Optional<ArtLayer> named(List<ArtLayer> layers, String nameOrId) {
        return first(layers, layer -> layer.id().equals(nameOrId)).or(() -> first(layers, layer -> layer.label().equals(nameOrId)))
                .or(() -> first(layers, layer -> layer.label().equalsIgnoreCase(nameOrId.strip())));
    }

    private static Optional<ArtLayer> first(List<ArtLayer> layers, Predicate<ArtLayer> fits) {
        return layers.stream().filter(fits).min(Comparator.comparingInt(ArtLayer::depth)); // min keeps the first of equals
    }

    static Refusal refusal(Path file, List<ArtLayer> layers, String nameOrId) {
        String where = String.valueOf(file.getFileName());
        if (layers.isEmpty()) {
            return new Refusal(where, "there is no layer \"" + nameOrId + "\": it has no groups at all", "leave the layer out, or group the drawing");
        }
        int top = layers.stream().mapToInt(ArtLayer::depth).min().orElse(0);
        List<String> names = layers.stream().filter(layer -> layer.depth() == top).map(layer -> "\"" + layer.label() + "\"").toList();
        String listed = names.stream().limit(MOST_NAMES).collect(Collectors.joining(", "));
        String more = names.size() > MOST_NAMES ? " and " + (names.size() - MOST_NAMES) + " more" : "";
        return new Refusal(where, "there is no layer \"" + nameOrId + "\"", "choose one of " + listed + more + ", or a group inside by its id");
    }
}
