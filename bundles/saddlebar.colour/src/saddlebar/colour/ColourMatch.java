package saddlebar.colour;

import java.util.Objects;

/**
 * How near a colour comes to what was approved. The limits 1 and 3 are common practice without a published source: about 1 is just seen side by side,
 * 2 to 3 is taken between pieces of one colour.
 *
 * @param deltaE2000 CIEDE2000
 * @param verdict    in words
 */
public record ColourMatch(double deltaE2000, Verdict verdict) {
    public static final double JUST_SEEN = 1;
    public static final double ACCEPTABLE = 3;

    /** From like to unlike. */
    public enum Verdict {
        ALIKE("alike to the eye"), ACCEPTABLE("near: seen side by side"), DIFFERENT("another colour");

        private final String words;

        Verdict(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public ColourMatch {
        Objects.requireNonNull(verdict, "verdict");
    }

    public static ColourMatch of(Lab seen, Lab approved) {
        double difference = ColourDifference.ciede2000(seen, approved);
        return new ColourMatch(difference, verdictOf(difference));
    }

    public static Verdict verdictOf(double deltaE2000) {
        return deltaE2000 <= JUST_SEEN ? Verdict.ALIKE : deltaE2000 <= ACCEPTABLE ? Verdict.ACCEPTABLE : Verdict.DIFFERENT;
    }
}
