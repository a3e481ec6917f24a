package saddlebar.nesting.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

import org.locationtech.jts.geom.Polygon;

/** The shapes that the items of a job may take, and the tables of all pairs of them, each made when it is first asked for. */
final class ShapeBook {
    private static final long MOST_CELLS = 12_000_000; // 8 bytes each, and what the borders need
    private static final int FINEST = 64;
    private static final int COARSEST = 16;
    private static final int SHAPES_WITH_ROWS = 6000; // beyond, a row of references a shape would itself be too much

    private final List<Shape> shapes = new ArrayList<>();
    private final double gap;
    private PairTable[][] tables = {};
    private int fine;

    /** @param gap least distance between two shapes */
    ShapeBook(double gap) {
        this.gap = gap;
    }

    /** Adds an outline at each of the angles that are given. */
    int[] add(double[] angles, DoubleFunction<Polygon> turned, DoubleFunction<Polygon> turnedExact) {
        int[] numbers = new int[angles.length];
        for (int k = 0; k < angles.length; k++) {
            numbers[k] = shapes.size();
            shapes.add(new Shape(shapes.size(), angles[k], turned.apply(angles[k]), turnedExact.apply(angles[k]).getEnvelopeInternal()));
        }
        return numbers;
    }

    /** To be called once all shapes are there. */
    void close() {
        int n = shapes.size();
        if (n > SHAPES_WITH_ROWS) {
            throw new IllegalStateException("too many different shapes: " + n);
        }
        tables = new PairTable[n][];
        long pairs = (long) n * (n + 1) / 2;
        fine = (int) Math.max(COARSEST, Math.min(FINEST, Math.sqrt((double) MOST_CELLS / pairs)));
    }

    Shape shape(int number) {
        return shapes.get(number);
    }

    int size() {
        return shapes.size();
    }

    double gap() {
        return gap;
    }

    /** How the shape with the higher number lies to the other one: both numbers in either order. */
    PairTable table(int s, int t) {
        int low = Math.min(s, t);
        int high = Math.max(s, t);
        PairTable[] row = tables[low];
        if (row == null) {
            row = tables[low] = new PairTable[shapes.size() - low];
        }
        PairTable table = row[high - low];
        if (table == null) {
            table = row[high - low] = PairTableBuilder.build(shapes.get(low), shapes.get(high), gap, fine);
        }
        return table;
    }
}
