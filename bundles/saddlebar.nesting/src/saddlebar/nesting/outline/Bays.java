package saddlebar.nesting.outline;

import java.util.Arrays;

/**
 * The areas that shapes may lie in, side by side along x and so far apart that shapes in two of them never meet. A strip is one bay whose end
 * moves.
 */
final class Bays {
    private static final double SLACK = 1e-7; // rounding of a turned outline; far below the grid of the check
    private final double apart;
    private double[] from = {};
    private double[] to = {};
    private double[] height = {};
    private int[] kind = {};

    /** @param apart distance between two bays, at least the largest shape and the gap */
    Bays(double apart) {
        this.apart = apart;
    }

    /** One more bay behind the last. */
    void open(int kindNumber, double width, double bayHeight) {
        int n = from.length;
        double x = n == 0 ? 0 : to[n - 1] + apart;
        resize(n + 1);
        from[n] = x;
        to[n] = x + width;
        height[n] = bayHeight;
        kind[n] = kindNumber;
    }

    /** Takes the last bay away. */
    void closeLast() {
        resize(from.length - 1);
    }

    /** Makes a bay one of another kind, not wider than it was. */
    void replace(int b, int kindNumber, double width, double bayHeight) {
        kind[b] = kindNumber;
        to[b] = from[b] + width;
        height[b] = bayHeight;
    }

    private void resize(int n) {
        from = Arrays.copyOf(from, n);
        to = Arrays.copyOf(to, n);
        height = Arrays.copyOf(height, n);
        kind = Arrays.copyOf(kind, n);
    }

    int kind(int b) {
        return kind[b];
    }

    int count() {
        return from.length;
    }

    double from(int b) {
        return from[b];
    }

    double to(int b) {
        return to[b];
    }

    double height(int b) {
        return height[b];
    }

    double area(int b) {
        return (to[b] - from[b]) * height[b];
    }

    double width(int b) {
        return to[b] - from[b];
    }

    int last() {
        return from.length - 1;
    }

    /** Moves the end of the last bay. */
    void endLast(double length) {
        to[to.length - 1] = from[from.length - 1] + length;
    }

    /** The bay that the middle of a shape is in, or the nearest before it. */
    int of(double middleX) {
        int b = 0;
        while (b + 1 < from.length && middleX >= from[b + 1]) {
            b++;
        }
        return b;
    }

    boolean takes(Shape s, int b) {
        return s.width() <= to[b] - from[b] + SLACK && s.height() <= height[b] + SLACK;
    }

    double leastX(Shape s, int b) {
        return from[b] - s.minX;
    }

    double mostX(Shape s, int b) {
        return Math.max(leastX(s, b), to[b] - s.maxX);
    }

    double leastY(Shape s) {
        return -s.minY;
    }

    double mostY(Shape s, int b) {
        return Math.max(leastY(s), height[b] - s.maxY);
    }
}
