package saddlebar.model.art;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import saddlebar.model.units.Require;

/**
 * A region of the plane in mm: one outer ring and its holes, or nothing. Coordinates lie on a grid of 1e-6 mm, so that what is written
 * is what is read. Immutable; equal if all points are equal in order.
 *
 * <p>Text form: well-known text of OGC 06-103r4, {@code POLYGON ((x y, x y, …), (…))} or {@code POLYGON EMPTY}; there the first point of a
 * ring is repeated as its last, here it is not.
 */
public final class OutlineMm {
    /** Coordinates beyond this are no glass. */
    public static final double MOST_MM = 1e8;

    public static final OutlineMm EMPTY = new OutlineMm(List.of());

    private static final double STEPS_PER_MM = 1e6;

    private final double[][] rings;

    private OutlineMm(List<double[]> rings) {
        this.rings = new double[rings.size()][];
        for (int r = 0; r < this.rings.length; r++) {
            this.rings[r] = onGrid(rings.get(r));
        }
    }

    /**
     * @param rings outer ring first, then holes; each x0, y0, x1, y1, … of at least three points; a last point equal to the first is dropped
     */
    public static OutlineMm of(List<double[]> rings) {
        return rings.isEmpty() ? EMPTY : new OutlineMm(rings);
    }

    public static OutlineMm of(double... outer) {
        return new OutlineMm(List.of(outer));
    }

    public static OutlineMm rectangle(double xMm, double yMm, double widthMm, double heightMm) {
        return of(xMm, yMm, xMm + widthMm, yMm, xMm + widthMm, yMm + heightMm, xMm, yMm + heightMm);
    }

    public boolean isEmpty() {
        return rings.length == 0;
    }

    /** 0 if empty, else 1 + the number of holes. */
    public int rings() {
        return rings.length;
    }

    /** A copy of one ring as x0, y0, x1, y1, …; ring 0 is the outer one. */
    public double[] ring(int ring) {
        return rings[ring].clone();
    }

    /** Area inside the outer ring less the holes, whatever way the rings run (shoelace formula). */
    public double areaMm2() {
        double area = 0;
        for (int r = 0; r < rings.length; r++) {
            double ring = Math.abs(twiceSignedArea(rings[r])) / 2;
            area += r == 0 ? ring : -ring;
        }
        return area;
    }

    /** Least x, least y, greatest x, greatest y of the outer ring. */
    public double[] boundsMm() {
        if (isEmpty()) {
            throw new IllegalStateException("an empty outline has no bounds");
        }
        double[] bounds = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
        double[] outer = rings[0];
        for (int i = 0; i < outer.length; i++) {
            int axis = i % 2;
            bounds[axis] = Math.min(bounds[axis], outer[i]);
            bounds[axis + 2] = Math.max(bounds[axis + 2], outer[i]);
        }
        return bounds;
    }

    private static double twiceSignedArea(double[] ring) {
        double sum = 0;
        for (int i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
            sum += (ring[j] - ring[0]) * (ring[i + 1] - ring[1]) - (ring[i] - ring[0]) * (ring[j + 1] - ring[1]);
        }
        return sum;
    }

    private static double[] onGrid(double[] ring) {
        double[] xy = new double[ring.length];
        for (int i = 0; i < xy.length; i++) {
            xy[i] = Math.rint(Require.within("coordinate in mm", ring[i], -MOST_MM, MOST_MM) * STEPS_PER_MM) / STEPS_PER_MM + 0.0;
        }
        int n = xy.length;
        if (n > 6 && xy[0] == xy[n - 2] && xy[1] == xy[n - 1]) {
            xy = Arrays.copyOf(xy, n - 2);
        }
        if (xy.length < 6 || xy.length % 2 != 0) {
            throw new IllegalArgumentException("a ring needs at least three points but has " + xy.length + " numbers");
        }
        return xy;
    }

    /** Well-known text. */
    @Override
    public String toString() {
        if (isEmpty()) {
            return "POLYGON EMPTY";
        }
        StringBuilder text = new StringBuilder("POLYGON (");
        for (int r = 0; r < rings.length; r++) {
            text.append(r == 0 ? "(" : ", (");
            double[] ring = rings[r];
            for (int i = 0; i <= ring.length; i += 2) {
                int at = i % ring.length;
                text.append(i == 0 ? "" : ", ");
                number(text, ring[at]);
                text.append(' ');
                number(text, ring[at + 1]);
            }
            text.append(')');
        }
        return text.append(')').toString();
    }

    /** As few decimals as the grid needs; no exponent, which not every reader of well-known text takes. */
    private static void number(StringBuilder text, double value) {
        long steps = Math.round(value * STEPS_PER_MM);
        if (steps < 0) {
            text.append('-');
            steps = -steps;
        }
        text.append(steps / 1_000_000);
        long part = steps % 1_000_000;
        if (part != 0) {
            text.append('.');
            for (long digit = 100_000; part > 0; digit /= 10) {
                text.append((char) ('0' + part / digit));
                part %= digit;
            }
        }
    }

    /**
     * Reads well-known text of a polygon.
     *
     * @throws IllegalArgumentException telling the position at which the text stops being one
     */
    public static OutlineMm parse(String text) {
        Reader reader = new Reader(text);
        reader.word("POLYGON");
        if (reader.next("EMPTY")) {
            reader.end();
            return EMPTY;
        }
        List<double[]> rings = new ArrayList<>();
        reader.sign('(');
        do {
            rings.add(reader.ring());
        } while (reader.next(","));
        reader.sign(')');
        reader.end();
        return of(rings);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof OutlineMm outline && Arrays.deepEquals(rings, outline.rings);
    }

    @Override
    public int hashCode() {
        return Arrays.deepHashCode(rings);
    }

    private static final class Reader {
        private final String text;
        private int at;

        Reader(String text) {
            this.text = text;
        }

        double[] ring() {
            sign('(');
            double[] xy = new double[64];
            int n = 0;
            do {
                if (n + 2 > xy.length) {
                    xy = Arrays.copyOf(xy, 2 * xy.length);
                }
                xy[n++] = number();
                xy[n++] = number();
            } while (next(","));
            sign(')');
            return Arrays.copyOf(xy, n);
        }

        private double number() {
            blanks();
            int from = at;
            while (at < text.length() && "+-.0123456789eE".indexOf(text.charAt(at)) >= 0) {
                at++;
            }
            try {
                return Double.parseDouble(text.substring(from, at));
            } catch (NumberFormatException e) {
                at = from;
                throw expected("a number");
            }
        }

        void word(String word) {
            if (!next(word)) {
                throw expected(word);
            }
        }

        void sign(char sign) {
            word(String.valueOf(sign));
        }

        boolean next(String word) {
            blanks();
            boolean found = text.regionMatches(true, at, word, 0, word.length());
            at += found ? word.length() : 0;
            return found;
        }

        void end() {
            blanks();
            if (at < text.length()) {
                throw expected("the end");
            }
        }

        private void blanks() {
            while (at < text.length() && text.charAt(at) <= ' ') {
                at++;
            }
        }

        private IllegalArgumentException expected(String what) {
            return new IllegalArgumentException("outline: expected " + what + " at character " + (at + 1) + " of \""
                    + text.substring(0, Math.min(text.length(), 80)) + "\"");
        }
    }
}
