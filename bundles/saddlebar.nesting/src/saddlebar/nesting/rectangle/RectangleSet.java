package saddlebar.nesting.rectangle;

import java.util.Arrays;

/**
 * The copies to be placed, one entry each, in grid steps with the gap added to both sides.
 *
 * @param width    along x as drawn
 * @param height   along y as drawn
 * @param mayStand may lie as drawn
 * @param mayTurn  may lie turned by a quarter
 */
public record RectangleSet(long[] width, long[] height, boolean[] mayStand, boolean[] mayTurn) {
    int size() {
        return width.length;
    }

    double area(int i) {
        return (double) width[i] * height[i];
    }

    double area() {
        double sum = 0;
        for (int i = 0; i < size(); i++) {
            sum += area(i);
        }
        return sum;
    }

    boolean fits(int i, long alongX, long alongY) {
        return mayStand[i] && width[i] <= alongX && height[i] <= alongY || mayTurn[i] && height[i] <= alongX && width[i] <= alongY;
    }

    /** Largest step of which all sides are whole multiples: lengths of layouts are too. */
    long grain() {
        long grain = 0;
        for (int i = 0; i < size(); i++) {
            grain = gcd(gcd(grain, width[i]), height[i]);
        }
        return grain;
    }

    /** The least length that any of the shapes needs along x. */
    long leastLength(long alongY) {
        long most = 0;
        for (int i = 0; i < size(); i++) {
            long stand = mayStand[i] && height[i] <= alongY ? width[i] : Long.MAX_VALUE;
            long turn = mayTurn[i] && width[i] <= alongY ? height[i] : Long.MAX_VALUE;
            most = Math.max(most, Math.min(stand, turn));
        }
        return most;
    }

    long smallestSide() {
        return Math.min(Arrays.stream(width).min().orElse(0), Arrays.stream(height).min().orElse(0));
    }

    /** Some of the entries as a set of their own. */
    RectangleSet only(int[] entries) {
        RectangleSet some = new RectangleSet(new long[entries.length], new long[entries.length], new boolean[entries.length],
                new boolean[entries.length]);
        for (int k = 0; k < entries.length; k++) {
            some.width[k] = width[entries[k]];
            some.height[k] = height[entries[k]];
            some.mayStand[k] = mayStand[entries[k]];
            some.mayTurn[k] = mayTurn[entries[k]];
        }
        return some;
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }
}
