package saddlebar.cartoon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ForkJoinPool;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.work.Work;

/** Whatever is drawn, the pieces tile the panel; see {@link Soundness}. */
class TilingTest {
    @Property(tries = 25)
    void grids(@ForAll @IntRange(min = 1, max = 9) int across, @ForAll @IntRange(min = 1, max = 9) int down,
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        var random = new Random(seed);
        double[] xs = places(across, 400, random);
        double[] ys = places(down, 300, random);
        List<DrawnLine> lines = new ArrayList<>();
        for (double x : xs) {
            lines.add(Drawings.line("v", x, 0, x, 300));
        }
        for (double y : ys) {
            lines.add(Drawings.line("h", 0, y, 400, y));
        }
        Cartoon cartoon = Drawings.make(lines);
        assertEquals(across * down, cartoon.pieces().size());
        assertEquals(new Euler((across + 1) * (down + 1), across * (down + 1) + down * (across + 1), across * down + 1, 1), cartoon.euler());
        assertEquals(400 * 300, cartoon.panelAreaMm2(), 1e-6);
        Soundness.assertSound(cartoon);
        for (CartoonPiece piece : cartoon.pieces()) {
            Envelope box = piece.face().getEnvelopeInternal();
            int sides = 4 - (box.getMinX() == 0 ? 1 : 0) - (box.getMaxX() == 400 ? 1 : 0) - (box.getMinY() == 0 ? 1 : 0)
                    - (box.getMaxY() == 300 ? 1 : 0);
            assertEquals(sides, piece.neighbours().size());
        }
    }

    /** Cuts of a length at least 12 apart, on whole hundredths. */
    private static double[] places(int parts, double length, Random random) {
        double[] places = new double[parts + 1];
        for (int i = 1; i < parts; i++) {
            places[i] = Math.round(100 * (i + 0.6 * (random.nextDouble() - 0.5)) * length / parts) / 100.0;
        }
        places[parts] = length;
        return places;
    }

    @Property(tries = 15)
    void cellsWithBentJoints(@ForAll @IntRange(min = 2, max = 7) int across, @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Cartoon cartoon = Drawings.make(Drawings.cells(across, 70 * across, 60 * across, 10, 0.3, seed));
        Soundness.assertSound(cartoon);
        assertTrue(cartoon.pieces().size() >= across * across - across, cartoon.pieces().size() + " pieces of " + across + " x " + across);
    }

    /** Chords across a disc: with k crossings inside, n chords make n + k + 1 pieces (no three through one point, by Euler's formula). */
    @Property(tries = 25)
    void chordsAcrossADisc(@ForAll @IntRange(min = 1, max = 12) int chords, @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        var random = new Random(seed);
        double[][] ends = new double[chords][];
        List<DrawnLine> lines = new ArrayList<>();
        lines.add(Drawings.circle("disc", 200, 200, 200));
        for (int i = 0; i < chords; i++) {
            double a = 2 * Math.PI * random.nextDouble();
            double b = a + Math.PI * (0.4 + 1.2 * random.nextDouble());
            ends[i] = new double[] {a, b};
            lines.add(Drawings.line("chord " + i, 200 + 200 * Math.cos(a), 200 + 200 * Math.sin(a),
                    200 + 200 * Math.cos(b), 200 + 200 * Math.sin(b)));
        }
        Cartoon cartoon = CartoonMaker.make(lines, CartoonSettings.defaults().withMending(0.5, 0.05, 0), Work.UNWATCHED);
        Soundness.assertSound(cartoon);
        int crossings = 0;
        for (int i = 0; i < chords; i++) {
            for (int k = i + 1; k < chords; k++) {
                crossings += cross(ends[i], ends[k]) ? 1 : 0;
            }
        }
        assertEquals(chords + crossings + 1, cartoon.pieces().size());
    }

    private static boolean cross(double[] a, double[] b) {
        return between(a, b[0]) != between(a, b[1]);
    }

    private static boolean between(double[] chord, double angle) {
        double turn = (angle - chord[0]) % (2 * Math.PI);
        return (turn < 0 ? turn + 2 * Math.PI : turn) < chord[1] - chord[0];
    }

    @Test
    void readingOrderByRows() {
        // three rows of one height; within a row labels jitter by less than the row
        List<DrawnLine> lines = new ArrayList<>();
        lines.add(Drawings.rectangle("frame", 0, 0, 300, 300));
        lines.add(Drawings.line("r1", 0, 100, 300, 100));
        lines.add(Drawings.line("r2", 0, 200, 300, 200));
        for (int row = 0; row < 3; row++) {
            lines.add(Drawings.line("c", 100 + 7 * row, 100 * row, 90 + 7 * row, 100 * row + 100));
            lines.add(Drawings.line("c", 200 - 9 * row, 100 * row, 215 - 9 * row, 100 * row + 100));
        }
        Cartoon cartoon = Drawings.make(lines);
        assertEquals(9, cartoon.pieces().size());
        for (int i = 1; i <= 9; i++) {
            CartoonPiece piece = cartoon.piece(i).orElseThrow();
            assertEquals((i - 1) / 3, (int) (piece.label().yMm() / 100));
            assertEquals((i - 1) % 3, (int) (piece.label().xMm() / 100), "piece " + i);
        }
        Cartoon columns = CartoonMaker.make(lines, CartoonSettings.defaults().withNumbering(Numbering.COLUMN_ORDER), Work.UNWATCHED);
        assertEquals(2, (int) (columns.piece(3).orElseThrow().label().yMm() / 100));
        Cartoon largest = CartoonMaker.make(lines, CartoonSettings.defaults().withNumbering(Numbering.LARGEST_FIRST), Work.UNWATCHED);
        for (int i = 2; i <= 9; i++) {
            assertTrue(largest.piece(i - 1).orElseThrow().areaMm2() >= largest.piece(i).orElseThrow().areaMm2());
        }
    }

    /** Foil = sum of the perimeters = 2 x inner joints + outer edge: 300 x 300 in four squares, 2400 = 2 x 600 + 1200 (arithmetic). */
    @Test
    void foilAndJoints() {
        Cartoon cartoon = Drawings.make(Drawings.rectangle("frame", 0, 0, 300, 300), Drawings.line("v", 150, 0, 150, 300),
                Drawings.line("h", 0, 150, 300, 150));
        assertEquals(2400, cartoon.foilLengthMm(), 1e-9);
        assertEquals(600, cartoon.innerJointMm(), 1e-9);
        assertEquals(1200, cartoon.panelPerimeterMm(), 1e-9);
    }

    /** One core or four, the same to the last bit. */
    @Test
    void sameOnAnyNumberOfCores() throws Exception {
        List<DrawnLine> drawing = Drawings.cells(9, 500, 500, 12, 0.4, 77);
        String one = printed(drawing, 1);
        assertEquals(one, printed(drawing, 4));
        assertEquals(one, printed(drawing, 1));
    }

    private static String printed(List<DrawnLine> drawing, int cores) throws Exception {
        var pool = new ForkJoinPool(cores);
        try {
            return pool.submit(() -> Drawings.make(drawing).toString()).get();
        } finally {
            pool.shutdown();
        }
    }
}
