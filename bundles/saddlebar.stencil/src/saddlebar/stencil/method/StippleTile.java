package saddlebar.stencil.method;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.tone.ToneTable;

/**
 * Thresholds of a square of stipples that tiles. Dots stand at {@link ScatteredPoints}, holes where three or more dots are equally far off and
 * farthest (corners of the dots' Voronoi cells), no two of them nearer than 6/10 of the dots' distance. A px within the smallest dot's radius of a dot
 * comes with that dot; within it of a hole, with that hole; every other by its distance from dots against that from holes. Smallest dots come and
 * holes close in an order in which those that are there always stand far apart. Our own.
 */
final class StippleTile {
    /** A smallest dot's side over the mean distance of dots: larger ones touch. */
    static final double MOST_DOT = 0.55;
    private static final int MOST_ACROSS = 36;
    private static final int LEAST_ACROSS = 6;
    private static final int TILE_PX = 1024;
    private static final double HOLES_APART = 0.6;
    private static final long SEED = 1761;
    private static final int PLACE_BITS = 30;
    private static final int HEAP_BITS = 16;
    private static final int FINE = 1 << 14;

    /** What does not depend on the size of dots. */
    record Spots(int across, ScatteredPoints dots, ScatteredPoints holes, int[] dotOrder, int[] holeOrder) {
        boolean areFor(ScreeningRecipe recipe) {
            return across == StippleTile.across(recipe);
        }
    }

    private final int side;
    private final int across;
    private final int dotPx;
    private final float[] threshold;

    private StippleTile(int side, int across, int dotPx, float[] threshold) {
        this.side = side;
        this.across = across;
        this.dotPx = dotPx;
        this.threshold = threshold;
    }

    boolean isFor(ScreeningRecipe recipe) {
        return sidePx(recipe) == side && across(recipe) == across && recipe.dotPx() == dotPx;
    }

    private static int across(ScreeningRecipe recipe) {
        return Math.max(LEAST_ACROSS, Math.min(MOST_ACROSS, (int) (TILE_PX * recipe.lpi() / recipe.dpi())));
    }

    static int sidePx(ScreeningRecipe recipe) {
        return (int) Math.round(across(recipe) * recipe.dpi() / recipe.lpi());
    }

    /**
     * @param spots those of {@link #spots} for the same recipe; they depend on its ruling and resolution alone
     */
    static StippleTile of(ScreeningRecipe recipe, Spots spots) {
        int side = sidePx(recipe);
        double radius = recipe.dotPx() / Math.sqrt(Math.PI) / side;
        int px = side * side;
        NearestPoints dots = spots.dots.nearest(side);
        NearestPoints holes = spots.holes.nearest(side);
        float[] toDots = dots.distance();
        float[] toHoles = holes.distance();
        long inDots = 0;
        long inHoles = 0;
        long[] middle = new long[px];
        int middles = 0;
        for (int i = 0; i < px; i++) {
            if (toDots[i] <= radius) {
                inDots++;
            } else if (toHoles[i] <= radius) {
                inHoles++;
            } else {
                long place = Math.round(toDots[i] / (toDots[i] + toHoles[i]) * (double) (1 << PLACE_BITS));
                middle[middles++] = place << 32 | i;
            }
        }
        middle = sorted(middle, middles);
        float[] threshold = new float[px];
        for (int rank = 0; rank < middles; rank++) {
            threshold[(int) middle[rank]] = (float) ((inDots + rank + 0.5) / px);
        }
        int dotCount = spots.dots.size();
        int holeCount = spots.holes.size();
        for (int i = 0; i < px; i++) {
            if (toDots[i] <= radius) {
                threshold[i] = (float) ((spots.dotOrder[dots.point()[i]] + 0.5) / dotCount * inDots / px);
            } else if (toHoles[i] <= radius) {
                threshold[i] = (float) (1 - (spots.holeOrder[holes.point()[i]] + 0.5) / holeCount * inHoles / px);
            }
        }
        return new StippleTile(side, across(recipe), recipe.dotPx(), threshold);
    }

