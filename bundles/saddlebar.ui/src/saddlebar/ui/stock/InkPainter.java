package saddlebar.ui.stock;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;

import saddlebar.report.truesize.Ink;
import saddlebar.report.truesize.TrueSizeDrawing;

/** Puts a drawing of mm on a canvas, as large as there is room. On paper white: it is what will be printed. */
final class InkPainter {
    private static final int FREE_PX = 10;

    private InkPainter() {
    }

    static void paint(TrueSizeDrawing drawing, GC gc, Rectangle room) {
        double scale = Math.min((room.width - 2 * FREE_PX) / drawing.widthMm(), (room.height - 2 * FREE_PX) / drawing.heightMm());
        if (scale <= 0) {
            return;
        }
        double x = room.x + (room.width - drawing.widthMm() * scale) / 2;
        double y = room.y + (room.height - drawing.heightMm() * scale) / 2;
        gc.setAntialias(SWT.ON);
        gc.setBackground(gc.getDevice().getSystemColor(SWT.COLOR_WHITE));
        gc.fillRectangle((int) x, (int) y, (int) (drawing.widthMm() * scale), (int) (drawing.heightMm() * scale));
        for (Ink ink : drawing.ink()) {
            if (ink instanceof Ink.Line line) {
                gc.setForeground(colour(line.rgb()));
                gc.setLineWidth(1);
                gc.setLineStyle(line.dashMm().length > 0 ? SWT.LINE_DASH : SWT.LINE_SOLID);
                draw(gc, line.paths(), line.closed(), false, x, y, scale);
            } else if (ink instanceof Ink.Area area) {
                gc.setBackground(colour(area.rgb()));
                draw(gc, area.rings(), true, true, x, y, scale);
            } else if (ink instanceof Ink.Words words) {
                words(gc, words, x, y, scale);
            }
        }
    }

    private static void draw(GC gc, List<double[]> paths, boolean closed, boolean filled, double x, double y, double scale) {
        Path path = new Path(gc.getDevice());
        try {
            for (double[] xy : paths) {
                for (int i = 0; i + 1 < xy.length; i += 2) {
                    float px = (float) (x + xy[i] * scale);
                    float py = (float) (y + xy[i + 1] * scale);
                    if (i == 0) {
                        path.moveTo(px, py);
                    } else {
                        path.lineTo(px, py);
                    }
                }
                if (closed) {
                    path.close();
                }
            }
            if (filled) {
                gc.fillPath(path);
            } else {
                gc.drawPath(path);
            }
        } finally {
            path.dispose();
        }
    }

    private static void words(GC gc, Ink.Words words, double x, double y, double scale) {
        Font usual = gc.getFont();
        FontData data = usual.getFontData()[0];
        data.setHeight(Math.max(7, Math.min(16, (int) (words.capitalMm() * scale))));
        Font font = new Font(gc.getDevice(), data);
        try {
            gc.setFont(font);
            gc.setForeground(colour(words.rgb()));
            Point size = gc.textExtent(words.text());
            gc.drawText(words.text(), (int) (x + words.xMm() * scale) - size.x / 2, (int) (y + words.yMm() * scale) - size.y / 2, true);
        } finally {
            gc.setFont(usual);
            font.dispose();
        }
    }

    private static Color colour(int rgb) {
        return new Color(new RGB(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255));
    }
}
