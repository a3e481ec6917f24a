package saddlebar.cartoon.opening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.PlaceMm;
import saddlebar.model.problem.Refusal;

/** Areas and lengths in closed form: sectors of circles and triangles, as in any drawing book. */
class OpeningShapesTest {
    private static final double PI = Math.PI;
    private static final double SQRT3 = Math.sqrt(3);

    static List<OpeningShape> shapes() {
        return List.of(ArchedOpenings.segmental(900, 1200, 150), ArchedOpenings.semicircular(900, 1200), ArchedOpenings.equilateral(900, 1200),
                ArchedOpenings.pointed(900, 1200, 600), ArchedOpenings.pointed(600, 1500, 900), ArchedOpenings.threeCentred(1200, 900, 400),
                ArchedOpenings.ogee(800, 1000, 600), ArchedOpenings.semicircular(700, 0), RoundOpenings.roundel(500), RoundOpenings.quatrefoil(800),
                RoundOpenings.foils(3, 800), RoundOpenings.foils(5, 800), RoundOpenings.rectangle(400, 900));
    }

    private static double head(OpeningShape shape, double spanMm, double jambMm) {
        return shape.areaMm2() - spanMm * jambMm;
    }

    @Test
    void semicircular() {
        OpeningShape shape = ArchedOpenings.semicircular(900, 1200);
        assertEquals(PI * 450 * 450 / 2, head(shape, 900, 1200), 1e-6);
        assertEquals(900 + 2 * 1200 + PI * 450, shape.perimeterMm(), 1e-9);
        assertEquals(450, shape.springingMm(), 0);
    }

    /**
     * Rise = half span times tan of a quarter of the arc: with 120 degrees of arc the rise is s/(2 sqrt 3), the radius s/sqrt 3, the head r^2 (pi/3 -
     * sqrt 3/4).
     */
    @Test
    void segmentalOf120Degrees() {
        double span = 1000;
        double radius = span / SQRT3;
        OpeningShape shape = ArchedOpenings.segmental(span, 500, span / (2 * SQRT3));
        assertEquals(radius, ((ArcEdge) shape.edges().get(1)).radiusMm(), 1e-9);
        assertEquals(120, ((ArcEdge) shape.edges().get(1)).sweepDeg(), 1e-9);
        assertEquals(radius * radius * (PI / 3 - SQRT3 / 4), head(shape, span, 500), 1e-6);
        assertEquals(span + 1000 + radius * 2 * PI / 3, shape.perimeterMm(), 1e-9);
    }

    /** Two sectors of 60 degrees less the triangle they share: s^2 (pi/3 - sqrt 3/4); each arc is pi/3 s long. */
    @Test
    void equilateral() {
        OpeningShape shape = ArchedOpenings.equilateral(900, 1200);
        assertEquals("equilateral", shape.name());
        assertEquals(900 * 900 * (PI / 3 - SQRT3 / 4), head(shape, 900, 1200), 1e-6);
        assertEquals(900 + 2400 + 2 * 900 * PI / 3, shape.perimeterMm(), 1e-9);
        assertEquals(900 * SQRT3 / 2, shape.springingMm(), 1e-9);
    }

    /**
     * A 3-4-5 lancet: span 2, rise 2, hence radius (1 + 4)/2 = 2.5, centre 1.5 beyond the axis; half a head = sector r^2 atan(4/3)/2 less the
     * triangle 1.5 x 2 / 2.
     */
    @Test
    void lancetOf345() {
        OpeningShape shape = ArchedOpenings.pointed(200, 300, 200);
        assertEquals("lancet", shape.name());
        ArcEdge left = (ArcEdge) shape.edges().get(1);
        assertEquals(250, left.radiusMm(), 1e-9);
        assertEquals(250, left.centre().xMm(), 1e-9);
        double half = 250 * 250 * Math.atan2(4, 3) / 2 - 150 * 200 / 2.0;
        assertEquals(2 * half, head(shape, 200, 300), 1e-6);
    }

