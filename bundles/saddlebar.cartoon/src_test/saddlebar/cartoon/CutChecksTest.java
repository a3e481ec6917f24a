package saddlebar.cartoon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Polygon;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.PlaceMm;
import saddlebar.model.problem.Problem;
import saddlebar.model.work.Work;

/** What a cutter cannot do, each with a shape whose figure follows from elementary geometry; the limits are common practice, no source. */
class CutChecksTest {
    private static RingPath ring(double... xy) {
        Cartoon cartoon = Drawings.make(Drawings.closed("piece", xy));
        assertEquals(1, cartoon.pieces().size());
        return new Boundary(cartoon.pieces().get(0).face()).rings().get(0);
    }

    private static void assertPlace(double x, double y, double tolerance, Problem problem) {
        PlaceMm at = problem.at().orElseThrow();
        assertEquals(x, at.xMm(), tolerance, problem.message());
        assertEquals(y, at.yMm(), tolerance, problem.message());
    }

    private static List<String> shapeCodes(Cartoon cartoon) {
        return Drawings.codes(cartoon).stream().filter(code -> !code.equals(CutlineProblems.HINGE)).toList();
    }

    // ---- needle points

    @ParameterizedTest
    @CsvSource({"10, true", "19, true", "21, false", "29, false"})
    void needlePoint(double angleDeg, boolean hard) {
        double half = 100 * Math.tan(Math.toRadians(angleDeg / 2));
        Cartoon cartoon = Drawings.make(Drawings.closed("wedge", 0, 0, 100, -half, 100, half));
        Problem problem = Drawings.problems(cartoon, CutlineProblems.NEEDLE_POINT).get(0);
        assertPlace(0, 0, 1e-9, problem);
        assertTrue(problem.message().contains(Math.round(angleDeg) + " degrees"), problem.message());
        assertEquals(hard, problem.message().contains("not easy"), problem.message());
        assertEquals(List.of(CutlineProblems.NEEDLE_POINT), shapeCodes(cartoon)); // and the tip is not called narrow as well
    }

    @ParameterizedTest
    @ValueSource(doubles = {31, 45, 60, 90})
    void bluntCornersAreNone(double angleDeg) {
        double half = 100 * Math.tan(Math.toRadians(angleDeg / 2));
        assertEquals(List.of(), shapeCodes(Drawings.make(Drawings.closed("wedge", 0, 0, 100, -half, 100, half))));
    }

    /** Two arcs of radius 100 about (0, +-95): they meet at 2 acos(95/100) = 36.4 degrees, less 2/100 rad on 2 mm of chord: 35.2; the
     * flattened steps are 2.8 mm long and take 2.8/100 rad: 34.8. */
    @Test
    void angleBetweenCurves() {
        double a = Math.toDegrees(Math.asin(0.95));
        double[] upper = Drawings.arc(0, -95, 100, 100, a, 180 - a);
        double[] lower = Drawings.arc(0, 95, 100, 100, 180 + a, 360 - a);
        RingPath lens = ring(Drawings.joined(upper, Arrays.copyOfRange(lower, 2, lower.length - 2)));
        double least = 360;
        for (int i = 0; i < lens.size(); i++) {
            least = Math.min(least, NeedlePoints.interiorAngleDeg(lens, i, NeedlePoints.WINDOW_MM));
        }
        assertEquals(2 * Math.toDegrees(Math.acos(0.95)) - Math.toDegrees(2.8 / 100), least, 0.1);
    }

    // ---- inside curves

    /** A semicircular notch of chord 20 in a straight edge: depth 10, ratio 0.5, radius 10. */
    @Test
    void semicircleNotch() {
        double[] notch = Drawings.arc(50, 0, 10, 10, 180, 0);
        RingPath ring = ring(Drawings.joined(new double[] {0, 0}, notch, new double[] {100, 0, 100, 60, 0, 60}));
        List<InsideCurves.Bay> bays = InsideCurves.bays(ring, 0.25, 6);
        assertEquals(1, bays.size());
        assertEquals(0.5, bays.get(0).ratio(), 0.002);
        assertEquals(20, bays.get(0).chordMm(), 0.01);
        assertEquals(50, bays.get(0).x(), 1);
        assertEquals(10, bays.get(0).y(), 0.01);
        assertEquals(List.of(), InsideCurves.tight(ring, 6));
    }

    @ParameterizedTest
    @CsvSource({"0.2, false, false", "0.24, false, false", "0.26, true, false", "0.4, true, false", "0.6, true, true", "1, true, true"})
    void notchByDepth(double ratio, boolean flagged, boolean hard) {
        // half an ellipse of 40 mm chord: its ends are square to the edge, so depth and chord are its half axes
        double[] notch = Drawings.arc(60, 0, 20, 40 * ratio, 180, 0);
        Cartoon cartoon = Drawings.make(Drawings.closed("piece", Drawings.joined(new double[] {0, 0}, notch,
                new double[] {120, 0, 120, 90, 0, 90})));
        List<Problem> deep = Drawings.problems(cartoon, CutlineProblems.DEEP_INSIDE_CURVE);
        assertEquals(flagged ? 1 : 0, deep.size());
        if (flagged) {
            assertPlace(60, 40 * ratio, 1, deep.get(0));
            assertEquals(hard, deep.get(0).message().contains("ring saw"), deep.get(0).message());
            assertEquals(!hard, deep.get(0).message().contains("relief cuts"), deep.get(0).message());
        }
    }

