package saddlebar.cartoon.opening;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

import saddlebar.model.problem.Refusal;

/** The shapes of openings by the words of the trade, each from its width, its whole height and, where it has one, its rise. */
public enum OpeningKinds {
    RECTANGLE(false), SEGMENTAL(true), SEMICIRCULAR(false), EQUILATERAL(false), POINTED(true), THREE_CENTRED(true), OGEE(true), ROUNDEL(false), TREFOIL(
            false),
    QUATREFOIL(false), CINQUEFOIL(false);

    private final boolean needsRise;

    OpeningKinds(boolean needsRise) {
        this.needsRise = needsRise;
    }

    /** The word for it, such as {@code three-centred}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<OpeningKinds> ofWord(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
    }

    /** Whether the rise of the head above the springing line has to be measured; others have it from the width, or have none. */
    public boolean needsRise() {
        return needsRise;
    }

    /** Whether width and height are one measure. */
    public boolean isRound() {
        return ordinal() >= ROUNDEL.ordinal();
    }

    /**
     * @param widthMm  between the jambs, or across
     * @param heightMm from sill to crown; not asked of round ones
     * @param riseMm   from springing line to crown, where {@link #needsRise()}
     * @throws Refusal if no such shape has these measures
     */
    public OpeningShape shape(double widthMm, double heightMm, double riseMm) {
        return switch (this) {
            case RECTANGLE -> RoundOpenings.rectangle(widthMm, heightMm);
            case SEGMENTAL -> ArchedOpenings.segmental(widthMm, jamb(heightMm, riseMm), riseMm);
            case SEMICIRCULAR -> ArchedOpenings.semicircular(widthMm, jamb(heightMm, widthMm / 2));
            case EQUILATERAL -> ArchedOpenings.equilateral(widthMm, jamb(heightMm, widthMm * StrictMath.sqrt(3) / 2));
            case POINTED -> ArchedOpenings.pointed(widthMm, jamb(heightMm, riseMm), riseMm);
            case THREE_CENTRED -> ArchedOpenings.threeCentred(widthMm, jamb(heightMm, riseMm), riseMm);
            case OGEE -> ArchedOpenings.ogee(widthMm, jamb(heightMm, riseMm), riseMm);
            case ROUNDEL -> RoundOpenings.roundel(widthMm);
            case TREFOIL -> RoundOpenings.foils(3, widthMm);
            case QUATREFOIL -> RoundOpenings.quatrefoil(widthMm);
            case CINQUEFOIL -> RoundOpenings.foils(5, widthMm);
        };
    }

    private double jamb(double heightMm, double riseMm) {
        double jamb = heightMm - riseMm;
        if (jamb < -0.5) {
            throw new Refusal(word() + " arch", String.format(Locale.ROOT, "its head of %.1f mm is higher than the whole opening of %.1f mm", riseMm, heightMm),
                    "measure the height from the sill to the crown");
        }
        return Math.max(0, jamb);
    }
}
