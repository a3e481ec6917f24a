package saddlebar.artwork;

import java.util.Objects;

/**
 * What a layer may be for, and why it is thought so. Only a guess to start from: the person says what counts.
 *
 * @param layer  the layer
 * @param hint   what it may be for; none if nothing can be told
 * @param ground what speaks for it
 */
public record LayerGuess(ArtLayer layer, LayerHint hint, Ground ground) {
    /** What speaks for a guess. */
    public enum Ground {
        NAME("its name says so"),
        CLOSED_HAIRLINES("it holds thin lines and nothing else, and their ends meet"),
        LINES("it holds lines and nothing else, and no other layer looks more like the cutline"),
        LETTERS("it holds letters"),
        TONES("it is drawn in tones"),
        COLOURS("it holds areas of several colours"),
        DARK("it is drawn in solid black or near to it"),
        NOTHING("neither its name nor what is drawn in it says anything");

        private final String words;

        Ground(String words) {
            this.words = words;
        }

        /** As the end of an English sentence. */
        public String words() {
            return words;
        }
    }

    public LayerGuess {
        Objects.requireNonNull(layer, "layer");
        Objects.requireNonNull(hint, "hint");
        Objects.requireNonNull(ground, "ground");
    }

    /** By its name alone. */
    static LayerGuess byName(ArtLayer layer) {
        return new LayerGuess(layer, layer.hint(), layer.hint() == LayerHint.NONE ? Ground.NOTHING : Ground.NAME);
    }
}
