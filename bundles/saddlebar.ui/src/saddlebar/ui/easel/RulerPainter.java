package saddlebar.ui.easel;

import saddlebar.production.light.RectMm;
import saddlebar.production.light.ScenePiece;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.Transform;

/** Draws a ruler along the upper and the left edge in the platform's colours; the extent of the chosen piece is marked on both. */
final class RulerPainter {
    static final int WIDTH_PT = 22;
    private static final int LEAST_LABEL_PT = 56;

    void paint(GC gc, Rectangle all, Viewport view, RulerScale.Unit unit, Optional<ScenePiece> chosen) {
        RulerScale scale = RulerScale.of(unit, view.ptPerMm(), LEAST_LABEL_PT);
        Color ground = gc.getDevice().getSystemColor(SWT.COLOR_WIDGET_BACKGROUND);
        Color ink = gc.getDevice().getSystemColor(SWT.COLOR_WIDGET_FOREGROUND);
        RectMm seen = view.visible();
        gc.setAntialias(SWT.OFF);
        gc.setLineWidth(1);
        gc.setBackground(ground);
        gc.fillRectangle(0, 0, all.width, WIDTH_PT);
        gc.fillRectangle(0, 0, WIDTH_PT, all.height);
        chosen.ifPresent(piece -> markExtent(gc, piece.contour().bounds(), view));
        gc.setForeground(ink);
        gc.drawLine(WIDTH_PT - 1, WIDTH_PT - 1, all.width, WIDTH_PT - 1);
        gc.drawLine(WIDTH_PT - 1, WIDTH_PT - 1, WIDTH_PT - 1, all.height);
        gc.setClipping(WIDTH_PT, 0, all.width - WIDTH_PT, WIDTH_PT);
        for (RulerScale.Tick tick : scale.ticks(seen.leftMm(), seen.rightMm(), view.ptPerMm())) {
            int x = WIDTH_PT + (int) Math.round(view.xPt(tick.atMm()));
            gc.drawLine(x, WIDTH_PT - 1 - length(tick), x, WIDTH_PT - 1);
            if (!tick.label().isEmpty()) {
                gc.drawText(tick.label(), x + 3, 0, true);
            }
        }
        gc.setClipping(0, WIDTH_PT, WIDTH_PT, all.height - WIDTH_PT);
        for (RulerScale.Tick tick : scale.ticks(seen.topMm(), seen.bottomMm(), view.ptPerMm())) {
            int y = WIDTH_PT + (int) Math.round(view.yPt(tick.atMm()));
            gc.drawLine(WIDTH_PT - 1 - length(tick), y, WIDTH_PT - 1, y);
            if (!tick.label().isEmpty()) {
                upwards(gc, tick.label(), 0, y - 3);
            }
        }
        gc.setClipping((Rectangle) null);
        String unitName = unit == RulerScale.Unit.MM ? "mm" : "in";
        Point size = gc.textExtent(unitName);
        gc.setBackground(ground);
        gc.fillRectangle(0, 0, WIDTH_PT - 1, WIDTH_PT - 1);
        if (size.x < WIDTH_PT) {
            gc.drawText(unitName, (WIDTH_PT - size.x) / 2, (WIDTH_PT - size.y) / 2, true);
        }
    }

    private static int length(RulerScale.Tick tick) {
        return (int) Math.round(tick.share() * (WIDTH_PT - 6));
    }

    private static void markExtent(GC gc, RectMm bounds, Viewport view) {
        gc.setBackground(gc.getDevice().getSystemColor(SWT.COLOR_LIST_SELECTION));
        int left = WIDTH_PT + (int) Math.round(view.xPt(bounds.leftMm()));
        int right = WIDTH_PT + (int) Math.round(view.xPt(bounds.rightMm()));
        int top = WIDTH_PT + (int) Math.round(view.yPt(bounds.topMm()));
        int bottom = WIDTH_PT + (int) Math.round(view.yPt(bounds.bottomMm()));
        gc.fillRectangle(left, WIDTH_PT - 5, Math.max(1, right - left), 4);
        gc.fillRectangle(WIDTH_PT - 5, top, 4, Math.max(1, bottom - top));
    }

    private static void upwards(GC gc, String text, int x, int y) {
        Transform turned = new Transform(gc.getDevice());
        Transform before = new Transform(gc.getDevice());
        try {
            gc.getTransform(before);
            gc.getTransform(turned);
            turned.translate(x, y);
            turned.rotate(-90);
            gc.setTransform(turned);
            gc.drawText(text, 0, 0, true);
            gc.setTransform(before);
        } finally {
            turned.dispose();
            before.dispose();
        }
    }
}
