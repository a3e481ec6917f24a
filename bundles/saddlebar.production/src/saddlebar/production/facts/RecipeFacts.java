package saddlebar.production.facts;

import java.util.List;
import java.util.Objects;

import saddlebar.model.commission.MirrorRule;
import saddlebar.model.commission.TonerSide;
import saddlebar.model.units.Require;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.limits.PictureMending;

/**
 * A stencil recipe as it stands today.
 *
 * @param screening  method, ruling, dots, filter, dpi
 * @param courseLayer layer of the artwork whose drawing leads the lines; empty: the layer itself
 * @param tone       gray to coverage
 * @param processKey key of the stencil process
 * @param tonerSide  which side of the mesh this studio's sheets touch in that process
 * @param mirror     what was ordered; AUTO follows toner side and painted face
 * @param openMm     finest opening that the mesh holds, counted
 * @param bridgeMm   finest bridge that the mesh holds, counted
 * @param mends      places to be widened, on the panel's page
 * @param trapMm     overlap wanted where layers meet; 0: not asked
 */
public record RecipeFacts(ScreeningRecipe screening, String courseLayer, ToneFacts tone, String processKey, TonerSide tonerSide, MirrorRule mirror,
        double openMm, double bridgeMm, List<PictureMending.Wanted> mends, double trapMm) {
    public RecipeFacts {
        Objects.requireNonNull(screening, "screening");
        Objects.requireNonNull(courseLayer, "courseLayer");
        Objects.requireNonNull(tone, "tone");
        Require.text("processKey", processKey);
        Objects.requireNonNull(tonerSide, "tonerSide");
        Objects.requireNonNull(mirror, "mirror");
        Require.within("openMm", openMm, 0, 10);
        Require.within("bridgeMm", bridgeMm, 0, 10);
        mends = List.copyOf(mends);
        Require.within("trapMm", trapMm, 0, 3);
    }
}
