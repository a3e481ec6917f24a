package saddlebar.artwork.raster;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;

import saddlebar.artwork.ArtLayer;
import saddlebar.artwork.Artwork;
import saddlebar.artwork.ColourArea;
import saddlebar.artwork.LayerChoice;
import saddlebar.artwork.RasterRequest;
import saddlebar.artwork.RegionMm;
import saddlebar.model.art.DrawnLine;
import saddlebar.model.art.GrayBands;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Require;
import saddlebar.model.work.Work;

/** An artwork of pixels: no layers, no lines. Its file is opened anew for each reading. */
final class PictureArtwork implements Artwork {
    private final Path file;
    private final PictureFile picture;
    private final double mmPerPxX;
    private final double mmPerPxY;
    private final List<Problem> warnings;

    PictureArtwork(Path file, PictureFile picture, double mmPerPxX, double mmPerPxY, List<Problem> warnings) {
        this.file = file;
        this.picture = picture;
        this.mmPerPxX = mmPerPxX;
        this.mmPerPxY = mmPerPxY;
        this.warnings = warnings.stream().sorted(Problem.WORST_FIRST).toList();
    }

    @Override
    public Path file() {
        return file;
    }

    @Override
    public double widthMm() {
        return mmPerPxX * (picture.head().lying() ? picture.head().heightPx() : picture.head().widthPx());
    }

    @Override
    public double heightMm() {
        return mmPerPxY * (picture.head().lying() ? picture.head().widthPx() : picture.head().heightPx());
    }

    @Override
    public List<ArtLayer> layers() {
        return List.of();
    }

    @Override
    public List<Problem> warnings() {
        return warnings;
    }

    private static void allOf(LayerChoice choice) {
        if (choice.layerId().isPresent()) {
            throw new IllegalArgumentException("a picture has no layer " + choice.layerId().get());
        }
    }

    @Override
    public List<DrawnLine> lines(LayerChoice choice, double flatnessMm) {
        throw new Refusal(String.valueOf(file.getFileName()), "this is a picture of pixels and holds no drawn lines", "draw the cutline as SVG over it");
    }

    @Override
    public List<ColourArea> areas(LayerChoice choice) {
        allOf(choice);
        return List.of();
    }

    @Override
    public GrayBands gray(LayerChoice choice, RasterRequest request, Work work) {
        allOf(choice);
        try {
            return new PictureGray(picture, mmPerPxX, mmPerPxY, request, work);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public BufferedImage picture(LayerChoice choice, int widthPx, int heightPx, RegionMm region) {
        allOf(choice);
        Require.within("widthPx", widthPx, 1, 20_000);
        Require.within("heightPx", heightPx, 1, 20_000);
        try (PictureRows rows = picture.rows()) {
            byte[] stored = new byte[rows.widthPx() * rows.channels()];
            RowScaler scaler = new RowScaler(row -> premultiplied(rows, stored, row),
                    new RowScaler.Axis(region.xMm() / mmPerPxX, region.widthMm() / widthPx / mmPerPxX, rows.widthPx(), widthPx),
                    new RowScaler.Axis(region.yMm() / mmPerPxY, region.heightMm() / heightPx / mmPerPxY, rows.heightPx(), heightPx), 4);
            BufferedImage image = new BufferedImage(widthPx, heightPx, BufferedImage.TYPE_INT_ARGB);
            float[] line = new float[4 * widthPx];
            for (int y = 0; y < heightPx; y++) {
                if (scaler.holds(y)) {
                    scaler.row(y, line);
                    for (int x = 0; x < widthPx; x++) {
                        image.setRGB(x, y, scaler.holdsColumn(x) ? argb(line, 4 * x) : 0);
                    }
                }
            }
            return image;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void premultiplied(PictureRows rows, byte[] stored, float[] row) throws IOException {
        rows.next(stored);
        int n = rows.channels();
        for (int x = 0; x < rows.widthPx(); x++) {
            float alpha = n % 2 == 0 ? (stored[x * n + n - 1] & 0xFF) / 255f : 1;
            for (int c = 0; c < 3; c++) {
                row[4 * x + c] = alpha * (stored[x * n + (n < 3 ? 0 : c)] & 0xFF);
            }
            row[4 * x + 3] = alpha;
        }
    }

    private static int argb(float[] line, int at) {
        float alpha = line[at + 3];
        if (!(alpha > 0)) {
            return 0;
        }
        int argb = Math.min(255, Math.round(255 * alpha)) << 24;
        for (int c = 0; c < 3; c++) {
            argb |= Math.min(255, Math.round(line[at + c] / alpha)) << 16 - 8 * c;
        }
        return argb;
    }

    @Override
    public void close() {
        // the file is open only while rows are read
    }
}
