package saddlebar.nesting.outline;

import saddlebar.nesting.search.Chance;

/**
 * Looks for the cheapest place of one shape among all the others, which stay: places drawn by lot over all bays and around where it lies now,
 * the best few refined by a pattern search that halves its steps.
 *
 * <p>Source: Gardeyn, J., Vanden Berghe, G., Wauters, T. (2025). An open-source heuristic to reboot 2D nesting research. arXiv:2509.13329
 * (sampling and coordinate descent, from the description in the paper).
 */
final class PlaceSearch {
    private static final int KEPT = 3;
    private static final double FIRST_STEP = 0.25; // of the shape's lesser side
    private static final double NEAR = 0.1;
    private static final double COARSE = 0.02;
    private static final double FINE = 0.0005;
    private static final double SAME = 0.05;

    private final Board board;
    private final Bays bays;
    private final int[][] shapesOf;
    private final Chance chance;

    private int found;
    private final int[] shapes = new int[KEPT];
    private final double[] xs = new double[KEPT];
    private final double[] ys = new double[KEPT];
    private final double[] costs = new double[KEPT];

    int shape;
    double x;
    double y;
    double cost;

    /** @param shapesOf the shapes that each entry of the board may take */
    PlaceSearch(Board board, Bays bays, int[][] shapesOf, Chance chance) {
        this.board = board;
        this.bays = bays;
        this.shapesOf = shapesOf;
        this.chance = chance;
    }

    /** Leaves the best place found in {@link #shape}, {@link #x}, {@link #y}, {@link #cost}: at worst where it lies. */
    void search(int i, int everywhere, int around) {
        found = 0;
        shape = board.shape[i];
        x = board.x[i];
        y = board.y[i];
        cost = board.cost(i);
        offer(shape, x, y, cost);
        for (int k = 0; k < everywhere && costs[0] > 0; k++) {
            int s = shapesOf[i][chance.below(shapesOf[i].length)];
            sample(i, s, chance.below(bays.count()), 1);
        }
        int bay = bays.of(x + (board.book.shape(shape).minX + board.book.shape(shape).maxX) / 2);
        for (int k = 0; k < around && costs[0] > 0; k++) {
            sample(i, shape, bay, NEAR);
        }
        for (int k = 0; k < found; k++) {
            refine(i, k, FIRST_STEP, COARSE);
        }
        int best = 0;
        for (int k = 1; k < found; k++) {
            best = costs[k] < costs[best] ? k : best;
        }
        refine(i, best, COARSE, FINE);
        if (costs[best] <= cost) {
            shape = shapes[best];
            x = xs[best];
            y = ys[best];
            cost = costs[best];
        }
    }

    /** @param share of the bay, around the present place */
    private void sample(int i, int s, int bay, double share) {
        Shape as = board.book.shape(s);
        if (!bays.takes(as, bay)) {
            return;
        }
        double atX = drawn(bays.leastX(as, bay), bays.mostX(as, bay), x, share, as.width());
        double atY = drawn(bays.leastY(as), bays.mostY(as, bay), y, share, as.height());
        double enough = found < KEPT ? Double.POSITIVE_INFINITY : costs[KEPT - 1];
        double c = board.cost(i, s, atX, atY, enough);
        if (c < enough) {
            offer(s, atX, atY, c);
        }
    }

    private double drawn(double least, double most, double now, double share, double size) {
        if (share >= 1) {
            return chance.between(least, most);
        }
        double reach = size;
        return chance.between(Math.max(least, Math.min(most, now - reach)), Math.min(most, Math.max(least, now + reach)));
    }

    /** Keeps the cheapest, best first; of two at nearly the same place only the cheaper. */
    private void offer(int s, double atX, double atY, double c) {
        double near = SAME * Math.min(board.book.shape(s).width(), board.book.shape(s).height());
        for (int k = 0; k < found; k++) {
            if (shapes[k] == s && Math.abs(xs[k] - atX) < near && Math.abs(ys[k] - atY) < near) {
                if (c >= costs[k]) {
                    return;
                }
                drop(k);
                break;
            }
        }
        int at = found < KEPT ? found++ : KEPT - 1;
        while (at > 0 && costs[at - 1] > c) {
            copy(at - 1, at);
            at--;
        }
        set(at, s, atX, atY, c);
    }

    private void drop(int k) {
        for (int j = k + 1; j < found; j++) {
            copy(j, j - 1);
        }
        found--;
    }

    private void refine(int i, int k, double fromStep, double toStep) {
        Shape s = board.book.shape(shapes[k]);
        double size = Math.min(s.width(), s.height());
        int bay = bays.of(xs[k] + (s.minX + s.maxX) / 2);
        double leastX = bays.leastX(s, bay);
        double mostX = bays.mostX(s, bay);
        double leastY = bays.leastY(s);
        double mostY = bays.mostY(s, bay);
        double stepX = fromStep * size;
        double stepY = stepX;
        double last = toStep * size;
        while (costs[k] > 0 && (stepX > last || stepY > last)) {
            double dx;
            double dy;
            switch (chance.below(4)) {
                case 0 -> {
                    dx = stepX;
                    dy = 0;
                }
                case 1 -> {
                    dx = 0;
                    dy = stepY;
                }
                case 2 -> {
                    dx = stepX;
                    dy = stepY;
                }
                default -> {
                    dx = stepX;
                    dy = -stepY;
                }
            }
            boolean better = tryPlace(i, k, xs[k] + dx, ys[k] + dy, leastX, mostX, leastY, mostY)
                    || tryPlace(i, k, xs[k] - dx, ys[k] - dy, leastX, mostX, leastY, mostY);
            double factor = better ? 1.1 : 0.5;
            stepX = dx != 0 ? stepX * factor : stepX;
            stepY = dy != 0 ? stepY * factor : stepY;
        }
    }

    private boolean tryPlace(int i, int k, double atX, double atY, double leastX, double mostX, double leastY, double mostY) {
        double px = Math.max(leastX, Math.min(mostX, atX));
        double py = Math.max(leastY, Math.min(mostY, atY));
        double c = board.cost(i, shapes[k], px, py, costs[k]);
        if (c < costs[k]) {
            set(k, shapes[k], px, py, c);
            return true;
        }
        return false;
    }

    private void set(int k, int s, double atX, double atY, double c) {
        shapes[k] = s;
        xs[k] = atX;
        ys[k] = atY;
        costs[k] = c;
    }

    private void copy(int from, int to) {
        set(to, shapes[from], xs[from], ys[from], costs[from]);
    }
}
