package saddlebar.stencil.method;

import saddlebar.model.units.Units;
import saddlebar.stencil.LineCourse;
import saddlebar.stencil.ScreeningRecipe;

/** Phase of a line screen, f: (x, y) in device px -> R, one more from line to line. */
@FunctionalInterface
interface LinePhase {
    double at(double xPx, double yPx);

    /** The phases of one row at {@code fromPx}, {@code fromPx + stepPx} and so on, as many as {@code target} takes; both in halves of a px. */
    default void row(double yPx, double fromPx, double stepPx, double[] target) {
        for (int i = 0; i < target.length; i++) {
            target[i] = at(fromPx + i * stepPx, yPx);
        }
    }

    /** Of a course that is a plain function of the place. */
    static LinePhase of(ScreeningRecipe recipe, int widthPx, int heightPx) {
        double perPx = recipe.lpi() / recipe.dpi();
        double angle = StrictMath.toRadians(recipe.angleDeg());
        double c = StrictMath.cos(angle);
        double s = StrictMath.sin(angle);
        LineCourse course = recipe.lineCourse();
        if (course instanceof LineCourse.Rings rings) {
            double cx = rings.xShare() * widthPx;
            double cy = rings.yShare() * heightPx;
            return (x, y) -> perPx * Math.sqrt((x - cx) * (x - cx) + (y - cy) * (y - cy));
        }
        if (course instanceof LineCourse.Waves waves) {
            double turn = 2 * Math.PI / (waves.lengthMm() * recipe.dpi() / Units.MM_PER_INCH);
            double swing = waves.heightMm() * recipe.dpi() / Units.MM_PER_INCH / 2;
            return (x, y) -> perPx * (y * c - x * s + swing * StrictMath.sin(turn * (x * c + y * s)));
        }
        return new Straight(perPx, c, s);
    }

    /** Straight lines: the row is one product after the other, without a call a place. */
    record Straight(double perPx, double cos, double sin) implements LinePhase {
        @Override
        public double at(double xPx, double yPx) {
            return perPx * (yPx * cos - xPx * sin);
        }

        @Override
        public void row(double yPx, double fromPx, double stepPx, double[] target) {
            double down = yPx * cos;
            double xPx = fromPx;
            for (int i = 0; i < target.length; i++) {
                target[i] = perPx * (down - xPx * sin);
                xPx += stepPx;
            }
        }
    }
}
