package saddlebar.artwork.drawing;

import java.awt.geom.AffineTransform;

/**
 * A row of colours that a gradient runs through (SVG 1.1, 13.2): between two stops the values run straight, not premultiplied. Kept as a
 * table of {@value #STEPS} entries, each rounded to nearest: over 200 mm that is a step of 0.05 mm, finer than 1200 dpi shows.
 */
public final class Ramp {
    static final int STEPS = 4096;

    /** What happens beyond the ends. */
    public enum Spread {
        PAD, REFLECT, REPEAT
    }

    private final int[] table;
    /** For each entry the first and the last entry of the run of equal colours that it lies in. */
    private final short[] runFrom = new short[STEPS + 1];
    private final short[] runTo = new short[STEPS + 1];
    private final Spread spread;
    private final int before;
    private final int after;
    private final int mean;
    private final boolean opaque;

    /**
     * @param offsets   0 to 1, never falling, one or more
     * @param argb      a colour for each, not premultiplied
     * @param linearRgb whether values run straight in linear light instead of code values
     */
    public Ramp(double[] offsets, int[] argb, Spread spread, boolean linearRgb) {
        if (offsets.length == 0 || offsets.length != argb.length) {
            throw new IllegalArgumentException("a ramp needs as many offsets as colours but has " + offsets.length + " and " + argb.length);
        }
        this.spread = spread;
        this.table = new int[STEPS + 1];
        long[] sum = new long[4];
        boolean solid = true;
        int stop = 0;
        for (int i = 0; i <= STEPS; i++) {
            double t = (double) i / STEPS;
            while (stop < offsets.length && offsets[stop] <= t) { // of several stops at one place the last counts from there on
                stop++;
            }
            table[i] = between(offsets, argb, stop, t, linearRgb);
            for (int c = 0; c < 4; c++) {
                sum[c] += table[i] >>> 8 * c & 0xFF;
            }
            solid &= table[i] >>> 24 == 0xFF;
        }
        for (int i = 1; i <= STEPS; i++) {
            runFrom[i] = table[i] == table[i - 1] ? runFrom[i - 1] : (short) i;
        }
        runTo[STEPS] = STEPS;
        for (int i = STEPS - 1; i >= 0; i--) {
            runTo[i] = table[i] == table[i + 1] ? runTo[i + 1] : (short) i;
        }
        this.opaque = solid;
        this.before = argb[0];
        this.after = argb[argb.length - 1];
        int all = 0;
        for (int c = 0; c < 4; c++) {
            all |= (int) Math.round((double) sum[c] / (STEPS + 1)) << 8 * c;
        }
        this.mean = all;
    }

    private static int between(double[] offsets, int[] argb, int next, double t, boolean linearRgb) {
        if (next == 0) {
            return argb[0];
        }
        if (next == offsets.length) {
            return argb[next - 1];
        }
        double share = (t - offsets[next - 1]) / (offsets[next] - offsets[next - 1]);
        int mixed = 0;
        for (int c = 0; c < 4; c++) {
            int from = argb[next - 1] >>> 8 * c & 0xFF;
            int to = argb[next] >>> 8 * c & 0xFF;
            int value = linearRgb && c < 3 ? GrayCode.mixedInLight(from, to, share) : (int) Math.rint(from + share * (to - from));
            mixed |= value << 8 * c;
        }
        return mixed;
    }

    /** The colour at t, 0 at the first end and 1 at the second. */
    int at(double t) {
        if (t >= 0 && t <= 1) {
            return table[(int) (t * STEPS + 0.5)];
        }
        return switch (spread) {
            case PAD -> t < 0 ? before : after;
            case REPEAT -> table[(int) ((t - Math.floor(t)) * STEPS + 0.5)];
            case REFLECT -> table[(int) (Math.abs(t - 2 * Math.floor((t + 1) / 2)) * STEPS + 0.5)];
        };
    }

    /** Whether the colour is the same all the way from one t to another, however they lie. */
    boolean isEven(double one, double other) {
        if (one >= 0 && one <= 1 && other >= 0 && other <= 1) {
            int entry = (int) (one * STEPS + 0.5);
            int end = (int) (other * STEPS + 0.5);
            return end >= runFrom[entry] && end <= runTo[entry];
        }
        return spread == Spread.PAD && (one > 1 && other > 1 || one < 0 && other < 0);
    }

    int meanArgb() {
        return mean;
    }

    /** For NaN, where a radial gradient is nowhere defined, the last colour. */
    int last() {
        return after;
    }

    boolean opaque() {
        return opaque && before >>> 24 == 0xFF && after >>> 24 == 0xFF;
    }

    /**
     * A gradient along a line: t = 0 at the first point and 1 at the second, the same across.
     *
     * @param toMm from the units of the points to mm of the page
     */
    public record Linear(Ramp ramp, double x1, double y1, double x2, double y2, AffineTransform toMm) implements Tint {
        @Override
        public int meanArgb() {
            return ramp.meanArgb();
        }
    }

    /**
     * A gradient from a focal point to a circle: t at a point is how far it lies on the way from the focus through it to the circle.
     *
     * @param toMm from the units of the circle to mm of the page
     */
    public record Radial(Ramp ramp, double cx, double cy, double r, double fx, double fy, AffineTransform toMm) implements Tint {
        /** A focus on or outside the circle is drawn in to this share of the radius (SVG 1.1, 13.2.3: set on the edge). */
        private static final double MOST_FOCUS = 0.999;

        public Radial {
            double away = Math.hypot(fx - cx, fy - cy);
            if (away > MOST_FOCUS * r && r > 0) {
                fx = cx + (fx - cx) * MOST_FOCUS * r / away;
                fy = cy + (fy - cy) * MOST_FOCUS * r / away;
            }
        }

        @Override
        public int meanArgb() {
            return ramp.meanArgb();
        }
    }
}
