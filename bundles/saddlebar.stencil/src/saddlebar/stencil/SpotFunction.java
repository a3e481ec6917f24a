package saddlebar.stencil;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;

/**
 * The shapes that a halftone dot can grow in: the 21 predefined spot functions. f: [-1, 1] x [-1, 1] -> R over one cell, x and y from its
 * middle; we paint where f is highest first.
 *
 * <p>Source: ISO 32000-1:2008, 10.5.3 and Table 128, "Predefined spot functions"; there the highest are whitened first, so that the same
 * shapes result. Sines and cosines are {@link StrictMath}'s, the same bits on every machine.
 */
public enum SpotFunction {
    SIMPLE_DOT("SimpleDot", (x, y) -> 1 - (x * x + y * y)),
    INVERTED_SIMPLE_DOT("InvertedSimpleDot", (x, y) -> x * x + y * y - 1),
    DOUBLE_DOT("DoubleDot", (x, y) -> (sin(2 * x) + sin(2 * y)) / 2),
    INVERTED_DOUBLE_DOT("InvertedDoubleDot", (x, y) -> -(sin(2 * x) + sin(2 * y)) / 2),
    COSINE_DOT("CosineDot", (x, y) -> (StrictMath.cos(Math.PI * x) + StrictMath.cos(Math.PI * y)) / 2),
    DOUBLE("Double", (x, y) -> (sin(x) + sin(2 * y)) / 2),
    INVERTED_DOUBLE("InvertedDouble", (x, y) -> -(sin(x) + sin(2 * y)) / 2),
    LINE("Line", (x, y) -> -Math.abs(y)),
    LINE_X("LineX", (x, y) -> x),
    LINE_Y("LineY", (x, y) -> y),
    ROUND("Round", SpotFunction::round),
    ELLIPSE("Ellipse", SpotFunction::ellipse),
    ELLIPSE_A("EllipseA", (x, y) -> 1 - (x * x + 0.9 * y * y)),
    INVERTED_ELLIPSE_A("InvertedEllipseA", (x, y) -> x * x + 0.9 * y * y - 1),
    ELLIPSE_B("EllipseB", (x, y) -> 1 - Math.sqrt(x * x + 5.0 / 8 * y * y)),
    ELLIPSE_C("EllipseC", (x, y) -> 1 - (0.9 * x * x + y * y)),
    INVERTED_ELLIPSE_C("InvertedEllipseC", (x, y) -> 0.9 * x * x + y * y - 1),
    SQUARE("Square", (x, y) -> -Math.max(Math.abs(x), Math.abs(y))),
    CROSS("Cross", (x, y) -> -Math.min(Math.abs(x), Math.abs(y))),
    RHOMBOID("Rhomboid", (x, y) -> (0.9 * Math.abs(x) + Math.abs(y)) / 2),
    DIAMOND("Diamond", SpotFunction::diamond);

    /** Some functions jump; px that lie on the jump belong to one side of it, whatever their last bits. */
    private static final double EDGE = 1e-12;

    private final String standardName;
    private final DoubleBinaryOperator formula;

    SpotFunction(String standardName, DoubleBinaryOperator formula) {
        this.standardName = standardName;
        this.formula = formula;
    }

    /** The name in Table 128. */
    public String standardName() {
        return standardName;
    }

    /** The function's value at x, y, each -1 to 1 from the middle of the cell. */
    public double at(double x, double y) {
        return formula.applyAsDouble(x, y);
    }

    /** By the name of the standard, whatever its case; {@code cosine} is short for CosineDot. */
    public static Optional<SpotFunction> named(String name) {
        String wanted = name.toLowerCase(Locale.ROOT);
        if (wanted.equals("cosine")) {
            return Optional.of(COSINE_DOT);
        }
        for (SpotFunction spot : values()) {
            if (spot.standardName.toLowerCase(Locale.ROOT).equals(wanted)) {
                return Optional.of(spot);
            }
        }
        return Optional.empty();
    }

    /** The names people use first, then the others of the standard. */
    public static List<String> names() {
        List<String> names = new ArrayList<>(List.of("round", "ellipse", "line", "diamond", "cosine"));
        for (SpotFunction spot : values()) {
            if (spot != COSINE_DOT && !names.contains(spot.standardName.toLowerCase(Locale.ROOT))) {
                names.add(spot.standardName);
            }
        }
        return List.copyOf(names);
    }

    private static double sin(double halfTurns) {
        return StrictMath.sin(Math.PI * halfTurns);
    }

    private static double round(double x, double y) {
        double ax = Math.abs(x);
        double ay = Math.abs(y);
        return ax + ay <= 1 + EDGE ? 1 - (ax * ax + ay * ay) : (ax - 1) * (ax - 1) + (ay - 1) * (ay - 1) - 1;
    }

    private static double ellipse(double x, double y) {
        double ax = Math.abs(x);
        double ay = Math.abs(y);
        double w = 3 * ax + 4 * ay - 3;
        if (w < -EDGE) {
            return 1 - (ax * ax + (ay / 0.75) * (ay / 0.75)) / 4;
        }
        if (w > 1 + EDGE) {
            return ((1 - ax) * (1 - ax) + ((1 - ay) / 0.75) * ((1 - ay) / 0.75)) / 4 - 1;
        }
        return 0.5 - w;
    }

    private static double diamond(double x, double y) {
        double ax = Math.abs(x);
        double ay = Math.abs(y);
        double t = ax + ay;
        if (t <= 0.75 + EDGE) {
            return 1 - (ax * ax + ay * ay);
        }
        if (t <= 1.23 + EDGE) {
            return 1 - (0.85 * ax + ay);
        }
        return (ax - 1) * (ax - 1) + (ay - 1) * (ay - 1) - 1;
    }
}
