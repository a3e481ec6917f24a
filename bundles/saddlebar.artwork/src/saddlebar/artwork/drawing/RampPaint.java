package saddlebar.artwork.drawing;

import java.awt.Paint;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.util.Arrays;

/** Gradients as paints of a device whose pixels are known. */
final class RampPaint {
    /** Px that are looked at together: most gradients change their colour once in many px, at 1200 dpi once in a hundred. */
    private static final int STRETCH = 16;

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
                for (int i = 0; i < count; i += STRETCH) {
                    int many = Math.min(STRETCH, count - i);
                    double first = start + perX * (x + i + 0.5);
                    if (ramp.isEven(first, start + perX * (x + i + many - 0.5))) {
                        Arrays.fill(argb, from + i, from + i + many, ramp.at(first));
                        continue;
                    }
                    for (int j = i; j < i + many; j++) {
                        argb[from + j] = ramp.at(start + perX * (x + j + 0.5));
                    }
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
                for (int i = 0; i < count; i += STRETCH) {
                    int many = Math.min(STRETCH, count - i);
                    double first = t(rowX, rowY, x + i + 0.5);
                    double last = t(rowX, rowY, x + i + many - 0.5);
                    // t is convex along a line: where it is the least, the ends say nothing of what lies between
                    if (ramp.isEven(first, last) && (last > first ? t(rowX, rowY, x + i + 1.5) >= first : t(rowX, rowY, x + i + many - 1.5) >= last)) {
                        Arrays.fill(argb, from + i, from + i + many, ramp.at(first));
                        continue;
                    }
                    for (int j = i; j < i + many; j++) {
                        argb[from + j] = ramp.at(t(rowX, rowY, x + j + 0.5));
                    }
                }
            }

            private double t(double rowX, double rowY, double px) {
                double dx = rowX + back.getScaleX() * px;
                double dy = rowY + back.getShearY() * px;
                double dd = dx * dx + dy * dy;
                double de = dx * ex + dy * ey;
                return dd == 0 ? 0 : dd / (de + Math.sqrt(de * de + dd * rest));
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
