package saddlebar.artwork;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.art.GrayBands;
import saddlebar.model.art.GrayCoding;
import saddlebar.model.problem.Problem;
import saddlebar.model.work.Work;

/** An artwork read for a test, and what the tests of this bundle share: drawings written as text, gray read whole. */
public final class Art {
    public static final String NAMESPACES = "xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\"";

    private final Artwork artwork; // all readers of this bundle hold nothing open

    private Art(Path file, ReadSettings settings) throws IOException {
        this.artwork = ArtworkReaders.ownReaders().read(file, settings);
    }

    /** Writes an SVG whose content stands in a page of 100 x 100 mm with mm as user units, and reads it. */
    public static Art page(Path folder, String content) {
        return svg(folder, "<svg " + NAMESPACES + " width=\"100mm\" height=\"100mm\" viewBox=\"0 0 100 100\">\n" + content + "\n</svg>");
    }

    public static Art svg(Path folder, String text) {
        return svg(folder, text, ReadSettings.asDrawn());
    }

    public static Art svg(Path folder, String text, ReadSettings settings) {
        try {
            return read(Files.writeString(folder.resolve("art.svg"), text), settings);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Art read(Path file) {
        return read(file, ReadSettings.asDrawn());
    }

    public static Art read(Path file, ReadSettings settings) {
        try {
            return new Art(file, settings);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public double widthMm() {
        return artwork.widthMm();
    }

    public double heightMm() {
        return artwork.heightMm();
    }

    public List<ArtLayer> layers() {
        return artwork.layers();
    }

    public ArtLayer chosenLayer(String name) {
        return artwork.chosenLayer(name);
    }

    public LayerChoice choice(String name) {
        return LayerChoice.of(artwork.chosenLayer(name));
    }

    public Optional<ArtLayer> cutlineLayer() {
        return artwork.cutlineLayer();
    }

    public List<Problem> warnings() {
        return artwork.warnings();
    }

    /** Whether a warning of this kind is told with these words in its place or sentence. */
    public boolean warns(String code, String words) {
        return artwork.warnings().stream().anyMatch(problem -> problem.code().equals(code) && (problem.where() + ": " + problem.message()).contains(words));
    }

    public List<DrawnLine> lines() {
        return artwork.lines(LayerChoice.all(), Artwork.CUT_FLATNESS_MM);
    }

    public List<DrawnLine> lines(LayerChoice choice, double flatnessMm) {
        return artwork.lines(choice, flatnessMm);
    }

    public List<ColourArea> areas() {
        return artwork.areas(LayerChoice.all());
    }

    public BufferedImage picture(int widthPx, int heightPx) {
        return artwork.picture(LayerChoice.all(), widthPx, heightPx, RegionMm.ofPage(artwork));
    }

    public BufferedImage picture(int widthPx, int heightPx, RegionMm region) {
        return artwork.picture(LayerChoice.all(), widthPx, heightPx, region);
    }

    public RasterRequest page(double dpi) {
        return RasterRequest.ofPage(artwork, dpi, GrayCoding.CODE_VALUES);
    }

    /** The whole page in gray. */
    public byte[] gray(double dpi) {
        return gray(LayerChoice.all(), page(dpi), 64);
    }

    /** All rows, so many at a time. */
    public byte[] gray(LayerChoice choice, RasterRequest request, int bandRows) {
        byte[] all = new byte[request.widthPx() * request.heightPx()];
        byte[] band = new byte[request.widthPx() * bandRows];
        int row = 0;
        try (GrayBands bands = artwork.gray(choice, request, Work.UNWATCHED)) {
            for (int n = bands.read(band, bandRows); n > 0; n = bands.read(band, bandRows)) {
                System.arraycopy(band, 0, all, row * request.widthPx(), n * request.widthPx());
                row += n;
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (row != request.heightPx()) {
            throw new AssertionError(row + " rows came of " + request.heightPx());
        }
        return all;
    }

    /** Reads so many rows from the top and stops; the mean of the last. */
    public double head(RasterRequest request, int rows) {
        byte[] band = new byte[request.widthPx()];
        try (GrayBands bands = artwork.gray(LayerChoice.all(), request, Work.UNWATCHED)) {
            for (int row = 0; row < rows; row++) {
                if (bands.read(band, 1) != 1) {
                    throw new AssertionError("no row " + row);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return mean(band);
    }

    /** Gray of a pixel of 0.1 mm at so many mm from the page's corner. */
    public int at(double xMm, double yMm) {
        return at(LayerChoice.all(), xMm, yMm, GrayCoding.CODE_VALUES);
    }

    public int at(LayerChoice choice, double xMm, double yMm) {
        return at(choice, xMm, yMm, GrayCoding.CODE_VALUES);
    }

    public int at(LayerChoice choice, double xMm, double yMm, GrayCoding coding) {
        return gray(choice, new RasterRequest(xMm - 0.05, yMm - 0.05, 1, 1, 254, coding), 1)[0] & 0xFF;
    }

    public static double mean(byte[] gray) {
        long sum = 0;
        for (byte value : gray) {
            sum += value & 0xFF;
        }
        return (double) sum / gray.length;
    }
}
