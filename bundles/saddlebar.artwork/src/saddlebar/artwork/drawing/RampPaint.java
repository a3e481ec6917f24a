package saddlebar.artwork.drawing;

import java.awt.Paint;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;

/** Gradients as paints of a device whose pixels are known. */
final class RampPaint {
    private RampPaint() {
    }

    static Paint of(Ramp.Linear linear, AffineTransform mmToPx) {
        double dx = linear.x2() - linear.x1();
        double dy = linear.y2() - linear.y1();
        double length2 = dx * dx + dy * dy;
        AffineTransform back = inverse(mmToPx, linear.toMm());
        Ramp ramp = linear.ramp();
        if (back == null || !(length2 > 0)) { // ends in one point: the last colour (SVG 1.1, 13.2.2)
            return new Tint.Flat(ramp.last()).paint();
        }
        double perX = (back.getScaleX() * dx + back.getShearY() * dy) / length2;
        double perY = (back.getShearX() * dx + back.getScaleY() * dy) / length2;
        double atZero = ((back.getTranslateX() - linear.x1()) * dx + (back.getTranslateY() - linear.y1()) * dy) / length2;
        return new PixelPaint(ramp.opaque()) {
            @Override
            void row(int x, int y, int[] argb, int from, int count) {
                double start = atZero + perY * (y + 0.5);
                for (int i = 0; i < count; i++) {
                    argb[from + i] = ramp.at(start + perX * (x + i + 0.5));
                }
            }
        };
    }

    /**
     * With d = point - focus and e = centre - focus, the circle is met at focus + d/t: |d/t - e| = r, hence
     * t = d.d / (d.e + sqrt((d.e)^2 + d.d (r^2 - e.e))).
     */
    static Paint of(Ramp.Radial radial, AffineTransform mmToPx) {
        AffineTransform back = inverse(mmToPx, radial.toMm());
        Ramp ramp = radial.ramp();
        if (back == null || !(radial.r() > 0)) {
            return new Tint.Flat(ramp.last()).paint();
        }
        double ex = radial.cx() - radial.fx();
        double ey = radial.cy() - radial.fy();
        double rest = radial.r() * radial.r() - ex * ex - ey * ey;
        return new PixelPaint(ramp.opaque()) {
            @Override
            void row(int x, int y, int[] argb, int from, int count) {
                double rowX = back.getShearX() * (y + 0.5) + back.getTranslateX() - radial.fx();
                double rowY = back.getScaleY() * (y + 0.5) + back.getTranslateY() - radial.fy();
                for (int i = 0; i < count; i++) {
                    double dx = rowX + back.getScaleX() * (x + i + 0.5);
                    double dy = rowY + back.getShearY() * (x + i + 0.5);
                    double dd = dx * dx + dy * dy;
                    double de = dx * ex + dy * ey;
                    double t = dd == 0 ? 0 : dd / (de + Math.sqrt(de * de + dd * rest));
                    argb[from + i] = ramp.at(t);
                }
            }
        };
    }

    private static AffineTransform inverse(AffineTransform mmToPx, AffineTransform toMm) {
        try {
            return Tint.joined(mmToPx, toMm).createInverse();
        } catch (NoninvertibleTransformException e) {
            return null; // squeezed flat
        }
    }
}
