package saddlebar.production.light;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;

import saddlebar.model.commission.MakingState;

/**
 * The hatch by which a state of making is told, beside its word and never by colour alone: the farther a piece is made, the closer the lines. Lines
 * hang on the window, not on the piece, so that a picture put together from squares shows no seams.
 */
public final class StateHatch {
    private static final Color DARK = new Color(0x10, 0x12, 0x14, 235);
    private static final Color LIGHT = new Color(255, 255, 255, 225);
    private static final double WIDE_PT = 14;
    private static final double CLOSE_PT = 7;

    private StateHatch() {
    }

    /**
     * Lays the hatch over a shape.
     *
     * @param shape   in the pen's pixels
     * @param originX where the window's own zero lies, in the pen's pixels
     * @param originY where the window's own zero lies
     * @param pxPerPt device pixels a point
     */
    static void lay(Graphics2D pen, Shape shape, MakingState state, double originX, double originY, double pxPerPt) {
        Rectangle2D box = shape.getBounds2D();
        Path2D lines = lines(state, box, originX, originY, pxPerPt);
        Shape clipBefore = pen.getClip();
        pen.clip(shape);
        pen.setColor(LIGHT);
        pen.setStroke(new BasicStroke((float) (2.6 * pxPerPt)));
        pen.draw(lines);
        pen.setColor(DARK);
        pen.setStroke(new BasicStroke((float) (1.1 * pxPerPt)));
        pen.draw(lines);
        pen.setClip(clipBefore);
    }

    private static Path2D lines(MakingState state, Rectangle2D box, double x0, double y0, double pxPerPt) {
        Path2D lines = new Path2D.Double();
        double wide = WIDE_PT * pxPerPt;
        double close = CLOSE_PT * pxPerPt;
        switch (state) {
            case DRAWN -> {
                // bare glass
            }
            case ON_SHEET -> rising(lines, box, x0, y0, wide);
            case ON_SCREEN -> level(lines, box, x0, y0, wide);
            case PRINTED -> rising(lines, box, x0, y0, close);
            case FIRED -> {
                rising(lines, box, x0, y0, wide);
                falling(lines, box, x0, y0, wide);
            }
            case GLAZED -> {
                rising(lines, box, x0, y0, close);
                falling(lines, box, x0, y0, close);
            }
            case IN_DOUBT -> rings(lines, box, x0, y0, wide);
            case TO_REMAKE -> {
                lines.append(new Line2D.Double(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY()), false);
                lines.append(new Line2D.Double(box.getMinX(), box.getMaxY(), box.getMaxX(), box.getMinY()), false);
            }
        }
        return lines;
    }

    /** Lines on which x + y stays the same. */
    private static void rising(Path2D lines, Rectangle2D box, double x0, double y0, double step) {
        double from = box.getMinX() - x0 + box.getMinY() - y0;
        double to = box.getMaxX() - x0 + box.getMaxY() - y0;
        for (double k = Math.ceil(from / step) * step; k <= to; k += step) {
            lines.moveTo(box.getMinX(), k - (box.getMinX() - x0) + y0);
            lines.lineTo(box.getMaxX(), k - (box.getMaxX() - x0) + y0);
        }
    }

    /** Lines on which y - x stays the same. */
    private static void falling(Path2D lines, Rectangle2D box, double x0, double y0, double step) {
        double from = box.getMinY() - y0 - (box.getMaxX() - x0);
        double to = box.getMaxY() - y0 - (box.getMinX() - x0);
        for (double k = Math.ceil(from / step) * step; k <= to; k += step) {
            lines.moveTo(box.getMinX(), k + (box.getMinX() - x0) + y0);
            lines.lineTo(box.getMaxX(), k + (box.getMaxX() - x0) + y0);
        }
    }

    private static void level(Path2D lines, Rectangle2D box, double x0, double y0, double step) {
        for (double y = Math.ceil((box.getMinY() - y0) / step) * step + y0; y <= box.getMaxY(); y += step) {
            lines.moveTo(box.getMinX(), y);
            lines.lineTo(box.getMaxX(), y);
        }
    }

    private static void rings(Path2D lines, Rectangle2D box, double x0, double y0, double step) {
        double r = step / 4;
        for (double y = Math.floor((box.getMinY() - y0) / step) * step + y0; y <= box.getMaxY() + r; y += step) {
            for (double x = Math.floor((box.getMinX() - x0) / step) * step + x0; x <= box.getMaxX() + r; x += step) {
                lines.append(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r), false);
            }
        }
    }

    /** A small framed sample beside the word, on a quiet ground that both themes can stand. */
    public static BufferedImage sample(MakingState state, int widthPt, int heightPt, double pxPerPt) {
        int width = (int) Math.round(widthPt * pxPerPt);
        int height = (int) Math.round(heightPt * pxPerPt);
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = picture.createGraphics();
        try {
            pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            pen.setColor(new Color(0xB9C7CF));
            pen.fillRect(0, 0, width, height);
            lay(pen, new Rectangle2D.Double(0, 0, width, height), state, width / 2.0, height / 2.0, pxPerPt * 0.75);
            pen.setColor(DARK);
            pen.setStroke(new BasicStroke((float) pxPerPt));
            pen.draw(new Rectangle2D.Double(pxPerPt / 2, pxPerPt / 2, width - pxPerPt, height - pxPerPt));
        } finally {
            pen.dispose();
        }
        return picture;
    }
}
