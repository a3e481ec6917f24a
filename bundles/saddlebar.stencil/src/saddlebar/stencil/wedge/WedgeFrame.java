package saddlebar.stencil.wedge;

import java.util.Arrays;

import saddlebar.model.problem.Refusal;

/**
 * Finds the frame of a wedge in a photograph. Light is taken against the brightest nearby, so that a gradient does not matter; what is dark by Otsu's
 * threshold (A threshold selection method from gray-level histograms, IEEE Trans. Systems, Man, and Cybernetics 9(1), 1979, 62-66) is gathered into
 * parts; the frame is the part with the largest box that does not touch the picture's edge. Its corners are its farthest px along the two diagonals.
 */
final class WedgeFrame {
    private static final int BINS = 256;
    private static final double LEAST_SHARE = 0.25;

    private WedgeFrame() {
    }

    /** Top left, top right, bottom right, bottom left as the picture shows them, x and y in px. */
    static double[][] corners(LightPicture picture) {
        int width = picture.widthPx();
        int height = picture.heightPx();
        boolean[] dark = dark(picture);
        boolean[] seen = new boolean[dark.length];
        int[] open = new int[dark.length];
        double[][] best = null;
        double bestBox = 0;
        for (int start = 0; start < dark.length; start++) {
            if (!dark[start] || seen[start]) {
                continue;
            }
            Part part = new Part();
            int head = 0;
            int tail = 0;
            open[tail++] = start;
            seen[start] = true;
            while (head < tail) {
                int at = open[head++];
                int x = at % width;
                int y = at / width;
                part.add(x, y, width, height);
                tail = visit(x > 0, at - 1, dark, seen, open, tail);
                tail = visit(x < width - 1, at + 1, dark, seen, open, tail);
                tail = visit(y > 0, at - width, dark, seen, open, tail);
                tail = visit(y < height - 1, at + width, dark, seen, open, tail);
            }
            if (!part.atEdge && part.box() > bestBox) {
                bestBox = part.box();
                best = part.corners;
            }
        }
        if (best == null || bestBox < LEAST_SHARE * LEAST_SHARE * width * height) {
            throw new Refusal("photograph", "the frame of a wedge was not found in it",
                    "let the frame take most of the picture, lie nearly level, and have bare glass all around it");
        }
        return best;
    }

    private static int visit(boolean there, int at, boolean[] dark, boolean[] seen, int[] open, int tail) {
        if (!there || !dark[at] || seen[at]) {
            return tail;
        }
        seen[at] = true;
        open[tail] = at;
        return tail + 1;
    }

    private static boolean[] dark(LightPicture picture) {
        int width = picture.widthPx();
        int height = picture.heightPx();
        int block = Math.max(1, Math.max(width, height) / 300);
        int columns = (width + block - 1) / block;
        int rows = (height + block - 1) / block;
        float[] brightest = widest(means(picture, block, columns, rows), columns, rows, Math.max(1, columns / 12));
        float[] against = new float[width * height];
        int[] histogram = new int[BINS];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                float here = smooth(picture, x, y) / Math.max(1e-6f, brightest[y / block * columns + x / block]);
                against[y * width + x] = here;
                histogram[Math.min(BINS - 1, (int) (here * (BINS - 1)))]++;
            }
        }
        float threshold = otsu(histogram) / (float) (BINS - 1);
        boolean[] dark = new boolean[against.length];
        for (int i = 0; i < dark.length; i++) {
            dark[i] = against[i] < threshold;
        }
        return dark;
    }

    private static float smooth(LightPicture picture, int x, int y) {
        float sum = 0;
        for (int dy = -1; dy <= 1; dy++) {
            int row = Math.max(0, Math.min(picture.heightPx() - 1, y + dy)) * picture.widthPx();
            for (int dx = -1; dx <= 1; dx++) {
                sum += picture.light()[row + Math.max(0, Math.min(picture.widthPx() - 1, x + dx))];
            }
        }
        return sum / 9;
    }

    private static float[] means(LightPicture picture, int block, int columns, int rows) {
        float[] sum = new float[columns * rows];
        int[] count = new int[columns * rows];
        for (int y = 0; y < picture.heightPx(); y++) {
            for (int x = 0; x < picture.widthPx(); x++) {
                int at = y / block * columns + x / block;
                sum[at] += picture.light()[y * picture.widthPx() + x];
                count[at]++;
            }
        }
        for (int i = 0; i < sum.length; i++) {
            sum[i] /= count[i];
        }
        return sum;
    }

    /** The largest value within so many blocks, along rows and then along columns. */
    private static float[] widest(float[] values, int columns, int rows, int reach) {
        float[] across = new float[values.length];
        float[] both = new float[values.length];
        for (int i = 0; i < values.length; i++) {
            int x = i % columns;
            for (int d = Math.max(-x, -reach); d <= Math.min(columns - 1 - x, reach); d++) {
                across[i] = Math.max(across[i], values[i + d]);
            }
        }
        for (int i = 0; i < values.length; i++) {
            int y = i / columns;
            for (int d = Math.max(-y, -reach); d <= Math.min(rows - 1 - y, reach); d++) {
                both[i] = Math.max(both[i], across[i + d * columns]);
            }
        }
        return both;
    }

    private static int otsu(int[] histogram) {
        long total = Arrays.stream(histogram).asLongStream().sum();
        double all = 0;
        for (int i = 0; i < BINS; i++) {
            all += (double) i * histogram[i];
        }
        double below = 0;
        long count = 0;
        double best = -1;
        int threshold = BINS / 2;
        for (int i = 0; i < BINS; i++) {
            count += histogram[i];
            below += (double) i * histogram[i];
            if (count == 0 || count == total) {
                continue;
            }
            double apart = below / count - (all - below) / (total - count);
            double between = (double) count * (total - count) * apart * apart;
            if (between > best) {
                best = between;
                threshold = i + 1;
            }
        }
        return threshold;
    }

    /** Dark px that touch, and the farthest of them along the diagonals. */
    private static final class Part {
        private final double[][] corners = new double[4][2];
        private final double[] far = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        private int left = Integer.MAX_VALUE;
        private int right = -1;
        private int top = Integer.MAX_VALUE;
        private int bottom = -1;
        private boolean atEdge;

        private void add(int x, int y, int width, int height) {
            left = Math.min(left, x);
            right = Math.max(right, x);
            top = Math.min(top, y);
            bottom = Math.max(bottom, y);
            atEdge |= x == 0 || y == 0 || x == width - 1 || y == height - 1;
            for (int corner = 0; corner < 4; corner++) { // 0: top left ... clockwise
                double cx = x + (corner == 1 || corner == 2 ? 1 : 0);
                double cy = y + (corner >= 2 ? 1 : 0);
                double away = (corner == 1 || corner == 2 ? cx : -cx) + (corner >= 2 ? cy : -cy);
                if (away > far[corner]) {
                    far[corner] = away;
                    corners[corner] = new double[] {cx, cy};
                }
            }
        }

        private double box() {
            return (double) (right - left + 1) * (bottom - top + 1);
        }
    }
}
