package saddlebar.stencil.method;

import saddlebar.stencil.ScreeningRecipe;

/**
 * Halftone cells laid on the device grid without rounding from cell to cell: m x m cells fill a square tile with the corners v1 = (a, b) and
 * v2 = (-b, a) in whole px, so that every tile is the same. Tile area N = a^2 + b^2 px, ruling m dpi / sqrt(N), angle atan2(b, a).
 *
 * <p>One cell a tile (m = 1) makes every dot the same; more come nearer to ruling and angle, dots then differ by single px. Left to itself it
 * takes the fewest cells that come within 0.5 % of the ruling and 0.25 degrees of the angle, or else, among the tiles of up to 4 cells and 512
 * px a side, the one with the least error, both measured in these units.
 *
 * @param a     px along x of the tile's first side
 * @param b     px along y of the tile's first side; not both 0
 * @param cells m, cells along a side of the tile
 */
record CellGrid(int a, int b, int cells) {
    private static final double NEAR_RULING = 0.005;
    private static final double NEAR_ANGLE_DEG = 0.25;
    private static final int MOST_CELLS = 4;
    private static final int MOST_SIDE_PX = 512;

    CellGrid {
        if (a == 0 && b == 0 || cells < 1) {
            throw new IllegalArgumentException("no cell grid of " + cells + " cells over (" + a + ", " + b + ") px");
        }
    }

    static CellGrid of(ScreeningRecipe recipe) {
        double side = recipe.dpi() / recipe.lpi();
        if (recipe.supercell() != ScreeningRecipe.AUTOMATIC) {
            return rounded(side, recipe.angleDeg(), recipe.supercell());
        }
        CellGrid best = null;
        double leastError = Double.POSITIVE_INFINITY;
        for (int cells = 1; cells <= MOST_CELLS && (cells == 1 || cells * side <= MOST_SIDE_PX); cells++) {
            CellGrid grid = rounded(side, recipe.angleDeg(), cells);
            double ruling = Math.abs(grid.lpi(recipe.dpi()) / recipe.lpi() - 1) / NEAR_RULING;
            double angle = Math.abs(Math.IEEEremainder(grid.angleDeg() - recipe.angleDeg(), 360)) / NEAR_ANGLE_DEG;
            double error = Math.max(ruling, angle);
            if (error <= 1) {
                return grid;
            }
            if (error < leastError) {
                leastError = error;
                best = grid;
            }
        }
        return best;
    }

    private static CellGrid rounded(double sidePx, double angleDeg, int cells) {
        double angle = StrictMath.toRadians(angleDeg);
        int a = (int) Math.round(cells * sidePx * StrictMath.cos(angle));
        int b = (int) Math.round(cells * sidePx * StrictMath.sin(angle));
        return new CellGrid(a, b, cells);
    }

    /** N, px of a tile. */
    int area() {
        return a * a + b * b;
    }

    double lpi(double dpi) {
        return cells * dpi / Math.sqrt(area());
    }

    /** x towards y, more than -180 to 180. */
    double angleDeg() {
        return StrictMath.toDegrees(StrictMath.atan2(b, a));
    }

    /** Rows of the brick that tiles the plane: the greatest common divisor of a and b. */
    int brickRows() {
        return gcd(Math.abs(a), Math.abs(b));
    }

    /** Px in a row of the brick. */
    int brickPx() {
        return area() / brickRows();
    }

    /**
     * How far the pattern has moved along its row after one course of bricks. The lattice vector p v1 + q v2 with p b + q a = g climbs by one
     * course; the pattern at (x, y + g) is that at (x - s, y) with s = p a - q b.
     */
    int brickShift() {
        int[] pq = bezout(b, a);
        long s = (long) pq[0] * a - (long) pq[1] * b;
        return (int) Math.floorMod(-s, (long) brickPx());
    }

    /** Twice the first tile coordinate of the px centre, in px of N: 0 to 2N - 1 along v1. */
    int along(int x, int y) {
        return (int) Math.floorMod((long) a * (2 * x + 1) + (long) b * (2 * y + 1), 2L * area());
    }

    /** Twice the second tile coordinate of the px centre: 0 to 2N - 1 along v2. */
    int across(int x, int y) {
        return (int) Math.floorMod((long) -b * (2 * x + 1) + (long) a * (2 * y + 1), 2L * area());
    }

    private static int gcd(int first, int second) {
        return second == 0 ? first : gcd(second, first % second);
    }

    /** p and q with p first + q second = gcd(|first|, |second|). */
    private static int[] bezout(int first, int second) {
        if (second == 0) {
            return new int[] {first < 0 ? -1 : 1, 0};
        }
        int[] pq = bezout(second, first % second);
        return new int[] {pq[1], pq[0] - first / second * pq[1]};
    }
}
