package saddlebar.materials.cost;

import saddlebar.model.units.Require;

/**
 * How far the amount of a source may come out from what is reckoned, as factors: a triangle from {@code low} over 1 to {@code high}.
 *
 * @param low  above 0, at most 1
 * @param high 1 or more
 */
public record Spread(double low, double high) {
    /** Known to the unit: a price of the book, a count of sheets. */
    public static final Spread SURE = new Spread(1, 1);

    public Spread {
        Require.within("low", low, 1e-6, 1);
        Require.within("high", high, 1, 100);
    }

    /** Quantile of the triangular distribution: F = (x - a)^2 / ((b - a)(c - a)) up to the mode c = 1, and mirrored above. */
    double factor(double probability) {
        double width = high - low;
        if (width == 0) {
            return 1;
        }
        return probability <= (1 - low) / width
                ? low + Math.sqrt(probability * width * (1 - low))
                : high - Math.sqrt((1 - probability) * width * (high - 1));
    }
}
