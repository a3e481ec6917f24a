package saddlebar.ui.easel;

import java.util.Objects;

import saddlebar.model.units.Require;

/**
 * One painted, stained or lettered layer as it lies on the glass.
 *
 * @param id       the design layer's lasting id
 * @param name     what the drawing calls it
 * @param paint    what its paint lets through
 * @param coverage where and how densely it lies
 */
public record SceneLayer(String id, String name, PaintLook paint, Coverage coverage) {
    public SceneLayer {
        Objects.requireNonNull(id, "id");
        Require.text("name", name);
        Objects.requireNonNull(paint, "paint");
        Objects.requireNonNull(coverage, "coverage");
    }
}
