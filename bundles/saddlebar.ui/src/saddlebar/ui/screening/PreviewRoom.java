package saddlebar.ui.screening;

import java.io.IOException;
import java.util.Optional;

import saddlebar.artwork.Artwork;
import saddlebar.artwork.LayerChoice;
import saddlebar.artwork.RasterRequest;
import saddlebar.model.art.GrayBands;
import saddlebar.model.art.GrayCoding;
import saddlebar.model.units.Units;
import saddlebar.model.work.Work;
import saddlebar.stencil.BitBands;
import saddlebar.stencil.Screener;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.process.StencilProcesses;
import saddlebar.stencil.tone.GrayHistogram;
import saddlebar.stencil.tone.ToneTable;
import saddlebar.ui.dots.StencilBits;
import saddlebar.production.light.ArtworkShelf;
import saddlebar.production.light.WindowSketch.ArtPlace;

/**
 * Screens a small part of a layer as its recipe now says. The grays it needs are kept, so that a change of the recipe costs no look into the drawing.
 * One thread at a time.
 */
public final class PreviewRoom {
    /** Side of the part, device pixels. */
    static final int SIDE_PX = 1024;
    /** As production measures the range of a layer. */
    private static final double MEASURE_DPI = 76.2;
    private static final int PLACE_PX = 18;
    private static final int ROWS_AT_ONCE = 64;

    private record PartKey(ArtPlace art, String artLayer, GrayCoding coding, double leftMm, double topMm, double dpi) {
    }

    private record WholeKey(ArtPlace art, String artLayer, GrayCoding coding, Optional<PreviewAsk.Box> box) {
    }

    private record Grays(double leftMm, double topMm, int widthPx, int heightPx, byte[] codes) {
    }

    /**
     * A part screened.
     *
     * @param bits   as the sheet would have them: 1 is toner
     * @param place  middle of the part, on the page
     * @param leftMm left edge of the part, on the page
     * @param topMm  its upper edge
     */
    public record Preview(StencilBits bits, PreviewAsk.PlaceMm place, double leftMm, double topMm) {
    }

    /** Kept, since they keep what takes a while to make. */
    private final ScreeningMethods methods = ScreeningMethods.ownMethods();
    private Optional<PartKey> partKey = Optional.empty();
    private Grays part;
    private Optional<WholeKey> wholeKey = Optional.empty();
    private Grays whole;

    /**
     * Makes a preview.
     *
     * @throws saddlebar.model.problem.Refusal              if artwork or recipe do not allow it
     * @throws java.util.concurrent.CancellationException if the work was stopped
     */
    public Preview preview(PreviewAsk ask, ArtworkShelf shelf, Work work) throws IOException {
        Artwork artwork = shelf.artwork(ask.art());
        LayerChoice layer = LayerChoice.of(artwork.chosenLayer(ask.artLayer()));
        work.checkpoint();
        boolean measured = ask.tone().to().isEmpty() && !ask.tone().codeValues();
        if (measured || ask.place().isEmpty()) {
            readWhole(ask, artwork, layer, work);
        }
        ToneTable tone = ask.tone().table(() -> histogram(ask.tone().coding()));
        PreviewAsk.PlaceMm place = ask.place().orElseGet(() -> halfCovered(tone));
        double dpi = ask.screening().dpi();
        double sideMm = SIDE_PX / dpi * Units.MM_PER_INCH;
        readPart(ask, artwork, layer, place.xMm() - sideMm / 2, place.yMm() - sideMm / 2, work);
        work.checkpoint();
        try (BitBands toner = StencilProcesses.ownProcesses().process(ask.process()).toner(new OneBand(screen(ask, tone, work)), ask.mirrored())) {
            long[] all = new long[toner.wordsPerRow() * SIDE_PX];
            read(toner, all);
            return new Preview(StencilBits.of(SIDE_PX, SIDE_PX, dpi / Units.MM_PER_INCH, all), place, part.leftMm, part.topMm);
        }
    }

    private long[] screen(PreviewAsk ask, ToneTable tone, Work work) {
        Screener screener = methods.method(ask.screening().method()).start(ask.screening(), tone, SIDE_PX, SIDE_PX);
        long[] paint = new long[((SIDE_PX + 63) >> 6) * SIDE_PX];
        screener.screen(part.codes, SIDE_PX, paint);
        work.checkpoint();
        return paint;
    }

    private static void read(BitBands from, long[] all) throws IOException {
        long[] band = new long[all.length];
        int done = 0;
        for (int rows = from.read(band, SIDE_PX); rows > 0; rows = from.read(band, SIDE_PX)) {
            System.arraycopy(band, 0, all, done, rows * from.wordsPerRow());
            done += rows * from.wordsPerRow();
        }
    }

