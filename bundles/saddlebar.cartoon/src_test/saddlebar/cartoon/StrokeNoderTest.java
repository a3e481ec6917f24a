package saddlebar.cartoon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.FastNodingValidator;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;

import saddlebar.model.work.Work;

/** Noding only what is near other lines gives what the library gives for all of it, and the library's validator finds it noded. */
class StrokeNoderTest {
    @Property(tries = 20)
    void cells(@ForAll @LongRange(min = 0, max = 1_000_000) long seed, @ForAll @IntRange(min = 2, max = 6) int across) {
        assertSameAsLibrary(CutlineGuard.strokes(Drawings.cells(across, 300, 300, 15, 0.5, seed)));
    }

    /** Scribbles: strokes that run over each other and themselves, with steps from below the grid to 30 mm. */
    @Property(tries = 40)
    void scribbles(@ForAll @LongRange(min = 0, max = 1_000_000) long seed, @ForAll @IntRange(min = 1, max = 12) int strokes) {
        var random = new Random(seed);
        List<Stroke> drawn = new ArrayList<>();
        for (int i = 0; i < strokes; i++) {
            Coordinate[] points = new Coordinate[2 + random.nextInt(40)];
            double x = 100 * random.nextDouble();
            double y = 100 * random.nextDouble();
            double heading = 7 * random.nextDouble();
            for (int k = 0; k < points.length; k++) {
                points[k] = new Coordinate(x, y);
                double step = 30 * Math.pow(random.nextDouble(), 6) + 1e-4;
                heading += random.nextInt(12) == 0 ? Math.PI : 0.8 * (random.nextDouble() - 0.5);
                x += step * Math.cos(heading);
                y += step * Math.sin(heading);
            }
            drawn.add(new Stroke(i, points));
        }
        assertSameAsLibrary(drawn);
    }

    private static void assertSameAsLibrary(List<Stroke> strokes) {
        List<NodedSegmentString> all = new ArrayList<>();
        strokes.forEach(stroke -> all.add(new NodedSegmentString(stroke.points(), null)));
        var library = new SnapRoundingNoder(new PrecisionModel(1000));
        library.computeNodes(all);
        Set<String> theirs = new TreeSet<>();
        for (Object part : (Collection<?>) library.getNodedSubstrings()) {
            addSegments(((SegmentString) part).getCoordinates(), theirs);
        }
        List<Stroke> noded = StrokeNoder.noded(strokes, 0.001, Work.UNWATCHED);
        Set<String> ours = new TreeSet<>();
        for (Stroke part : noded) {
            addSegments(part.points(), ours);
        }
        assertEquals(theirs, ours);
        var net = CutNet.of(strokes, 0.001, Work.UNWATCHED);
        List<NodedSegmentString> edges = new ArrayList<>();
        net.edges().forEach(edge -> edges.add(new NodedSegmentString(edge.line().getCoordinates(), null)));
        var validator = new FastNodingValidator(edges);
        assertTrue(validator.isValid(), () -> validator.getErrorMessage());
        assertEquals(ours.size(), net.edges().stream().mapToInt(edge -> edge.line().getNumPoints() - 1).sum(), "a step is in one edge only");
    }

    private static void addSegments(Coordinate[] points, Set<String> segments) {
        for (int i = 0; i + 1 < points.length; i++) {
            boolean ascending = points[i].compareTo(points[i + 1]) < 0;
            segments.add(points[ascending ? i : i + 1] + " " + points[ascending ? i + 1 : i]);
        }
    }
}