    /** Keys in ascending order: first by the highest bits of their place into heaps, then each heap, which is small. */
    private static long[] sorted(long[] keys, int count) {
        int shift = 32 + PLACE_BITS - HEAP_BITS;
        int[] start = new int[(1 << HEAP_BITS) + 2];
        for (int i = 0; i < count; i++) {
            start[(int) (keys[i] >>> shift) + 1]++;
        }
        for (int heap = 1; heap < start.length; heap++) {
            start[heap] += start[heap - 1];
        }
        long[] sorted = new long[count];
        int[] next = start.clone();
        for (int i = 0; i < count; i++) {
            sorted[next[(int) (keys[i] >>> shift)]++] = keys[i];
        }
        int atOnce = 1 << HEAP_BITS / 2;
        IntStream.rangeClosed(0, (1 << HEAP_BITS) / atOnce).parallel().forEach(some -> {
            for (int heap = some * atOnce; heap < Math.min(start.length - 1, (some + 1) * atOnce); heap++) {
                Arrays.sort(sorted, start[heap], start[heap + 1]);
            }
        });
        return sorted;
    }

    /** Where dots and holes stand, and in which order they come and close. */
    static Spots spots(ScreeningRecipe recipe) {
        int across = across(recipe);
        ScatteredPoints dots = ScatteredPoints.of(across * across, SEED);
        ScatteredPoints holes = holes(dots);
        return new Spots(across, dots, holes, dots.order(), holes.order());
    }

    /** Local maxima of the distance from dots, on a grid fine against the dots, the widest first. */
    private static ScatteredPoints holes(ScatteredPoints dots) {
        int grid = (int) Math.round(Math.sqrt(dots.size())) * 12;
        float[] distance = dots.nearest(grid).distance();
        List<Integer> peaks = new ArrayList<>();
        for (int i = 0; i < distance.length; i++) {
            if (isPeak(distance, grid, i)) {
                peaks.add(i);
            }
        }
        peaks.sort(Comparator.<Integer>comparingDouble(i -> -distance[i]).thenComparing(i -> i));
        double apart = HOLES_APART / Math.sqrt(dots.size());
        double[] x = new double[peaks.size()];
        double[] y = new double[peaks.size()];
        PointCells kept = new PointCells(x, y);
        int count = 0;
        for (int peak : peaks) {
            x[count] = (peak % grid + 0.5) / grid;
            y[count] = (peak / grid + 0.5) / grid;
            if (kept.nearestSquared(x[count], y[count], 1) >= apart * apart) {
                kept.add(count++);
            }
        }
        return new ScatteredPoints(Arrays.copyOf(x, count), Arrays.copyOf(y, count));
    }

    private static boolean isPeak(float[] distance, int grid, int i) {
        int x = i % grid;
        int y = i / grid;
        int left = x == 0 ? grid - 1 : x - 1;
        int right = x == grid - 1 ? 0 : x + 1;
        int above = (y == 0 ? grid - 1 : y - 1) * grid;
        int row = y * grid;
        int below = (y == grid - 1 ? 0 : y + 1) * grid;
        float here = distance[i];
        return distance[row + left] <= here && distance[row + right] <= here && distance[above + left] <= here && distance[above + x] <= here
                && distance[above + right] <= here && distance[below + left] <= here && distance[below + x] <= here && distance[below + right] <= here;
    }

    /** For each px, how many codes from 0 on paint it. */
    ThresholdTile thresholds(ToneTable tone) {
        byte[] codes = new byte[threshold.length];
        byte[] atFine = new byte[FINE + 2];
        for (int i = 0; i < atFine.length; i++) {
            atFine[i] = (byte) tone.codesAbove((double) i / FINE);
        }
        for (int i = 0; i < codes.length; i++) {
            int fine = (int) (threshold[i] * FINE); // exact: a power of two
            codes[i] = atFine[fine] == atFine[fine + 1] ? atFine[fine] : (byte) tone.codesAbove(threshold[i]);
        }
        return new ThresholdTile(side, side, 0, codes);
    }
}
