package saddlebar.artwork.drawing;

import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;

import saddlebar.artwork.RasterRequest;
import saddlebar.model.art.GrayBands;
import saddlebar.model.art.GrayCoding;
import saddlebar.model.units.Units;
import saddlebar.model.work.Work;

/**
 * A drawing as gray, painted in strips of whole rows as they are asked for. Strips always lie at the same rows, so that the bytes do not
 * depend on how many rows the reader takes at a time; memory is that of one strip and of the groups painted in it.
 */
final class GrayStrips implements GrayBands {
    /** Pixels of one strip: 16 MB of colour. */
    private static final int STRIP_PX = 1 << 22;
    private static final int MOST_ROWS = 256;

    private final Item drawing;
    private final RasterRequest request;
    private final Work work;
    private final Painter painter;
    private final AffineTransform mmToDevice;
    private final int stripRows;
    private final Canvas canvas;
    private byte[] strip;
    private int stripTop;
    private int next;

    GrayStrips(Item drawing, RasterRequest request, Work work) {
        this.drawing = drawing;
        this.request = request;
        this.work = work;
        this.painter = new Painter(work);
        double scale = request.dpi() / Units.MM_PER_INCH;
        this.mmToDevice = new AffineTransform(scale, 0, 0, scale, -request.originXMm() * scale, -request.originYMm() * scale);
        this.stripRows = Math.min(request.heightPx(), Math.max(16, Math.min(MOST_ROWS, STRIP_PX / request.widthPx())));
        this.strip = new byte[request.widthPx() * stripRows];
        this.canvas = Canvas.opaque(new Rectangle(request.widthPx(), stripRows), mmToDevice);
        this.stripTop = -stripRows;
    }

    @Override
    public int widthPx() {
        return request.widthPx();
    }

    @Override
    public int heightPx() {
        return request.heightPx();
    }

    @Override
    public GrayCoding coding() {
        return request.coding();
    }

    @Override
    public int read(byte[] target, int maxRows) {
        if (strip == null) {
            throw new IllegalStateException("these bands are closed");
        }
        if (maxRows < 1) {
            throw new IllegalArgumentException("maxRows must be at least 1 but is " + maxRows);
        }
        if (next == request.heightPx()) {
            return 0;
        }
        if (next >= stripTop + stripRows) {
            work.checkpoint();
            paint(stripTop + stripRows);
        }
        int rows = Math.min(Math.min(maxRows, request.heightPx() - next), stripTop + stripRows - next);
        System.arraycopy(strip, (next - stripTop) * request.widthPx(), target, 0, rows * request.widthPx());
        next += rows;
        work.advance(rows);
        return rows;
    }

    private void paint(int top) {
        stripTop = top;
        int width = request.widthPx();
        Rectangle used = used(top);
        if (used.isEmpty()) {
            Arrays.fill(strip, (byte) 0xFF);
            return;
        }
        try (Canvas here = canvas.at(new Rectangle(0, top, width, stripRows), mmToDevice)) {
            int[] data = here.data();
            Arrays.fill(data, 0xFFFFFF);
            painter.paint(drawing, here);
            for (int row = 0; row < stripRows; row++) {
                GrayCode.row(data, row * width, strip, row * width, width, request.coding());
            }
        }
    }

    private Rectangle used(int top) {
        Rectangle2D bounds = drawing.boundsMm();
        if (!(bounds.getWidth() >= 0 && bounds.getHeight() >= 0)) {
            return new Rectangle();
        }
        Rectangle2D px = mmToDevice.createTransformedShape(bounds).getBounds2D();
        return px.intersects(-1, top - 1.0, request.widthPx() + 2.0, stripRows + 2.0) || px.isEmpty() ? new Rectangle(0, top, 1, 1) : new Rectangle();
    }

    @Override
    public void close() {
        strip = null;
        canvas.close();
    }
}
