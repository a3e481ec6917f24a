package saddlebar.ui.opening;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import saddlebar.cartoon.opening.BarRule;
import saddlebar.cartoon.opening.MeasuredFrame;
import saddlebar.cartoon.opening.OpeningKinds;
import saddlebar.cartoon.opening.OpeningMeasures;
import saddlebar.cartoon.opening.OpeningPlan;
import saddlebar.cartoon.opening.PanelDivision;
import saddlebar.model.problem.Refusal;
import saddlebar.ui.Messages;
import saddlebar.ui.TypedLength;

/** What the dialog knows: the words in its fields, what is wrong with each, and what follows from all. No widget. */
final class OpeningForm {
    /** A field for a length. */
    enum Field {
        WIDTH, HEIGHT, RISE, TOP, RIGHT, BOTTOM, LEFT, DOWN, UP, REBATE, CLEARANCE
    }

    private static final double LEAST_MM = 10;
    private static final double MOST_MM = 20_000;
    private static final double MOST_REBATE_MM = 200;
    private static final double MOST_CLEARANCE_MM = 100;

    private final TypedLength lengths;
    private final Map<Field, String> typed = new EnumMap<>(Field.class);
    private OpeningKinds kind = OpeningKinds.RECTANGLE;
    private boolean framed;
    private boolean inRebate;
    private BarRule bars = BarRule.EXTERIOR;

    OpeningForm(TypedLength lengths) {
        this.lengths = lengths;
    }

    void type(Field field, String text) {
        typed.put(field, text);
    }

    void take(OpeningKinds other) {
        kind = other;
    }

    /** Four sides and two diagonals in place of width and height. */
    void measureFrame(boolean on) {
        framed = on;
    }

    void measureInRebate(boolean on) {
        inRebate = on;
    }

    void take(BarRule rule) {
        bars = rule;
    }

    boolean isFramed() {
        return framed && kind == OpeningKinds.RECTANGLE;
    }

    /** Whether a field is asked for with what is chosen now. */
    boolean asks(Field field) {
        return switch (field) {
            case WIDTH -> !isFramed();
            case HEIGHT -> !isFramed() && !kind.isRound();
            case RISE -> kind.needsRise();
            case TOP, RIGHT, BOTTOM, LEFT, DOWN, UP -> isFramed();
            case REBATE, CLEARANCE -> true;
        };
    }

    /** What is wrong with a field; empty if it is right, or not asked for. */
    Optional<String> wrong(Field field) {
        if (!asks(field)) {
            return Optional.empty();
        }
        OptionalDouble mm = mm(field);
        if (mm.isEmpty()) {
            return Optional.of(Messages.Opening_noLength);
        }
        boolean fits = switch (field) {
            case REBATE -> mm.getAsDouble() <= MOST_REBATE_MM;
            case CLEARANCE -> mm.getAsDouble() <= MOST_CLEARANCE_MM;
            default -> mm.getAsDouble() >= LEAST_MM && mm.getAsDouble() <= (field == Field.DOWN || field == Field.UP ? 2 : 1) * MOST_MM;
        };
        return fits ? Optional.empty() : Optional.of(Messages.Opening_outOfRange);
    }

    /** What was measured; empty while a field is wrong. */
    Optional<OpeningMeasures> measures() {
        for (Field field : Field.values()) {
            if (wrong(field).isPresent()) {
                return Optional.empty();
            }
        }
        Optional<MeasuredFrame> frame = isFramed()
                ? Optional.of(new MeasuredFrame(of(Field.TOP), of(Field.RIGHT), of(Field.BOTTOM), of(Field.LEFT), of(Field.DOWN), of(Field.UP)))
                : Optional.empty();
        return Optional.of(new OpeningMeasures(kind, of(Field.WIDTH), of(Field.HEIGHT), of(Field.RISE), frame, inRebate, of(Field.REBATE),
                of(Field.CLEARANCE), bars, PanelDivision.USUAL_PERIMETER_MM));
    }

    /**
     * What follows from the measures.
     *
     * @throws Refusal if they fit no opening
     */
    static OpeningPlan plan(OpeningMeasures measures) {
        return OpeningPlan.of(measures);
    }

    private double of(Field field) {
        return asks(field) ? mm(field).orElse(0) : 0;
    }

    private OptionalDouble mm(Field field) {
        return lengths.mm(typed.getOrDefault(field, ""));
    }
}
