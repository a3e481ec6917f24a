package saddlebar.production.light;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;

import saddlebar.artwork.Artwork;
import saddlebar.artwork.LayerChoice;
import saddlebar.artwork.RasterRequest;
import saddlebar.model.art.GrayBands;
import saddlebar.model.art.GrayCoding;
import saddlebar.model.units.Units;
import saddlebar.model.work.Work;
import saddlebar.stencil.tone.EndLimits;
import saddlebar.stencil.tone.GrayHistogram;
import saddlebar.stencil.tone.Stretch;
import saddlebar.stencil.tone.ToneTable;
import saddlebar.production.light.WindowSketch.LayerSketch;

/**
 * Reads one layer of an artwork as the share of glass that its paint covers: the drawing's darkness, stretched as the layer's recipe says. What
 * the recipe does for the mesh's sake (calibration, end limits) is left out: it is there so that the print comes to look like this.
 */
final class LayerReader {
    /** Held in memory for each layer; when nearer, the drawing itself is asked. */
    private static final double MOST_HELD_PX = 4e6;
    private static final double FINEST_HELD_PX_PER_MM = 6;
    private static final int ROWS_AT_ONCE = 64;

    private final ArtworkShelf shelf;
    private final Artwork artwork;
    private final LayerSketch layer;
    private final LayerChoice choice;
    private final double xMm;
    private final double yMm;

    /**
     * @param xMm where the artwork's page lies in the window
     * @param yMm where its upper edge lies
     */
    LayerReader(ArtworkShelf shelf, Artwork artwork, LayerSketch layer, double xMm, double yMm) {
        this.shelf = shelf;
        this.artwork = artwork;
        this.layer = layer;
        this.choice = LayerChoice.of(artwork.chosenLayer(layer.artLayer()));
        this.xMm = xMm;
        this.yMm = yMm;
    }

    /** Units of work that {@link #read} tells: rows of the picture that is held. */
    long rows() {
        return Math.max(1, (long) Math.ceil(artwork.heightMm() * heldPxPerMm()));
    }

    private double heldPxPerMm() {
        return Math.min(FINEST_HELD_PX_PER_MM, Math.sqrt(MOST_HELD_PX / (artwork.widthMm() * artwork.heightMm())));
    }

    SceneLayer read(Work work) throws IOException {
        Raster raster = raster(new RectMm(xMm, yMm, artwork.widthMm(), artwork.heightMm()), heldPxPerMm(), work);
        ToneTable tone = tone(raster);
        return new SceneLayer(layer.id(), layer.name(), layer.paint(), layer.film(), raster.covered(tone),
                Optional.of((part, finerPxPerMm, asked) -> readPart(part, finerPxPerMm, tone, asked)));
    }

    private Coverage readPart(RectMm part, double pxPerMm, ToneTable tone, Work work) {
        shelf.requireOpen();
        try {
            return raster(part, pxPerMm, work).covered(tone);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private GrayCoding coding() {
        return layer.codeValues() ? GrayCoding.CODE_VALUES : GrayCoding.SRGB_LUMINANCE;
    }

    private ToneTable tone(Raster raster) {
        if (layer.codeValues()) {
            return ToneTable.linear();
        }
        GrayHistogram histogram = new GrayHistogram(coding());
        histogram.add(raster.gray, 0, raster.gray.length);
        return ToneTable.of(coding(), Stretch.of(layer.toneFrom(), layer.toneTo(), histogram), Optional.empty(), EndLimits.NONE);
    }

    private Raster raster(RectMm part, double pxPerMm, Work work) throws IOException {
        int width = Math.max(1, (int) Math.ceil(part.widthMm() * pxPerMm));
        int height = Math.max(1, (int) Math.ceil(part.heightMm() * pxPerMm));
        double dpi = pxPerMm * Units.MM_PER_INCH;
        RasterRequest request = new RasterRequest(part.leftMm() - xMm, part.topMm() - yMm, width, height, dpi, coding());
        byte[] gray = new byte[Math.multiplyExact(width, height)];
        try (GrayBands bands = artwork.gray(choice, request, work)) {
            byte[] band = new byte[width * Math.min(ROWS_AT_ONCE, height)];
            int done = 0;
            for (int rows = bands.read(band, ROWS_AT_ONCE); rows > 0; rows = bands.read(band, ROWS_AT_ONCE)) {
                work.checkpoint();
                System.arraycopy(band, 0, gray, done * width, rows * width);
                done += rows;
            }
        }
        return new Raster(new RectMm(part.leftMm(), part.topMm(), width / pxPerMm, height / pxPerMm), width, height, gray);
    }

    private static final class Raster {
        private final RectMm area;
        private final int width;
        private final int height;
        private final byte[] gray;

        Raster(RectMm area, int width, int height, byte[] gray) {
            this.area = area;
            this.width = width;
            this.height = height;
            this.gray = gray;
        }

        Coverage covered(ToneTable tone) {
            byte[] table = new byte[256];
            for (int code = 0; code < 256; code++) {
                table[code] = (byte) Math.round(255 * tone.coverage(code));
            }
            byte[] covered = new byte[gray.length];
            for (int i = 0; i < gray.length; i++) {
                covered[i] = table[gray[i] & 0xff];
            }
            return new Coverage(area, width, height, covered);
        }
    }
}