    @Test
    void dropBelowTheEquilateral() {
        OpeningShape shape = ArchedOpenings.pointed(900, 0, 600);
        assertEquals("drop", shape.name());
        assertTrue(((ArcEdge) shape.edges().get(0)).radiusMm() < 900);
    }

    /**
     * Huygens: with d = (s/2 - h)/(sqrt 3 - 1), radii s/2 - d and s/2 + d, arcs of 60 degrees; head = two sectors + crown's sector less the triangle
     * under the springing line.
     */
    @Test
    void threeCentred() {
        double span = 1200;
        double rise = 400;
        double d = (span / 2 - rise) / (SQRT3 - 1);
        double small = span / 2 - d;
        double large = span / 2 + d;
        OpeningShape shape = ArchedOpenings.threeCentred(span, 900, rise);
        assertEquals(2 * PI / 6 * small * small + PI / 6 * large * large - d * d * SQRT3, head(shape, span, 900), 1e-6);
        assertEquals(span + 1800 + PI / 3 * (2 * small + large), shape.perimeterMm(), 1e-9);
        assertEquals(0, top(shape), 2e-4);
    }

    /** Each side is an S with point symmetry: the head is half of its box, s h / 2. With h = s/2 the arcs are quarter circles of s/4. */
    @ParameterizedTest
    @CsvSource({"800,400", "800,600", "500,1200"})
    void ogee(double span, double rise) {
        OpeningShape shape = ArchedOpenings.ogee(span, 1000, rise);
        assertEquals(span * rise / 2, head(shape, span, 1000), 1e-6);
        if (rise == span / 2) {
            assertEquals(span / 4, ((ArcEdge) shape.edges().get(1)).radiusMm(), 1e-9);
            assertEquals(90, ((ArcEdge) shape.edges().get(1)).sweepDeg(), 1e-9);
        }
    }

    /** A square of 2 r with semicircles on its sides: 4 r^2 + 2 pi r^2, edge 4 pi r. */
    @Test
    void roundelAndQuatrefoil() {
        assertEquals(PI * 250 * 250, RoundOpenings.roundel(500).areaMm2(), 1e-6);
        assertEquals(PI * 500, RoundOpenings.roundel(500).perimeterMm(), 1e-9);
        OpeningShape four = RoundOpenings.quatrefoil(800);
        assertEquals(4 * 200 * 200 + 2 * PI * 200 * 200, four.areaMm2(), 1e-6);
        assertEquals(4 * PI * 200, four.perimeterMm(), 1e-9);
    }

    /** Three semicircles on the sides 2 r of a triangle: sqrt 3 r^2 + 3/2 pi r^2, all within a circle of r (1 + 1/sqrt 3). */
    @Test
    void trefoil() {
        double r = 400 / (1 + 1 / SQRT3);
        assertEquals(SQRT3 * r * r + 1.5 * PI * r * r, RoundOpenings.foils(3, 800).areaMm2(), 1e-6);
    }

    /**
     * Curves that should flow do: the direction does not turn at joins of a basket handle, at springings, and between round and hollow of an ogee.
     */
    @Test
    void tangentWhereTheyShouldBe() {
        for (OpeningShape shape : List.of(ArchedOpenings.threeCentred(1200, 900, 400), ArchedOpenings.ogee(800, 1000, 600),
                ArchedOpenings.semicircular(900, 1200))) {
            int arcs = (int) shape.edges().stream().filter(ArcEdge.class::isInstance).count();
            for (int i = 0; i <= arcs; i++) {
                boolean apex = shape.name().equals("ogee") && i == 2;
                double turn = turnDeg(shape.edges().get(i), shape.edges().get(i + 1));
                assertEquals(apex ? 180 : 0, turn, 1e-6, shape.name() + " at edge " + i);
            }
        }
    }

    private static double turnDeg(Edge before, Edge after) {
        double deg = Math.abs(directionDeg(after, true) - directionDeg(before, false)) % 360;
        return Math.min(deg, 360 - deg);
    }

