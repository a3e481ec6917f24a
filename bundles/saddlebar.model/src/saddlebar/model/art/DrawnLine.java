package saddlebar.model.art;

import java.util.Objects;

import saddlebar.model.units.Require;

/**
 * One line as drawn in an artwork layer, flattened to straight steps, in mm of the artwork's page (x right, y down, from the top left).
 *
 * @param element the id or description of the drawn element, for telling problems
 * @param line    line of the artwork file in which the element stands, 0 if unknown
 * @param xy      x0, y0, x1, y1, … in mm, at least two points, finite
 * @param closed  whether the last point joins the first (the first point is then not repeated)
 */
public record DrawnLine(String element, int line, double[] xy, boolean closed) {
    public DrawnLine {
        Objects.requireNonNull(element, "element");
        if (xy.length < 4 || xy.length % 2 != 0) {
            throw new IllegalArgumentException("a drawn line needs at least two points but xy has " + xy.length + " numbers");
        }
        for (double value : xy) {
            Require.finite("xy", value);
        }
        xy = xy.clone();
    }

    @Override
    public double[] xy() {
        return xy.clone();
    }

    public int points() {
        return xy.length / 2;
    }

    public double x(int point) {
        return xy[2 * point];
    }

    public double y(int point) {
        return xy[2 * point + 1];
    }
}
