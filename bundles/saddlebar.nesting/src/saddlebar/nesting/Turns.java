package saddlebar.nesting;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

import saddlebar.model.units.Require;

/**
 * The angles at which a shape may be placed: glass with a grain may be turned by half, a stencil by quarters, a piece on a kiln shelf freely.
 *
 * @param free    any angle at all
 * @param degrees the allowed angles, each from 0 up to but less than 360, ascending and none twice; 0 alone if {@code free}
 */
public record Turns(boolean free, List<Double> degrees) {
    /** As drawn. */
    public static final Turns NONE = new Turns(false, List.of(0.0));
    /** As drawn or upside down. */
    public static final Turns HALF = new Turns(false, List.of(0.0, 180.0));
    /** By quarters of a turn. */
    public static final Turns QUARTER = new Turns(false, List.of(0.0, 90.0, 180.0, 270.0));
    /** At any angle. */
    public static final Turns FREE = new Turns(true, List.of(0.0));

    public Turns {
        degrees = degrees.stream().map(Turns::normal).distinct().sorted().toList();
        if (degrees.isEmpty()) {
            throw new IllegalArgumentException("degrees must name at least one angle");
        }
    }

    /** An explicit list of angles in degrees, in any order; 450 is taken as 90. */
    public static Turns of(List<Double> degrees) {
        return new Turns(false, Objects.requireNonNull(degrees, "degrees"));
    }

    /** The turns that a list of items calls {@code no}, {@code half}, {@code quarter} or {@code free}; empty for any other word. */
    public static Optional<Turns> ofWord(String word) {
        return switch (word.strip().toLowerCase(Locale.ROOT)) {
            case "no" -> Optional.of(NONE);
            case "half" -> Optional.of(HALF);
            case "quarter" -> Optional.of(QUARTER);
            case "free" -> Optional.of(FREE);
            default -> Optional.empty();
        };
    }

    /** May the shape be placed at this angle in degrees? */
    public boolean allows(double angleDeg) {
        return free || degrees.contains(normal(angleDeg));
    }

    /** Are all allowed angles whole quarters of a turn? */
    public boolean onlyQuarters() {
        return !free && degrees.stream().allMatch(d -> d % 90 == 0);
    }

    private static double normal(double angleDeg) {
        double within = Require.finite("degrees", angleDeg) % 360;
        double positive = within < 0 ? within + 360 : within;
        return positive >= 360 ? 0 : positive + 0.0; // + 0.0: no negative zero
    }
}
