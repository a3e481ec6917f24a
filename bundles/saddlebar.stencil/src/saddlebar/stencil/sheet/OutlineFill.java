package saddlebar.stencil.sheet;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.PathIterator;
import java.util.Arrays;

import saddlebar.model.units.Units;
import saddlebar.stencil.BitPicture;

/**
 * Outlines to bits: a px is set if its centre lies inside by the non-zero rule. Done here and not by a drawing library, so that the bits are the
 * same on every machine. Curves are taken as chords that keep within 0.01 px.
 */
final class OutlineFill {
    private static final double FLATNESS_PX = 0.01;

    private final int widthPx;
    private final int heightPx;
    /** Each crossing of a row's centre line: row, first px right of it, and whether the edge goes down. */
    private long[] crossings = new long[256];
    private int count;

    private OutlineFill(int widthPx, int heightPx) {
        this.widthPx = widthPx;
        this.heightPx = heightPx;
    }

    /** Bits of what lies in a box of px whose top left px is (xPx, yPx) of the sheet. */
    static BitPicture bits(Shape outlineMm, double dpi, int xPx, int yPx, int widthPx, int heightPx) {
        double scale = dpi / Units.MM_PER_INCH;
        OutlineFill fill = new OutlineFill(widthPx, heightPx);
        fill.cross(new FlatteningPathIterator(outlineMm.getPathIterator(new AffineTransform(scale, 0, 0, scale, -xPx, -yPx)), FLATNESS_PX));
        return fill.bits();
    }

    private void cross(PathIterator path) {
        double[] to = new double[6];
        double startX = 0;
        double startY = 0;
        double x = 0;
        double y = 0;
        for (; !path.isDone(); path.next()) {
            switch (path.currentSegment(to)) {
                case PathIterator.SEG_MOVETO -> {
                    edge(x, y, startX, startY);
                    startX = to[0];
                    startY = to[1];
                }
                case PathIterator.SEG_LINETO -> edge(x, y, to[0], to[1]);
                default -> {
                    edge(x, y, startX, startY);
                    to[0] = startX;
                    to[1] = startY;
                }
            }
            x = to[0];
            y = to[1];
        }
        edge(x, y, startX, startY);
    }

    private void edge(double fromX, double fromY, double toX, double toY) {
        int first = (int) Math.max(0, Math.ceil(Math.min(fromY, toY) - 0.5));
        int end = (int) Math.min(heightPx, Math.ceil(Math.max(fromY, toY) - 0.5));
        for (int row = first; row < end; row++) {
            double x = fromX + (row + 0.5 - fromY) / (toY - fromY) * (toX - fromX);
            long px = (long) Math.max(0, Math.min(widthPx, Math.ceil(x - 0.5)));
            if (count == crossings.length) {
                crossings = Arrays.copyOf(crossings, 2 * count);
            }
            crossings[count++] = (long) row << 32 | px << 1 | (toY > fromY ? 1 : 0);
        }
    }

    private BitPicture bits() {
        Arrays.sort(crossings, 0, count);
        BitPicture picture = new BitPicture(widthPx, heightPx);
        int winding = 0;
        for (int i = 0; i < count; i++) {
            int before = winding;
            winding += (crossings[i] & 1) == 1 ? 1 : -1;
            if (before == 0) {
                continue;
            }
            int from = (int) crossings[i - 1] >>> 1;
            int to = (int) crossings[i] >>> 1;
            int row = (int) (crossings[i] >>> 32);
            for (int x = from; x < to; x++) {
                picture.set(x, row, true);
            }
        }
        return picture;
    }
}