    private void readPart(PreviewAsk ask, Artwork artwork, LayerChoice layer, double leftMm, double topMm, Work work) throws IOException {
        PartKey key = new PartKey(ask.art(), ask.artLayer(), ask.tone().coding(), leftMm, topMm, ask.screening().dpi());
        if (partKey.isEmpty() || !partKey.get().equals(key)) {
            part = grays(artwork, layer, new RasterRequest(leftMm, topMm, SIDE_PX, SIDE_PX, ask.screening().dpi(), ask.tone().coding()), work);
            partKey = Optional.of(key);
        }
    }

    private void readWhole(PreviewAsk ask, Artwork artwork, LayerChoice layer, Work work) throws IOException {
        WholeKey key = new WholeKey(ask.art(), ask.artLayer(), ask.tone().coding(), ask.box());
        if (wholeKey.isEmpty() || !wholeKey.get().equals(key)) {
            PreviewAsk.Box box = ask.box().orElseGet(() -> new PreviewAsk.Box(0, 0, artwork.widthMm(), artwork.heightMm()));
            int width = Math.max(1, Units.pxOfMm(box.rightMm() - box.leftMm(), MEASURE_DPI));
            int height = Math.max(1, Units.pxOfMm(box.bottomMm() - box.topMm(), MEASURE_DPI));
            whole = grays(artwork, layer, new RasterRequest(box.leftMm(), box.topMm(), width, height, MEASURE_DPI, ask.tone().coding()), work);
            wholeKey = Optional.of(key);
        }
    }

    private static Grays grays(Artwork artwork, LayerChoice layer, RasterRequest request, Work work) throws IOException {
        byte[] codes = new byte[Math.multiplyExact(request.widthPx(), request.heightPx())];
        try (GrayBands bands = artwork.gray(layer, request, work)) {
            byte[] band = new byte[request.widthPx() * Math.min(ROWS_AT_ONCE, request.heightPx())];
            int done = 0;
            for (int rows = bands.read(band, ROWS_AT_ONCE); rows > 0; rows = bands.read(band, ROWS_AT_ONCE)) {
                work.checkpoint();
                System.arraycopy(band, 0, codes, done, rows * request.widthPx());
                done += rows * request.widthPx();
            }
        }
        return new Grays(request.originXMm(), request.originYMm(), request.widthPx(), request.heightPx(), codes);
    }

    private GrayHistogram histogram(GrayCoding coding) {
        GrayHistogram histogram = new GrayHistogram(coding);
        histogram.add(whole.codes, 0, whole.codes.length);
        return histogram;
    }

    /** Where there is most to see. */
    private PreviewAsk.PlaceMm halfCovered(ToneTable tone) {
        double pxPerMm = MEASURE_DPI / Units.MM_PER_INCH;
        double nearest = Double.POSITIVE_INFINITY;
        int bestX = whole.widthPx / 2;
        int bestY = whole.heightPx / 2;
        for (int y = 0; y + PLACE_PX <= whole.heightPx; y += PLACE_PX) {
            for (int x = 0; x + PLACE_PX <= whole.widthPx; x += PLACE_PX) {
                double off = 0;
                for (int i = 0; i < PLACE_PX * PLACE_PX; i++) {
                    int code = whole.codes[(y + i / PLACE_PX) * whole.widthPx + x + i % PLACE_PX] & 0xff;
                    off += Math.abs(tone.coverage(code) - 0.5);
                }
                if (off < nearest) {
                    nearest = off;
                    bestX = x + PLACE_PX / 2;
                    bestY = y + PLACE_PX / 2;
                }
            }
        }
        return new PreviewAsk.PlaceMm(whole.leftMm + bestX / pxPerMm, whole.topMm + bestY / pxPerMm);
    }

    /** A square of bits, read once. */
    private static final class OneBand implements BitBands {
        private final long[] bits;
        private int row;

        OneBand(long[] bits) {
            this.bits = bits;
        }

        @Override
        public int widthPx() {
            return SIDE_PX;
        }

        @Override
        public int heightPx() {
            return SIDE_PX;
        }

        @Override
        public int read(long[] target, int maxRows) {
            int rows = Math.min(maxRows, SIDE_PX - row);
            System.arraycopy(bits, row * wordsPerRow(), target, 0, rows * wordsPerRow());
            row += rows;
            return rows;
        }

        @Override
        public void close() {
            // nothing is held
        }
    }
}
