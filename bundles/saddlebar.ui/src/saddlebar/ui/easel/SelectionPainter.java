package saddlebar.ui.easel;

import saddlebar.production.light.ScenePiece;
import saddlebar.production.light.ScreenLight;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Rectangle;

import saddlebar.model.problem.PlaceMm;

/** Draws on the screen what changes at every click: the chosen piece's bright rim, the ring about a place, words where there is no window. */
final class SelectionPainter {
    /** Orange of Okabe and Ito, seen on every glass between its dark and light lines. */
    private static final int RIM_RGB = 0xFFB000;
    private static final int DARK_RGB = 0x101214;
    private static final int LIGHT_RGB = 0xFFFFFF;
    private static final int RING_PT = 18;

    void paint(GC gc, ScenePiece piece, TileGrid grid, int edgePt) {
        Path path = new Path(gc.getDevice());
        try {
            for (int r = 0; r < piece.contour().ringCount(); r++) {
                double[] ring = piece.contour().ring(r);
                for (int i = 0; i < ring.length; i += 2) {
                    float x = (float) (edgePt + ring[i] * grid.ptPerMm() - grid.leftPt());
                    float y = (float) (edgePt + ring[i + 1] * grid.ptPerMm() - grid.topPt());
                    if (i == 0) {
                        path.moveTo(x, y);
                    } else {
                        path.lineTo(x, y);
                    }
                }
                path.close();
            }
            gc.setAntialias(SWT.ON);
            gc.setLineJoin(SWT.JOIN_ROUND);
            stroke(gc, path, 7, DARK_RGB);
            stroke(gc, path, 5, LIGHT_RGB);
            stroke(gc, path, 3, RIM_RGB);
        } finally {
            path.dispose();
        }
    }

    void ring(GC gc, PlaceMm place, TileGrid grid, int edgePt) {
        int x = (int) Math.round(edgePt + place.xMm() * grid.ptPerMm() - grid.leftPt());
        int y = (int) Math.round(edgePt + place.yMm() * grid.ptPerMm() - grid.topPt());
        gc.setAntialias(SWT.ON);
        int[] widths = {7, 5, 3};
        int[] colours = {DARK_RGB, LIGHT_RGB, RIM_RGB};
        for (int i = 0; i < widths.length; i++) {
            gc.setLineWidth(widths[i]);
            gc.setForeground(ScreenColours.of(colours[i]));
            gc.drawOval(x - RING_PT, y - RING_PT, 2 * RING_PT, 2 * RING_PT);
        }
    }

    void words(GC gc, Rectangle area, String words, int onRgb) {
        if (!words.isEmpty()) {
            gc.setForeground(ScreenColours.of(ScreenLight.luminance(onRgb) > 0.18 ? DARK_RGB : LIGHT_RGB));
            var size = gc.textExtent(words, SWT.DRAW_DELIMITER);
            gc.drawText(words, area.x + Math.max(8, (area.width - size.x) / 2), area.y + Math.max(8, (area.height - size.y) / 2),
                    SWT.DRAW_TRANSPARENT | SWT.DRAW_DELIMITER);
        }
    }

    private static void stroke(GC gc, Path path, int width, int rgb) {
        gc.setLineWidth(width);
        gc.setForeground(ScreenColours.of(rgb));
        gc.drawPath(path);
    }
}
