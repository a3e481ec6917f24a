package saddlebar.production.bring;

import java.util.Objects;
import java.util.Optional;

import saddlebar.artwork.LayerGuess;
import saddlebar.artwork.LayerHint;
import saddlebar.model.commission.LayerRole;

/**
 * What one layer of an artwork is for, and who says so.
 *
 * @param id      of the layer in the artwork
 * @param label   what the person called it
 * @param purpose {@code cutline}, {@code trace}, {@code matt}, {@code lettering}, {@code stain}, {@code enamel}, {@code glass} or {@code none}
 * @param source  who says so
 * @param ground  what speaks for it, where it is guessed
 */
public record LayerPurpose(String id, String label, String purpose, Source source, LayerGuess.Ground ground) {
    /** The layer is for nothing here. */
    public static final String NONE = "none";
    /** The layer shows a colourway's glass. */
    public static final String GLASS = "glass";

    /** Who says what a layer is for. */
    public enum Source {
        SAID, REMEMBERED, GUESSED
    }

    public LayerPurpose {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(purpose, "purpose");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(ground, "ground");
    }

    /** Of a layer that shows glass, the colourway: {@code Glass: Spring tide} is Spring tide. */
    public String colourway() {
        return colourway(label);
    }

    static String colourway(String label) {
        String name = label.replaceFirst("(?i)^glass\\s*[:-]?\\s*", "").strip();
        return name.isEmpty() ? "As drawn" : name;
    }

    /** As the end of an English sentence. */
    public String why() {
        return switch (source) {
            case SAID -> "you said so";
            case REMEMBERED -> "you said so at the last bringing";
            case GUESSED -> ground.words();
        };
    }

    static String of(LayerHint hint) {
        return switch (hint) {
            case GLASS -> GLASS;
            case NONE -> NONE;
            default -> role(hint).orElseThrow().getLiteral();
        };
    }

    static Optional<LayerRole> role(LayerHint hint) {
        return switch (hint) {
            case CUTLINE -> Optional.of(LayerRole.CUTLINE);
            case TRACE -> Optional.of(LayerRole.TRACE);
            case MATT -> Optional.of(LayerRole.MATT);
            case LETTERING -> Optional.of(LayerRole.LETTERING);
            case STAIN -> Optional.of(LayerRole.STAIN);
            case ENAMEL -> Optional.of(LayerRole.ENAMEL);
            case GLASS, NONE -> Optional.empty();
        };
    }
}
