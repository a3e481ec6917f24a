package saddlebar.nesting.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

import saddlebar.nesting.search.Chance;

/** JTS is the reference: whether one polygon covers another, how far apart their lines are. */
class GuardTest {
    @Property(tries = 200)
    void holdsWhatItGuardsWithNoMoreCornersAndLittleMoreArea(@ForAll @IntRange(min = 0, max = 1_000_000) int seed) {
        Polygon wavy = wavy(new Chance(seed));
        Polygon guard = Guard.of(wavy);
        assertTrue(guard.isValid());
        assertTrue(wavy.difference(guard).getArea() <= 1e-9 * wavy.getArea(), "all of it is inside");
        assertTrue(guard.getArea() <= 1.06 * wavy.getArea(), () -> guard.getArea() + " for " + wavy.getArea());
        assertTrue(guard.getNumPoints() <= wavy.getNumPoints(), "steep waves of few steps may keep all");
    }

    /**
     * Drawing out an edge of a regular polygon of n corners about a circle of radius r raises it by r tan(pi / n)^2 or so; the tolerance of
     * 0.002 of the root of the area is reached below 50 corners. Arithmetic, no source needed.
     */
    @Test
    void aRoundOneOf200CornersKeepsAFourth() {
        Polygon round = (Polygon) new GeometryFactory().createPoint(new Coordinate(3, 4)).buffer(50, 50);
        assertEquals(201, round.getNumPoints());
        assertTrue(Guard.of(round).getNumPoints() <= 51, () -> "keeps " + Guard.of(round).getNumPoints());
    }

    @Test
    void fewCornersAreLeftAlone() {
        Polygon square = (Polygon) new GeometryFactory().toGeometry(new Envelope(0, 1, 0, 1));
        assertEquals(square, Guard.of(square));
    }

    /** The convex parts of a polygon add up to it, and each is convex. */
    @Property(tries = 100)
    void convexPartsAddUp(@ForAll @IntRange(min = 0, max = 1_000_000) int seed) {
        Polygon wavy = Guard.of(wavy(new Chance(seed)));
        double sum = 0;
        for (Coordinate[] part : ConvexParts.of(wavy)) {
            Coordinate[] closed = Arrays.copyOf(part, part.length + 1);
            closed[part.length] = part[0];
            Polygon p = new GeometryFactory().createPolygon(closed);
            assertEquals(p.convexHull().getArea(), p.getArea(), 1e-9 * p.getArea());
            sum += p.getArea();
        }
        assertEquals(wavy.getArea(), sum, 1e-9 * sum);
    }

    /** Two shapes overlap in the table exactly when JTS says that they do; deep inside the depth is near the true one. */
    @Property(tries = 100)
    void tablesAgreeWithJts(@ForAll @IntRange(min = 0, max = 1_000_000) int seed) {
        Chance chance = new Chance(seed);
        Polygon a = Guard.of(wavy(chance));
        Polygon b = Guard.of(wavy(chance));
        double gap = chance.below(2) == 0 ? 0 : 4;
        Shape still = new Shape(0, 0, a, a.getEnvelopeInternal());
        Shape moved = new Shape(1, 0, b, b.getEnvelopeInternal());
        PairTable table = PairTableBuilder.build(still, moved, gap, 64);
        for (int k = 0; k < 50; k++) {
            double x = chance.between(-150, 150);
            double y = chance.between(-150, 150);
            Polygon there = (Polygon) AffineTransformation.translationInstance(x, y).transform(b);
            double distance = a.distance(there);
            boolean overlaps = table.overlaps(x, y);
            if (distance < gap - 1e-6 || gap == 0 && a.intersection(there).getArea() > 1e-6) {
                assertTrue(overlaps, () -> "missed an overlap at " + x + " " + y);
                assertTrue(table.depth(x, y) > 0);
            } else if (distance > gap * 1.03 + 1e-6) { // round corners are kept within 2 % of the gap, sharp ones of the parts a little more
                assertTrue(!overlaps || gap > 0 && distance < gap * 1.5, () -> "saw an overlap at " + distance);
            }
            assertEquals(overlaps, table.depth(x, y) > 0);
        }
    }

    private static Polygon wavy(Chance chance) {
        int n = 40 + chance.below(160);
        double wave = chance.between(0, 0.45); // at 0.5 the line would touch itself in the middle
        int waves = 2 + chance.below(5);
        Coordinate[] ring = new Coordinate[n + 1];
        for (int i = 0; i < n; i++) {
            double angle = 2 * Math.PI * i / n;
            double radius = 50 * (1 - wave + wave * Math.sin(waves * angle));
            ring[i] = new Coordinate(radius * Math.cos(angle), radius * 0.7 * Math.sin(angle));
        }
        ring[n] = ring[0].copy();
        return new GeometryFactory().createPolygon(ring);
    }

}
