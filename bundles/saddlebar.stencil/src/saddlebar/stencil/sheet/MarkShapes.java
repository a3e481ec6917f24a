package saddlebar.stencil.sheet;

import java.awt.geom.Path2D;

/** Plain shapes of marks in mm, wound so that the non-zero rule fills them. */
final class MarkShapes {
    /** Control points of a quarter circle by one cubic curve, as a share of the radius: 4/3 (sqrt 2 - 1). */
    private static final double QUARTER = 4.0 / 3 * (Math.sqrt(2) - 1);

    private MarkShapes() {
    }

    static Path2D box(double xMm, double yMm, double widthMm, double heightMm) {
        Path2D box = new Path2D.Double(Path2D.WIND_NON_ZERO);
        box.moveTo(xMm, yMm);
        box.lineTo(xMm + widthMm, yMm);
        box.lineTo(xMm + widthMm, yMm + heightMm);
        box.lineTo(xMm, yMm + heightMm);
        box.closePath();
        return box;
    }

    /** Cross in a ring. */
    static Path2D register(RectMm box, double strokeMm) {
        double x = box.xMm() + box.widthMm() / 2;
        double y = box.yMm() + box.heightMm() / 2;
        Path2D shape = box(box.xMm(), y - strokeMm / 2, box.widthMm(), strokeMm);
        shape.append(box(x - strokeMm / 2, box.yMm(), strokeMm, box.heightMm()), false);
        double radius = box.widthMm() / 3;
        circle(shape, x, y, radius + strokeMm / 2, 1);
        circle(shape, x, y, radius - strokeMm / 2, -1);
        return shape;
    }

    private static void circle(Path2D shape, double x, double y, double radius, int direction) {
        double k = QUARTER * radius;
        double d = direction;
        shape.moveTo(x + radius, y);
        shape.curveTo(x + radius, y + d * k, x + k, y + d * radius, x, y + d * radius);
        shape.curveTo(x - k, y + d * radius, x - radius, y + d * k, x - radius, y);
        shape.curveTo(x - radius, y - d * k, x - k, y - d * radius, x, y - d * radius);
        shape.curveTo(x + k, y - d * radius, x + radius, y - d * k, x + radius, y);
        shape.closePath();
    }

    /** An arrow that points up and fills a box. */
    static Path2D upArrow(RectMm box) {
        double middle = box.xMm() + box.widthMm() / 2;
        double shaft = box.widthMm() * 0.09;
        double neck = box.yMm() + box.heightMm() * 0.45;
        Path2D arrow = new Path2D.Double(Path2D.WIND_NON_ZERO);
        arrow.moveTo(middle, box.yMm());
        arrow.lineTo(middle + box.widthMm() * 0.36, neck);
        arrow.lineTo(middle + shaft, neck);
        arrow.lineTo(middle + shaft, box.bottomMm());
        arrow.lineTo(middle - shaft, box.bottomMm());
        arrow.lineTo(middle - shaft, neck);
        arrow.lineTo(middle - box.widthMm() * 0.36, neck);
        arrow.closePath();
        return arrow;
    }
}
