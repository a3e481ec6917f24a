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
    private final List<int[]> siblings = new ArrayList<>();
    private PairView[][] views = {};
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
            siblings.add(numbers);
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
        views = new PairView[n][];
        long pairs = (long) n * (n + 1) / 2; // fewer tables where turns are quarters: those are on the safe side
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

    /** How deep shape {@code t} overlaps shape {@code s}. */
    PairView pair(int s, int t) {
        PairView[] row = views[s];
        if (row == null) {
            row = views[s] = new PairView[shapes.size()];
        }
        PairView view = row[t];
        if (view == null) {
            view = row[t] = view(s, t);
        }
        return view;
    }

    /** Two shapes turned together by quarters are one pair, and so are two that change places: one table serves up to eight. */
    private PairView view(int s, int t) {
        if (s > t) {
            return pair(t, s).exchanged();
        }
        Shape still = shapes.get(s);
        Shape moved = shapes.get(t);
        if (still.angleDeg % 90 == 0 && still.angleDeg != 0) {
            int stillUpright = atAngle(still, 0);
            int movedBack = atAngle(moved, (moved.angleDeg - still.angleDeg + 360) % 360);
            if (stillUpright >= 0 && movedBack >= 0) {
                return pair(stillUpright, movedBack).turned((int) still.angleDeg / 90);
            }
        }
        return new PairView(PairTableBuilder.build(still, moved, gap, fine));
    }

    /** The same outline at another angle, or -1. */
    private int atAngle(Shape shape, double angleDeg) {
        for (int number : siblings.get(shape.number)) {
            if (shapes.get(number).angleDeg == angleDeg) {
                return number;
            }
        }
        return -1;
    }
}
