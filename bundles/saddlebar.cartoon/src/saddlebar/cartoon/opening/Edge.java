package saddlebar.cartoon.opening;

import java.util.List;

import saddlebar.model.problem.PlaceMm;

/** One straight or round stretch of an opening's outline, with a direction. */
public sealed interface Edge permits StraightEdge, ArcEdge {
    PlaceMm start();

    PlaceMm end();

    double lengthMm();

    /** Half the integral of x dy - y dx along it: over a closed outline these add up to the area, positive where x turns towards y. */
    double sweptMm2();

    /** Points from the start to before the end, nowhere further from the edge than the tolerance. */
    List<PlaceMm> points(double toleranceMm);

    /** The mirror image in the upright line x = {@code atMm}, run through backwards: the other half of a symmetrical outline. */
    Edge mirrored(double atMm);
}
