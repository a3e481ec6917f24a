package saddlebar.stencil.limits;

import saddlebar.model.units.Require;

/**
 * A disc of whole px: the px whose centres lie within n/2 of its middle, which is the middle of a px for odd n and a corner of px for even n.
 * A straight bar along the grid holds it exactly if it is n px wide or wider.
 *
 * @param sizePx n, rows of the disc, 1 to 4096
 */
record Disc(int sizePx) {
    /** A length a hair above whole px, as decimals of a mm make it, is those px. */
    private static final double SLACK_PX = 0.05;

    Disc {
        Require.within("sizePx", sizePx, 1, 4096);
    }

    /** The smallest whole disc that is not finer than the diameter. */
    static Disc ofDiameter(double px) {
        return new Disc(Math.max(1, (int) Math.ceil(px - SLACK_PX)));
    }

    /** Px in row {@code row} of the disc, 0 to n - 1; centred. */
    int length(int row) {
        double dy = row - (sizePx - 1) / 2.0;
        double half = Math.sqrt(sizePx * sizePx / 4.0 - dy * dy);
        return sizePx % 2 == 1 ? 2 * (int) Math.floor(half) + 1 : 2 * (int) Math.floor(half + 0.5);
    }

    /** Px of the disc's box left of the first px of the row. */
    int indent(int row) {
        return (sizePx - length(row)) / 2;
    }

    /** Whole px that no place of the disc is farther from its middle: floor(n/2). */
    int reach() {
        return sizePx / 2;
    }

    /** Px on either side that lie within n/2 of a px {@code dy} rows away; -1 if none does. */
    int near(int dy) {
        double square = sizePx * sizePx / 4.0 - (double) dy * dy;
        return square < 0 ? -1 : (int) Math.floor(Math.sqrt(square));
    }
}
