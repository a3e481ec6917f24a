package saddlebar.production.light;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import saddlebar.model.art.OutlineMm;
import saddlebar.production.facts.CutFacts;

/**
 * What the model knows of a window's looks, as plain values.
 *
 * @param id         the window's lasting id
 * @param name       its short name, such as W01
 * @param panels     its panels
 * @param colourways names of its choices of glass, at least one
 */
public record WindowSketch(String id, String name, List<PanelSketch> panels, List<String> colourways) {
    /**
     * One panel; lengths in mm of its own page.
     *
     * @param xMm     where its page's left edge lies in the window
     * @param yMm     where its upper edge lies
     * @param outline its outer edge as last made; empty before
     * @param art     its artwork as last brought
     * @param cutline layer of the artwork in which glass is cut; empty if nobody said
     * @param lead    leaded, else foiled
     * @param gapMm   between pieces
     * @param coverMm what foil or came covers of each piece's rim
     * @param pieces  as last made; empty before
     * @param layers  painted layers in the order of firing
     * @param id      the panel's lasting id, empty if it has none yet
     * @param cut     how the cutline is read: mends, joins, limits
     */
    public record PanelSketch(double xMm, double yMm, Optional<OutlineMm> outline, Optional<ArtPlace> art, String cutline, boolean lead,
            double gapMm, double coverMm, List<PieceSketch> pieces, List<LayerSketch> layers, String id, CutFacts cut) {
        public PanelSketch {
            Objects.requireNonNull(outline, "outline");
            Objects.requireNonNull(art, "art");
            Objects.requireNonNull(cutline, "cutline");
            pieces = List.copyOf(pieces);
            layers = List.copyOf(layers);
            Objects.requireNonNull(id, "id");
            Objects.requireNonNull(cut, "cut");
        }

        /** Read as drawn. */
        public PanelSketch(double xMm, double yMm, Optional<OutlineMm> outline, Optional<ArtPlace> art, String cutline, boolean lead, double gapMm,
                double coverMm, List<PieceSketch> pieces, List<LayerSketch> layers) {
            this(xMm, yMm, outline, art, cutline, lead, gapMm, coverMm, pieces, layers, "", CutFacts.PLAIN);
        }
    }

    /** An artwork file and the width of its page at full size. */
    public record ArtPlace(Path file, double widthMm) {
    }

    /** A piece as made: where its number stands, and its glass in each colourway. */
    public record PieceSketch(String id, int number, OutlineMm face, OutlineMm glass, double labelXMm, double labelYMm, double inradiusMm,
            List<GlassLook> looks) {
    }

    /**
     * A painted layer.
     *
     * @param artLayer   id or label of the layer in the artwork
     * @param film       what else is known of its paint
     * @param codeValues tone as the code values stand; else stretched in linear light
     * @param toneFrom   darkness of the drawing that is bare glass
     * @param toneTo     darkness that is solid paint; empty: measured on the layer
     */
    public record LayerSketch(String id, String name, String artLayer, PaintLook paint, FilmLook film, boolean codeValues, double toneFrom,
            OptionalDouble toneTo) {
        /** Of whose paint nothing else is known. */
        public LayerSketch(String id, String name, String artLayer, PaintLook paint, boolean codeValues, double toneFrom, OptionalDouble toneTo) {
            this(id, name, artLayer, paint, FilmLook.PLAIN, codeValues, toneFrom, toneTo);
        }
    }

    public WindowSketch {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(name, "name");
        panels = List.copyOf(panels);
        colourways = List.copyOf(colourways);
        if (colourways.isEmpty()) {
            throw new IllegalArgumentException("a window needs at least one colourway");
        }
    }
}