    /** A long straight arm must not hide the hook at its end: half a circle of radius 12 whose one end runs on straight for 200 mm. */
    @Test
    void hookAtTheEndOfALongArm() {
        double[] hook = Drawings.arc(0, 12, 12, 12, 90, 270);
        double[] outside = Drawings.arc(0, 12, 30, 30, 270, 90);
        RingPath ring = ring(Drawings.joined(new double[] {200, 0, 200, -18}, outside, hook));
        List<InsideCurves.Bay> bays = InsideCurves.bays(ring, 0.25, 6);
        assertEquals(1, bays.size());
        assertEquals(0.5, bays.get(0).ratio(), 0.02);
    }

    @ParameterizedTest
    @CsvSource({"2, true", "4, true", "5.5, true", "6.5, false", "10, false", "50, false"})
    void insideRadius(double radius, boolean flagged) {
        Cartoon cartoon = Drawings.make(Drawings.closed("ell", Drawings.joined(new double[] {0, 0, 160, 0, 160, 80},
                Drawings.arc(80 + radius, 80 + radius, radius, radius, 270, 180), new double[] {80, 160, 0, 160})));
        List<Problem> tight = Drawings.problems(cartoon, CutlineProblems.TIGHT_INSIDE_CURVE);
        assertEquals(flagged ? 1 : 0, tight.size(), cartoon.problems().toString());
        if (flagged) {
            double middle = 80 + radius * (1 - Math.sqrt(0.5));
            assertPlace(middle, middle, 3, tight.get(0));
        }
    }

    // ---- narrow places

