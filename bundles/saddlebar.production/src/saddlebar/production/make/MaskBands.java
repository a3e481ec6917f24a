package saddlebar.production.make;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.Arrays;
import java.util.List;

import org.locationtech.jts.geom.Geometry;

import saddlebar.stencil.BitBands;

/** Regions as bits at device resolution, in bands: 1 for each px whose middle lies in a region. */
final class MaskBands implements BitBands {
    private static final int ROWS = 64;

    private final List<Path2D> paths;
    private final RasterPlace place;
    private final BufferedImage band;
    private final byte[] inside;
    private int row;

    MaskBands(List<? extends Geometry> regions, RasterPlace place) {
        this.paths = regions.stream().map(region -> Outlines.path(region, place.originXMm(), place.originYMm(), place.pxPerMm())).toList();
        this.place = place;
        this.band = new BufferedImage(place.widthPx(), ROWS, BufferedImage.TYPE_BYTE_BINARY); // 8 px a byte, rows begin at a byte
        this.inside = ((DataBufferByte) band.getRaster().getDataBuffer()).getData();
    }

    @Override
    public int widthPx() {
        return place.widthPx();
    }

    @Override
    public int heightPx() {
        return place.heightPx();
    }

    @Override
    public int read(long[] target, int maxRows) {
        int rows = Math.min(Math.min(maxRows, ROWS), place.heightPx() - row);
        if (rows == 0) {
            return 0;
        }
        Arrays.fill(inside, (byte) 0);
        Graphics2D graphics = band.createGraphics();
        // else edges are moved onto whole px, and by another px where the band cuts them
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setColor(Color.WHITE);
        graphics.translate(0, -row);
        for (Path2D path : paths) {
            if (path.intersects(-1, row - 1, place.widthPx() + 2, rows + 2)) {
                graphics.fill(path);
            }
        }
        graphics.dispose();
        pack(rows, target);
        row += rows;
        return rows;
    }

    private void pack(int rows, long[] target) {
        int bytes = (place.widthPx() + 7) / 8;
        int words = wordsPerRow();
        for (int y = 0; y < rows; y++) {
            for (int word = 0; word < words; word++) {
                long bits = 0;
                int from = y * bytes + 8 * word;
                int many = Math.min(8, bytes - 8 * word);
                for (int i = 0; i < many; i++) {
                    bits |= (inside[from + i] & 0xffL) << (56 - 8 * i);
                }
                target[y * words + word] = bits;
            }
        }
    }

    @Override
    public void close() {
        // nothing was opened
    }
}