    private static double directionDeg(Edge edge, boolean atStart) {
        if (edge instanceof ArcEdge arc) {
            return (atStart ? arc.fromDeg() : arc.fromDeg() + arc.sweepDeg()) + (arc.sweepDeg() > 0 ? 90 : -90);
        }
        PlaceMm a = edge.start();
        PlaceMm b = edge.end();
        return Math.toDegrees(Math.atan2(b.yMm() - a.yMm(), b.xMm() - a.xMm()));
    }

    private static double top(OpeningShape shape) {
        DrawnLine line = shape.line(0.0001);
        double top = Double.MAX_VALUE;
        for (int i = 0; i < line.points(); i++) {
            top = Math.min(top, line.y(i));
        }
        return top;
    }

    /** Steps lie on the true edge and lose no more than the tolerance: area by the steps against area in closed form; box from 0. */
    @ParameterizedTest
    @MethodSource("shapes")
    void stepsAreNear(OpeningShape shape) {
        for (double tolerance : new double[] {0.001, 0.1, 2}) {
            DrawnLine line = shape.line(tolerance);
            double area = 0;
            for (int i = 0; i < line.points(); i++) {
                int next = (i + 1) % line.points();
                area += line.x(i) * line.y(next) - line.x(next) * line.y(i);
            }
            assertEquals(shape.areaMm2(), Math.abs(area) / 2, tolerance * shape.perimeterMm() + 1e-6, shape.name());
            if (tolerance < 0.01) {
                double left = Double.MAX_VALUE;
                for (int i = 0; i < line.points(); i++) {
                    left = Math.min(left, line.x(i));
                }
                boolean narrow = shape.name().equals("trefoil") || shape.name().equals("cinquefoil"); // these stand within their circle
                assertTrue(narrow ? left > 0 : Math.abs(left) < 0.01, shape.name() + " left " + left);
                assertEquals(0, top(shape), 0.01, shape.name());
            }
        }
    }

    @Property
    void pointedGoesThroughItsPoints(@ForAll @DoubleRange(min = 100, max = 3000) double span, @ForAll @DoubleRange(min = 0.51,
            max = 3) double share) {
        OpeningShape shape = ArchedOpenings.pointed(span, 100, share * span);
        PlaceMm apex = shape.edges().get(1).end();
        assertEquals(span / 2, apex.xMm(), 1e-8 * span);
        assertEquals(0, apex.yMm(), 1e-8 * span);
        PlaceMm springing = shape.edges().get(1).start();
        assertEquals(0, springing.xMm(), 1e-8 * span);
        assertEquals(share * span, springing.yMm(), 1e-8 * span);
    }

    /**
     * The family hangs together: a segmental arch near half the span is the semicircle, so is the pointed one just above, and the basket handle just
     * below.
     */
    @Test
    void limitsMeetInTheSemicircle() {
        double half = PI * 500 * 500 / 2;
        assertEquals(half, ArchedOpenings.segmental(1000, 0, 499.999).areaMm2(), 2);
        assertEquals(half, ArchedOpenings.pointed(1000, 0, 500.001).areaMm2(), 2);
        assertEquals(half, ArchedOpenings.threeCentred(1000, 0, 499.999).areaMm2(), 2);
    }

    @Test
    void impossibleRisesAreRefused() {
        assertThrows(Refusal.class, () -> ArchedOpenings.segmental(900, 0, 450));
        assertThrows(Refusal.class, () -> ArchedOpenings.pointed(900, 0, 450));
        assertThrows(Refusal.class, () -> ArchedOpenings.threeCentred(900, 0, 450));
        assertThrows(Refusal.class, () -> ArchedOpenings.threeCentred(900, 0, 100));
        assertThrows(Refusal.class, () -> ArchedOpenings.ogee(900, 0, 449));
        assertThrows(IllegalArgumentException.class, () -> ArchedOpenings.segmental(Double.NaN, 0, 100));
    }
}
