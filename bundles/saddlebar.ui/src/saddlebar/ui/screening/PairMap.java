package saddlebar.ui.screening;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import saddlebar.stencil.mesh.ScoredRuling;

/**
 * Rulings and angles as a chart: angles to the right, rulings upwards, each pair a cell, the darker the more its beat shows. Places in points, from the
 * chart's upper left corner.
 *
 * @param pairs  a full grid, angles rising, rulings falling, as {@link saddlebar.stencil.mesh.MeshBeats#map} has them
 * @param width  of the grid
 * @param height of the grid
 */
public record PairMap(List<ScoredRuling> pairs, int width, int height) {
    private static final double LEAST = 1e-4;
    private static final int PALEST_RGB = 0xF3F0E6;
    /** Vermilion, told from pale by its lightness alone. Source: Okabe, M., Ito, K. (2008). Color Universal Design. */
    private static final int MIDDLE_RGB = 0xD55E00;
    private static final int DARKEST_RGB = 0x2B1100;

    public PairMap {
        pairs = List.copyOf(Objects.requireNonNull(pairs, "pairs"));
    }

    public int columns() {
        return (int) pairs.stream().filter(pair -> pair.lpi() == pairs.get(0).lpi()).count();
    }

    public int rows() {
        return pairs.isEmpty() ? 0 : pairs.size() / columns();
    }

    /** Left edge of a column; that of the one after the last is the right edge of all. */
    public int x(int column) {
        return width * column / columns();
    }

    /** Upper edge of a row. */
    public int y(int row) {
        return height * row / rows();
    }

    public ScoredRuling at(int column, int row) {
        return pairs.get(row * columns() + column);
    }

    /** The pair under a place; empty beside the grid. */
    public Optional<ScoredRuling> under(int xPt, int yPt) {
        if (pairs.isEmpty() || xPt < 0 || yPt < 0 || xPt >= width || yPt >= height) {
            return Optional.empty();
        }
        int column = Math.min(columns() - 1, (int) ((xPt + 1L) * columns() - 1) / width);
        int row = Math.min(rows() - 1, (int) ((yPt + 1L) * rows() - 1) / height);
        return Optional.of(at(column, row));
    }

    /** Row of the ruling that is nearest, and column of the angle, which is the same after a quarter turn and mirrored at 45 degrees of a square mesh. */
    public int[] nearest(double lpi, double angleDeg) {
        double quarter = ((angleDeg % 90) + 90) % 90;
        double angle = Math.min(quarter, 90 - quarter);
        int bestColumn = 0;
        int bestRow = 0;
        for (int column = 1; column < columns(); column++) {
            if (Math.abs(at(column, 0).angleDeg() - angle) < Math.abs(at(bestColumn, 0).angleDeg() - angle)) {
                bestColumn = column;
            }
        }
        for (int row = 1; row < rows(); row++) {
            if (Math.abs(at(0, row).lpi() - lpi) < Math.abs(at(0, bestRow).lpi() - lpi)) {
                bestRow = row;
            }
        }
        return new int[] {bestColumn, bestRow};
    }

    /** The least score of all, but above 0. */
    double least() {
        return Math.max(LEAST, pairs.stream().mapToDouble(ScoredRuling::score).min().orElse(LEAST));
    }

    /** The greatest score of all, above the least. */
    double most() {
        return Math.max(1.01 * least(), pairs.stream().mapToDouble(ScoredRuling::score).max().orElse(LEAST));
    }

    /** Pale for the least score of the map, dark for the greatest, even steps of their ratio between. */
    int rgb(double score) {
        double share = Math.max(0, Math.min(1, Math.log(Math.max(score, LEAST) / least()) / Math.log(most() / least())));
        return share < 0.5 ? mixed(PALEST_RGB, MIDDLE_RGB, share * 2) : mixed(MIDDLE_RGB, DARKEST_RGB, share * 2 - 1);
    }

    private static int mixed(int one, int other, double share) {
        int rgb = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            rgb = rgb << 8 | (int) Math.round((one >> shift & 0xff) * (1 - share) + (other >> shift & 0xff) * share);
        }
        return rgb;
    }
}
