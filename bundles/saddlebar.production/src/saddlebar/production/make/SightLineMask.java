package saddlebar.production.make;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

import saddlebar.cartoon.PaintedArea;
import saddlebar.model.commission.SightLineRule;
import saddlebar.production.facts.LayerFacts;

/** Where a layer prints on a piece, by its rule for what foil or came covers. */
final class SightLineMask {
    /** Steps in which tone runs out under the sight line: more than the eye can tell on 2 or 3 mm. */
    static final int FADE_STEPS = 16;

    private SightLineMask() {
    }

    /** The region that may print at all. */
    static Geometry printed(Polygon glass, LayerFacts layer) {
        return switch (layer.sightLine()) {
            case PRINT_UNDER -> PaintedArea.of(glass, layer.bleedMm());
            case FADE -> glass;
            case KEEP_OFF -> PaintedArea.visible(glass, layer.sightLineMm());
        };
    }

    /** The region that shows when the piece is in its place: between the sight lines. */
    static Geometry seen(Polygon glass, LayerFacts layer) {
        Geometry open = PaintedArea.visible(glass, layer.sightLineMm());
        return open.isEmpty() ? glass : open; // a sliver that is all covered is looked at whole
    }

    /** Nested regions, widest first, in the k-th of which tone has k / {@link #FADE_STEPS} of its strength; empty if nothing fades. */
    static List<Geometry> fade(Polygon glass, LayerFacts layer) {
        List<Geometry> steps = new ArrayList<>();
        if (layer.sightLine() == SightLineRule.FADE && layer.sightLineMm() > 0) {
            for (int step = 1; step <= FADE_STEPS; step++) {
                steps.add(PaintedArea.visible(glass, layer.sightLineMm() * step / FADE_STEPS));
            }
        }
        return steps;
    }
}
