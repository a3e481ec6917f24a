package saddlebar.stencil.method;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

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

    static StippleTile of(ScreeningRecipe recipe) {
        int across = across(recipe);
        int side = sidePx(recipe);
        ScatteredPoints dots = ScatteredPoints.of(across * across, SEED);
        ScatteredPoints holes = holes(dots);
        double radius = recipe.dotPx() / Math.sqrt(Math.PI) / side;
        int px = side * side;
        float[] toDots = new float[px];
        int[] dotOf = new int[px];
        float[] toHoles = new float[px];
        int[] holeOf = new int[px];
        dots.nearest(side, toDots, dotOf);
        holes.nearest(side, toHoles, holeOf);
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
                long place = Math.round(toDots[i] / (toDots[i] + toHoles[i]) * (double) (1 << 30));
                middle[middles++] = place << 32 | i;
            }
        }
        Arrays.sort(middle, 0, middles);
        float[] threshold = new float[px];
        for (int rank = 0; rank < middles; rank++) {
            threshold[(int) middle[rank]] = (float) ((inDots + rank + 0.5) / px);
        }
        int[] dotOrder = dots.order();
        int[] holeOrder = holes.order();
        for (int i = 0; i < px; i++) {
            if (toDots[i] <= radius) {
                threshold[i] = (float) ((dotOrder[dotOf[i]] + 0.5) / dots.size() * inDots / px);
            } else if (toHoles[i] <= radius) {
                threshold[i] = (float) (1 - (holeOrder[holeOf[i]] + 0.5) / holes.size() * inHoles / px);
            }
        }
        return new StippleTile(side, across, recipe.dotPx(), threshold);
    }

    /** Local maxima of the distance from dots, on a grid fine against the dots, the widest first. */
    private static ScatteredPoints holes(ScatteredPoints dots) {
        int grid = (int) Math.round(Math.sqrt(dots.size())) * 12;
        float[] distance = new float[grid * grid];
        dots.nearest(grid, distance, new int[grid * grid]);
        List<Integer> peaks = new ArrayList<>();
        for (int i = 0; i < distance.length; i++) {
            if (isPeak(distance, grid, i)) {
                peaks.add(i);
            }
        }
        peaks.sort(Comparator.<Integer>comparingDouble(i -> -distance[i]).thenComparing(i -> i));
        double apart = HOLES_APART / Math.sqrt(dots.size());
        List<double[]> kept = new ArrayList<>();
        for (int peak : peaks) {
            double x = (peak % grid + 0.5) / grid;
            double y = (peak / grid + 0.5) / grid;
            if (kept.stream().allMatch(other -> ScatteredPoints.squared(other[0] - x, other[1] - y) >= apart * apart)) {
                kept.add(new double[] {x, y});
            }
        }
        return new ScatteredPoints(kept.stream().mapToDouble(p -> p[0]).toArray(), kept.stream().mapToDouble(p -> p[1]).toArray());
    }

    private static boolean isPeak(float[] distance, int grid, int i) {
        int x = i % grid;
        int y = i / grid;
        for (int dy = -1; dy <= 1; dy++) {
            for (int dx = -1; dx <= 1; dx++) {
                if (distance[Math.floorMod(y + dy, grid) * grid + Math.floorMod(x + dx, grid)] > distance[i]) {
                    return false;
                }
            }
        }
        return true;
    }

    /** For each px, how many codes from 0 on paint it. */
    ThresholdTile thresholds(ToneTable tone) {
        byte[] codes = new byte[threshold.length];
        for (int i = 0; i < codes.length; i++) {
            codes[i] = (byte) tone.codesAbove(threshold[i]);
        }
        return new ThresholdTile(side, side, 0, codes);
    }
}
