package saddlebar.ui.colourway;

import java.math.BigDecimal;
import java.text.NumberFormat;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;

import saddlebar.production.colourway.ColourwayComparison;
import saddlebar.production.colourway.ColourwayComparison.PieceDifference;

/** Differences of colourways in words. */
final class SideBySideWords {
    private SideBySideWords() {
    }

    /** How many pieces differ, by how much at most, and what the second costs more. */
    static String summary(ColourwayComparison comparison) {
        String differ = comparison.differing() == 0
                ? ColourWords.Beside_same
                : comparison.differing() == 1 ? ColourWords.Beside_one : NLS.bind(ColourWords.Beside_many, comparison.differing());
        return differ + money(comparison).map(more -> ColourWords.List_comma + more).orElse("");
    }

    private static Optional<String> money(ColourwayComparison comparison) {
        String currency = comparison.cost().currency();
        return comparison.costsMore().map(more -> more.signum() == 0
                ? ColourWords.Beside_sameCost
                : NLS.bind(more.signum() > 0 ? ColourWords.Beside_dearer : ColourWords.Beside_cheaper, money(more.abs()), currency));
    }

    /** An amount as it is written where the reader lives. */
    static String money(BigDecimal amount) {
        NumberFormat format = NumberFormat.getNumberInstance(Locale.getDefault(Locale.Category.FORMAT));
        format.setMinimumFractionDigits(Math.max(0, Math.min(amount.scale(), 6)));
        return format.format(amount);
    }

    /** CIEDE2000 and what the eye makes of it. */
    static String difference(PieceDifference piece) {
        if (!piece.differs()) {
            return "";
        }
        return piece.deltaE2000().map(value -> NLS.bind(ColourWords.Beside_difference, String.format(Locale.getDefault(Locale.Category.FORMAT), "%.1f", value),
                switch (piece.verdict().orElseThrow()) {
                    case ALIKE -> ColourWords.Beside_alike;
                    case ACCEPTABLE -> ColourWords.Beside_near;
                    case DIFFERENT -> ColourWords.Beside_other;
                })).orElse(ColourWords.Beside_unknown);
    }
}
