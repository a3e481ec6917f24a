package saddlebar.production.light;

import java.util.Objects;
import java.util.Optional;

import saddlebar.model.units.Require;
import saddlebar.model.work.Work;

/**
 * One painted, stained or lettered layer as it lies on the glass.
 *
 * @param id       the design layer's lasting id
 * @param name     what the drawing calls it
 * @param paint    what its paint lets through
 * @param film     what else is known of the paint
 * @param coverage where and how densely it lies
 * @param finer    where it can be had finer, if anywhere
 */
public record SceneLayer(String id, String name, PaintLook paint, FilmLook film, Coverage coverage, Optional<CoverageSource> finer) {
    /** Pixels of the held picture may become so large on the screen before the drawing is asked. */
    private static final double MOST_STRETCH = 1.3;

    public SceneLayer {
        Objects.requireNonNull(id, "id");
        Require.text("name", name);
        Objects.requireNonNull(paint, "paint");
        Objects.requireNonNull(film, "film");
        Objects.requireNonNull(coverage, "coverage");
        Objects.requireNonNull(finer, "finer");
    }

    public SceneLayer(String id, String name, PaintLook paint, Coverage coverage) {
        this(id, name, paint, coverage, Optional.empty());
    }

    /** Of whose paint nothing else is known. */
    public SceneLayer(String id, String name, PaintLook paint, Coverage coverage, Optional<CoverageSource> finer) {
        this(id, name, paint, FilmLook.PLAIN, coverage, finer);
    }

    /** The picture to show a part with at a scale: the held one where it is fine enough. */
    Coverage coverageFor(RectMm part, double pxPerMm, Work work) {
        double heldPxPerMm = coverage.widthPx() / coverage.area().widthMm();
        if (finer.isEmpty() || pxPerMm <= MOST_STRETCH * heldPxPerMm) {
            return coverage;
        }
        return finer.get().read(part.grownBy(2 / pxPerMm), pxPerMm, work);
    }
}
