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
        long[] x = new long[n];
        long[] y = new long[n];
        for (int i = 0; i < n; i++) {
            boolean upward = bins.get(fill.bin[i]).upward();
            x[i] = upward ? fill.across[i] : fill.along[i];
            y[i] = upward ? fill.along[i] : fill.across[i];
        }
        return counted(fill.set, bins.subList(0, used), fill.bin.clone(), x, y, fill.turned.clone());
    }

    /** The same, but what lies in one bin lies as another layout of these shapes says. */
    RectangleLayout with(int number, int[] shapes, RectangleLayout there, RectangleSet set) {
        List<Bin> changed = new ArrayList<>(bins);
        changed.set(number, there.bins.get(0));
        long[] changedX = x.clone();
        long[] changedY = y.clone();
        boolean[] changedTurned = turned.clone();
        for (int k = 0; k < shapes.length; k++) {
            changedX[shapes[k]] = there.x[k];
            changedY[shapes[k]] = there.y[k];
            changedTurned[shapes[k]] = there.turned[k];
        }
        return counted(set, changed, bin, changedX, changedY, changedTurned);
    }

    /** The same, but one shape that was turned lies as drawn, with its top left where it was. */
    RectangleLayout stoodUp(int i, RectangleSet set) {
        boolean[] fewer = turned.clone();
        fewer[i] = false;
        return counted(set, bins, bin, x, y, fewer);
    }

    /** Area of all bins used, as given. */
    double binArea() {
        return bins.stream().mapToDouble(b -> (double) b.alongX() * b.alongY()).sum();
    }

    private static RectangleLayout counted(RectangleSet set, List<Bin> bins, int[] bin, long[] x, long[] y, boolean[] turned) {
        long length = 0;
        int turns = 0;
        for (int i = 0; i < bin.length; i++) {
            if (bin[i] == bins.size() - 1) {
                length = Math.max(length, x[i] + (turned[i] ? set.height()[i] : set.width()[i]));
            }
            if (turned[i] && set.mayStand()[i]) {
                turns++;
            }
        }
        return new RectangleLayout(List.copyOf(bins), bin, x, y, turned, length, turns);
    }
}
