package saddlebar.artwork;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.art.GrayBands;
import saddlebar.model.problem.Problem;
import saddlebar.model.work.Work;

/** Art that has been read. Immutable; several threads may ask at once. Lengths are real mm, after the scale of the settings. */
public interface Artwork extends AutoCloseable {
    /** Flattening tolerance for cutlines and areas, mm: finer than any glass is cut. */
    double CUT_FLATNESS_MM = 0.01;

    Path file();

    double widthMm();

    double heightMm();

    /** Groups in the order of the file, each before those inside it; empty for a picture. */
    List<ArtLayer> layers();

    /** What was met that cannot be drawn as it is meant, each with file, line and element; never silence. Worst first. */
    List<Problem> warnings();

    /** A group by its id, else by its label, else by its label without regard to case; of several the outermost and first. */
    default Optional<ArtLayer> layer(String nameOrId) {
        return Layers.named(layers(), nameOrId);
    }

    /**
     * As {@link #layer(String)}.
     *
     * @throws saddlebar.model.problem.Refusal that lists the groups there are
     */
    default ArtLayer chosenLayer(String nameOrId) {
        return layer(nameOrId).orElseThrow(() -> Layers.refusal(file(), layers(), nameOrId));
    }

    /** What each group may be for, by its name or by what is drawn in it, in the order of {@link #layers()}. */
    default List<LayerGuess> guesses() {
        return layers().stream().map(LayerGuess::byName).toList();
    }

    /** The group that looks most like the cutline, by name or by what is drawn in it. */
    default Optional<ArtLayer> cutlineLayer() {
        return layers().stream().filter(layer -> layer.hint() == LayerHint.CUTLINE).findFirst();
    }

    /**
     * The centre lines of strokes, and the outlines of filled shapes without a stroke, as straight steps no farther than the tolerance from
     * the drawn curve. Transforms, copies and clips are applied; dashes are not (the line is meant). Text is left out, since piece numbers
     * are no cutline. In the order of the file.
     *
     * @param flatnessMm greatest distance, 1e-4 to 10; {@link #CUT_FLATNESS_MM} unless there is a reason
     * @throws saddlebar.model.problem.Refusal if this is a picture, which holds no lines
     */
    List<DrawnLine> lines(LayerChoice choice, double flatnessMm);

    /** Filled areas but for text in paint order, flattened to {@link #CUT_FLATNESS_MM}; none for a picture. */
    List<ColourArea> areas(LayerChoice choice);

    /**
     * The choice in gray, antialiased on white paper, read from the top in bands; bounded memory whatever the height. The bytes do not depend
     * on how many rows are asked for at a time.
     *
     * @param work asked to stop between bands and told one unit a row
     */
    GrayBands gray(LayerChoice choice, RasterRequest request, Work work);

    /** The choice in colour (ARGB, not premultiplied, clear where nothing is drawn) for screens: the region stretched to the pixels. */
    BufferedImage picture(LayerChoice choice, int widthPx, int heightPx, RegionMm region);

    /** Lets go of memory and files. Never fails. */
    @Override
    void close();
}