    /** Two half discs of radius 30 joined by a waist between arcs of radius 20 about (0, +-22): 4 mm wide at (0, 0). */
    @Test
    void neckBetweenCurves() {
        double[] top = Drawings.arc(0, -22, 20, 20, 180, 0);
        double[] bottom = Drawings.arc(0, 22, 20, 20, 0, -180);
        Cartoon cartoon = Drawings.make(Drawings.closed("waist", Drawings.joined(new double[] {-50, -22}, top,
                new double[] {50, -22, 50, 22}, bottom, new double[] {-50, 22})));
        List<Problem> narrow = Drawings.problems(cartoon, CutlineProblems.NARROW);
        assertEquals(1, narrow.size());
        assertPlace(0, 0, 1.5, narrow.get(0));
        Polygon face = cartoon.pieces().get(0).face();
        double width = NarrowPlaces.of(new Boundary(face), 5, 30, List.of()).get(0).widthMm();
        assertEquals(4, width, 0.02); // flattening takes up to 0.01 mm off each arc
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "3, 1", "4.9, 1", "5.1, 0", "8, 0"})
    void neckBetweenCorners(double width, int told) {
        double half = width / 2;
        Cartoon cartoon = Drawings.make(Drawings.closed("hourglass", 0, 0, 60, 0, 30 + half, 40, 60, 80, 0, 80, 30 - half, 40));
        List<Problem> narrow = Drawings.problems(cartoon, CutlineProblems.NARROW);
        assertEquals(told, narrow.size(), cartoon.problems().toString());
        if (told == 1) {
            assertPlace(30, 40, 1e-3, narrow.get(0));
            Polygon face = cartoon.pieces().get(0).face();
            assertEquals(width, NarrowPlaces.of(new Boundary(face), 5, 30, List.of()).get(0).widthMm(), 1e-3);
        }
    }

    /** A corner turned inwards that comes near a straight edge, at every angle: the width is the distance of the corner to the edge. */
    @ParameterizedTest
    @ValueSource(ints = {0, 7, 20, 33, 45, 61, 80, 90})
    void neckBetweenCornerAndEdge(int turnDeg) {
        double[] xy = {0, 0, 100, 0, 100, 80, 60, 80, 50, 3, 30, 80, 0, 80};
        double cos = Math.cos(Math.toRadians(turnDeg));
        double sin = Math.sin(Math.toRadians(turnDeg));
        double[] turned = new double[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            turned[i] = cos * xy[i] - sin * xy[i + 1];
            turned[i + 1] = sin * xy[i] + cos * xy[i + 1];
        }
        Polygon face = Drawings.make(Drawings.closed("piece", turned)).pieces().get(0).face();
        List<NarrowPlaces.Narrow> narrow = NarrowPlaces.of(new Boundary(face), 5, 30, List.of());
        assertEquals(1, narrow.size());
        assertEquals(3, narrow.get(0).widthMm(), 0.002); // the grid moves corners by up to 0.0007
    }

    @Test
    void tailAndStrip() {
        Cartoon tail = Drawings.make(Drawings.closed("tail", 0, 0, 40, 0, 40, 18, 80, 18, 80, 22, 40, 22, 40, 40, 0, 40));
        assertEquals(1, Drawings.problems(tail, CutlineProblems.NARROW).size());
        assertTrue(Drawings.problems(tail, CutlineProblems.NARROW).get(0).message().contains("4.0 mm"));
        Cartoon strip = Drawings.make(Drawings.rectangle("strip", 0, 0, 100, 4.2));
        Problem whole = Drawings.problems(strip, CutlineProblems.NARROW).get(0);
        assertTrue(whole.message().contains("nowhere wider than 4.2 mm"), whole.message());
        assertEquals(List.of(), shapeCodes(Drawings.make(Drawings.rectangle("wide", 0, 0, 100, 5.2))));
    }

    @Test
    void slivers() {
        Cartoon thin = Drawings.make(Drawings.rectangle("thin", 0, 0, 60, 1.5));
        assertEquals(List.of(CutlineProblems.SLIVER), shapeCodes(thin));
        Cartoon small = Drawings.make(Drawings.rectangle("small", 0, 0, 4, 4));
        assertEquals(List.of(CutlineProblems.SLIVER), shapeCodes(small));
    }

    // ---- nothing to tell

    /** Flattened curves have no corners, no tight places and no necks. */
    @ParameterizedTest
    @CsvSource({"10, 10", "50, 50", "300, 300", "60, 20", "200, 40", "15, 9"})
    void roundShapesAreQuiet(double rx, double ry) {
        assertEquals(List.of(), shapeCodes(Drawings.make(Drawings.ellipse("round", 400, 400, rx, ry))));
    }

    /** Between a round piece and the square round it the hole is told, and nothing of its curve. */
    @ParameterizedTest
    @ValueSource(doubles = {8, 20, 90})
    void roundHolesHaveNoTightPlaces(double radius) {
        Cartoon cartoon = Drawings.make(Drawings.rectangle("frame", 0, 0, 200, 200), Drawings.circle("round", 100, 100, radius));
        assertEquals(List.of(CutlineProblems.HOLE), shapeCodes(cartoon));
        assertTrue(cartoon.euler().holds());
        assertEquals(2, cartoon.euler().c());
    }

    /** Hair, water, hills: waves that a cutter follows. Least radius of a sine: period^2 / (4 pi^2 amplitude), here 12.7 mm and more. */
    @ParameterizedTest
    @CsvSource({"5, 50", "8, 80", "10, 120", "2, 40", "0.5, 20"})
    void naturalWavesAreQuiet(double amplitude, double period) {
        Cartoon cartoon = Drawings.make(Drawings.rectangle("frame", 0, 0, 400, 200), Drawings.line("a", Drawings.wave(0, 400, 70, amplitude, period)),
                Drawings.line("b", Drawings.wave(400, 0, 130, amplitude, period)));
        assertEquals(List.of(), shapeCodes(cartoon));
        assertEquals(3, cartoon.pieces().size());
    }

    /** A leaf: two arcs that meet at 36 degrees at either end is a shape that one cuts every day. */
    @Test
    void leafIsQuiet() {
        double a = Math.toDegrees(Math.asin(0.95));
        double[] upper = Drawings.arc(0, -95, 100, 100, a, 180 - a);
        double[] lower = Drawings.arc(0, 95, 100, 100, 180 + a, 360 - a);
        assertEquals(List.of(), shapeCodes(Drawings.make(
                Drawings.closed("leaf", Drawings.joined(upper, Arrays.copyOfRange(lower, 2, lower.length - 2))))));
    }

    /** Limits belong to the user: 0 switches a check off. */
    @Test
    void limitsAreTheUsers() {
        var off = CutLimits.commonPractice().withNeedle(0, 0).withNarrow(0).withInsideCurve(0, 0, 0).withSliver(0, 0).withHinge(0, 0);
        List<String> codes = codesWith(off, Drawings.closed("wedge", 0, 0, 100, -3, 60, 0, 100, 3));
        assertEquals(List.of(), codes);
        List<String> strict = codesWith(CutLimits.commonPractice().withNeedle(70, 20), Drawings.closed("wedge", 0, 0, 100, -55, 100, 55));
        assertEquals(List.of(CutlineProblems.NEEDLE_POINT, CutlineProblems.NEEDLE_POINT, CutlineProblems.NEEDLE_POINT), strict);
    }

    private static List<String> codesWith(CutLimits limits, DrawnLine line) {
        return Drawings.codes(CartoonMaker.make(List.of(line), CartoonSettings.defaults().withLimits(limits),
                Work.UNWATCHED));
    }
}
