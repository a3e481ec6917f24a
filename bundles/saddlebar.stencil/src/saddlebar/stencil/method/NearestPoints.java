package saddlebar.stencil.method;

import java.util.stream.IntStream;

/**
 * For the middles of a grid of {@code side} x {@code side} places on a unit square whose edges join: how far off the nearest point is, and which it is.
 * Found block by block: what is nearest to any place of a block lies no farther from the block's middle than the point nearest to that middle and a
 * diagonal more. Blocks are independent of one another, so that they are shared among threads.
 */
record NearestPoints(float[] distance, int[] point) {
    private static final int BLOCK = 8;
    /** What rounding may add to a distance. */
    private static final double SLACK = 1e-9;

    static NearestPoints of(double[] x, double[] y, int side) {
        NearestPoints nearest = new NearestPoints(new float[side * side], new int[side * side]);
        PointCells cells = PointCells.all(x, y);
        IntStream.range(0, (side + BLOCK - 1) / BLOCK).parallel().forEach(band -> nearest.band(x, y, side, cells, band * BLOCK));
        return nearest;
    }

    private void band(double[] x, double[] y, int side, PointCells cells, int top) {
        int bottom = Math.min(side, top + BLOCK);
        int[] found = new int[x.length];
        double[] moved = new double[2 * x.length];
        double middleY = (top + bottom) / 2.0 / side;
        for (int left = 0; left < side; left += BLOCK) {
            int right = Math.min(side, left + BLOCK);
            double middleX = (left + right) / 2.0 / side;
            double diagonal = Math.sqrt((double) (right - left) * (right - left) + (double) (bottom - top) * (bottom - top)) / side;
            double reach = Math.sqrt(cells.nearestSquared(middleX, middleY, 1)) + diagonal + SLACK;
            int count = cells.near(middleX, middleY, reach, found);
            for (int i = 0; i < count; i++) { // whole turns by which a point lies on the block's own side of the joint
                moved[2 * i] = Math.rint(x[found[i]] - middleX);
                moved[2 * i + 1] = Math.rint(y[found[i]] - middleY);
            }
            for (int py = top; py < bottom; py++) {
                double atY = (py + 0.5) / side;
                for (int px = left; px < right; px++) {
                    double atX = (px + 0.5) / side;
                    double best = 4;
                    int which = 0;
                    for (int i = 0; i < count; i++) {
                        double dx = x[found[i]] - atX - moved[2 * i];
                        double dy = y[found[i]] - atY - moved[2 * i + 1];
                        double squared = dx * dx + dy * dy;
                        if (squared < best) {
                            best = squared;
                            which = found[i];
                        }
                    }
                    distance[py * side + px] = (float) Math.sqrt(best);
                    point[py * side + px] = which;
                }
            }
        }
    }
}
