package saddlebar.nesting.rectangle;

import java.util.ArrayList;
import java.util.List;

/**
 * Where each shape of a {@link RectangleSet} lies.
 *
 * @param bins       the bins used, in order
 * @param bin        number of each shape's bin
 * @param x          from the left, in grid steps
 * @param y          from the top
 * @param turned     by a quarter
 * @param lastLength how far the last bin is used along x, with the gap
 * @param turns      how many are turned that need not be
 */
public record RectangleLayout(List<Bin> bins, int[] bin, long[] x, long[] y, boolean[] turned, long lastLength, int turns) {
    static RectangleLayout of(SkylineFill fill, List<Bin> bins) {
        int n = fill.bin.length;
        int used = 1;
        for (int b : fill.bin) {
            used = Math.max(used, b + 1);
        }
        RectangleLayout layout = new RectangleLayout(List.copyOf(bins.subList(0, used)), fill.bin.clone(), new long[n], new long[n],
                fill.turned.clone(), lastLength(fill, bins, used - 1), turns(fill));
        for (int i = 0; i < n; i++) {
            boolean upward = bins.get(fill.bin[i]).upward();
            layout.x[i] = upward ? fill.across[i] : fill.along[i];
            layout.y[i] = upward ? fill.along[i] : fill.across[i];
        }
        return layout;
    }

    /** The same, but what lies in one bin lies as another layout of these shapes says. */
    RectangleLayout with(int number, int[] shapes, RectangleLayout there) {
        List<Bin> changed = new ArrayList<>(bins);
        changed.set(number, there.bins.get(0));
        RectangleLayout layout = new RectangleLayout(List.copyOf(changed), bin, x.clone(), y.clone(), turned.clone(),
                number == bins.size() - 1 ? there.lastLength : lastLength, turns);
        for (int k = 0; k < shapes.length; k++) {
            layout.x[shapes[k]] = there.x[k];
            layout.y[shapes[k]] = there.y[k];
            layout.turned[shapes[k]] = there.turned[k];
        }
        return layout;
    }

    /** Area of all bins used, as given. */
    double binArea() {
        return bins.stream().mapToDouble(b -> (double) b.alongX() * b.alongY()).sum();
    }

    private static long lastLength(SkylineFill fill, List<Bin> bins, int last) {
        long length = 0;
        for (int i = 0; i < fill.bin.length; i++) {
            if (fill.bin[i] == last) {
                long start = bins.get(last).upward() ? fill.across[i] : fill.along[i];
                length = Math.max(length, start + (fill.turned[i] ? fill.set.height()[i] : fill.set.width()[i]));
            }
        }
        return length;
    }

    private static int turns(SkylineFill fill) {
        int turns = 0;
        for (int i = 0; i < fill.turned.length; i++) {
            if (fill.turned[i] && fill.set.mayStand()[i]) {
                turns++;
            }
        }
        return turns;
    }
}
