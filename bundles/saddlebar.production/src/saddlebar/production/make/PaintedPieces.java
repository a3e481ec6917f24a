package saddlebar.production.make;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

import saddlebar.artwork.RasterRequest;
import saddlebar.model.art.GrayBands;
import saddlebar.model.art.GrayCoding;
import saddlebar.model.units.Units;
import saddlebar.model.work.Work;
import saddlebar.production.plan.PaintPrint;
import saddlebar.production.plan.PaintedPiece;

/**
 * Finds the pieces of a layer on which something shows, by a coarse picture of each from its own corner. Paint that lies only where foil or came
 * covers it, or only in the bleed, makes no print.
 */
final class PaintedPieces {
    /** Five px a mm: a hair of 0.05 mm still darkens its px by 1/4 and is seen. */
    private static final double COARSE_DPI = 127;
    private static final double PX_PER_MM = COARSE_DPI / Units.MM_PER_INCH;

    private final OpenArtworks artworks;

    PaintedPieces(OpenArtworks artworks) {
        this.artworks = artworks;
    }

    List<PaintedPiece> of(PaintedLayer layer, Work work) throws IOException {
        work.say(layer.label() + ": painted pieces");
        List<PaintedPiece> painted = new ArrayList<>();
        for (CutPiece piece : layer.pieces()) {
            work.checkpoint();
            Geometry printed = SightLineMask.printed(piece.glass(), layer.layer());
            Geometry seen = SightLineMask.seen(piece.glass(), layer.layer());
            if (!printed.isEmpty() && !seen.isEmpty()) {
                PaintPrint drawn = drawn(layer, piece, work);
                if (!within(drawn, seen, piece).isBare()) {
                    painted.add(new PaintedPiece(layer.layer().id(), piece.label(), piece.glass(), printed.getEnvelopeInternal(),
                            within(drawn, piece.glass(), piece)));
                }
            }
        }
        return painted;
    }

    /** What is drawn on the box around a piece, its neighbours' paint included. */
    private PaintPrint drawn(PaintedLayer layer, CutPiece piece, Work work) throws IOException {
        Envelope box = piece.glass().getEnvelopeInternal();
        // equal boxes may differ by a rounding error: that must not cost or win a px
        int width = Math.max(1, (int) Math.ceil(box.getWidth() * PX_PER_MM - 1e-3));
        int height = Math.max(1, (int) Math.ceil(box.getHeight() * PX_PER_MM - 1e-3));
        byte[] gray = new byte[width * height];
        RasterRequest request = new RasterRequest(box.getMinX(), box.getMinY(), width, height, COARSE_DPI, GrayCoding.CODE_VALUES);
        try (GrayBands bands = artworks.gray(layer.art(), layer.layer().artLayer(), request, work.part(0, height))) {
            byte[] band = new byte[width * Math.min(height, 64)];
            int row = 0;
            for (int rows = bands.read(band, Math.min(height, 64)); rows > 0; rows = bands.read(band, Math.min(height, 64))) {
                System.arraycopy(band, 0, gray, row * width, rows * width);
                row += rows;
            }
        }
        return new PaintPrint(width, height, gray);
    }

    /** Of what is drawn only what lies in a region of the piece; what bleeds over from a neighbour is not the piece's own paint. */
    private static PaintPrint within(PaintPrint drawn, Geometry region, CutPiece piece) {
        byte[] gray = drawn.gray();
        byte[] inside = inside(region, piece.glass().getEnvelopeInternal(), drawn.widthPx(), drawn.heightPx());
        for (int i = 0; i < gray.length; i++) {
            int darkness = (255 - (gray[i] & 0xff)) * (inside[i] & 0xff) / 255;
            gray[i] = (byte) (255 - darkness);
        }
        return new PaintPrint(drawn.widthPx(), drawn.heightPx(), gray);
    }

    /** Share of each px inside the region, 0 to 255: antialiased, so that a rounding error moves no whole px. */
    private static byte[] inside(Geometry region, Envelope box, int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setColor(Color.WHITE);
        graphics.fill(Outlines.path(region, box.getMinX(), box.getMinY(), PX_PER_MM));
        graphics.dispose();
        return ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    }
}
