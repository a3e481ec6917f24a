package saddlebar.cartoon.opening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;

class TemplateSurveyTest {
    private static List<SurveyPoint> circle(int count, double radius) {
        List<SurveyPoint> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            points.add(SurveyPoint.smooth(600 + radius * Math.cos(2 * Math.PI * i / count), 600 + radius * Math.sin(2 * Math.PI * i / count)));
        }
        return points;
    }

    private static List<String> codes(Template template) {
        return template.problems().stream().map(Problem::code).toList();
    }

    private static double area(DrawnLine line) {
        double area = 0;
        for (int i = 0; i < line.points(); i++) {
            int next = (i + 1) % line.points();
            area += line.x(i) * line.y(next) - line.x(next) * line.y(i);
        }
        return Math.abs(area) / 2;
    }

    /**
     * Twelve points of a circle of 500 mm: the spline stays within 0.2 mm of it, twenty-four within 0.02; the error falls with the fourth power of
     * the spacing.
     */
    @Test
    void circleThroughPoints() {
        double twelve = farthest(TemplateSurvey.of("round", circle(12, 500), 0.001).outline());
        double twentyFour = farthest(TemplateSurvey.of("round", circle(24, 500), 0.001).outline());
        assertTrue(twelve < 0.2, "twelve " + twelve);
        assertTrue(twentyFour < 0.02 && twentyFour < twelve / 10, "twenty-four " + twentyFour);
    }

    private static double farthest(DrawnLine line) {
        double worst = 0;
        for (int i = 0; i < line.points(); i++) {
            worst = Math.max(worst, Math.abs(Math.hypot(line.x(i) - 600, line.y(i) - 600) - 500));
        }
        return worst;
    }

    /** A lancet taken at points, corners at sill, springing and apex: as the arch itself within half a millimetre of its edge. */
    @Test
    void archWithCorners() {
        OpeningShape arch = ArchedOpenings.pointed(600, 800, 700);
        List<SurveyPoint> points = new ArrayList<>();
        for (Edge edge : arch.edges()) {
            points.add(SurveyPoint.corner(edge.start().xMm(), edge.start().yMm()));
            if (edge instanceof ArcEdge arc) {
                List<saddlebar.model.problem.PlaceMm> along = arc.points(6);
                along.subList(1, along.size()).forEach(p -> points.add(SurveyPoint.smooth(p.xMm(), p.yMm())));
            }
        }
        points.add(points.get(0));
        Template template = TemplateSurvey.of("lancet", points, 0.01);
        assertEquals(arch.areaMm2(), area(template.outline()), 0.5 * arch.perimeterMm());
        assertEquals(List.of(), codes(template));
        assertEquals(0, template.misclosureMm().orElseThrow(), 0);
    }

    /** Bowditch: a tape that drifts evenly by 6 mm along the round gives the true round back, and the drift is told. */
    @Test
    void misclosureIsSpread() {
        List<SurveyPoint> drifted = new ArrayList<>();
        int count = 36;
        for (int i = 0; i <= count; i++) {
            double turn = 2 * Math.PI * i / count;
            drifted.add(SurveyPoint.smooth(600 + 500 * Math.cos(turn) + 6.0 * i / count, 600 + 500 * Math.sin(turn)));
        }
        Template template = TemplateSurvey.of("round", drifted, 0.01);
        assertEquals(6, template.misclosureMm().orElseThrow(), 1e-9);
        assertTrue(codes(template).contains("misclosure"));
        assertTrue(farthest(template.outline()) < 0.1, "farthest " + farthest(template.outline()));
    }

    @Property
    void passesThroughEveryPoint(@ForAll @IntRange(min = 5, max = 60) int count, @ForAll @IntRange(min = 0, max = 999) int seed) {
        var random = new java.util.Random(seed);
        List<SurveyPoint> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double r = 400 + 150 * random.nextDouble();
            points.add(new SurveyPoint(r * Math.cos(6.283 * i / count), r * Math.sin(6.283 * i / count), random.nextInt(5) == 0));
        }
        DrawnLine line = TemplateSurvey.of("free", points, 0.5).outline();
        for (SurveyPoint point : points) {
            double nearest = Double.MAX_VALUE;
            for (int i = 0; i < line.points(); i++) {
                nearest = Math.min(nearest, Math.hypot(line.x(i) - point.xMm(), line.y(i) - point.yMm()));
            }
            assertTrue(nearest < 1e-9, "missed " + point);
        }
    }

    @Test
    void whatIsWrongIsTold() {
        List<SurveyPoint> points = circle(24, 500);
        assertTrue(codes(TemplateSurvey.of("round", points, 0.1)).contains("no-closing-reading"));
        points.subList(5, 10).clear();
        assertTrue(codes(TemplateSurvey.of("round", points, 0.1)).contains("wide-gap"));
        List<SurveyPoint> twice = circle(24, 500);
        twice.add(7, twice.get(6));
        Template template = TemplateSurvey.of("round", twice, 0.1);
        assertTrue(codes(template).contains("point-twice"));
        assertTrue(farthest(template.outline()) < 0.1);
        List<SurveyPoint> crossed = circle(24, 500);
        SurveyPoint moved = crossed.remove(3);
        crossed.add(15, moved);
        assertEquals("outline-crosses", codes(TemplateSurvey.of("round", crossed, 0.1)).get(0));
        assertFalse(codes(TemplateSurvey.of("round", circle(24, 500), 0.1)).contains("outline-crosses"));
    }

    @Test
    void tooFewPointsAreRefused() {
        assertThrows(Refusal.class, () -> TemplateSurvey.of("round", circle(2, 500), 0.1));
        List<SurveyPoint> same = List.of(SurveyPoint.smooth(1, 1), SurveyPoint.smooth(1, 1), SurveyPoint.smooth(1, 1), SurveyPoint.smooth(5, 1));
        assertThrows(Refusal.class, () -> TemplateSurvey.of("round", same, 0.1));
    }
}
