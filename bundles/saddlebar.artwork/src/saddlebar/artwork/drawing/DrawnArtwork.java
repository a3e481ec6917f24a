package saddlebar.artwork.drawing;

import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

import saddlebar.artwork.ArtLayer;
import saddlebar.artwork.Artwork;
import saddlebar.artwork.ColourArea;
import saddlebar.artwork.LayerChoice;
import saddlebar.artwork.LayerGuess;
import saddlebar.artwork.RasterRequest;
import saddlebar.artwork.RegionMm;
import saddlebar.model.art.DrawnLine;
import saddlebar.model.art.GrayBands;
import saddlebar.model.problem.Problem;
import saddlebar.model.units.Require;
import saddlebar.model.work.Work;

/** An artwork that was read as a drawing. */
public final class DrawnArtwork implements Artwork {
    private final Path file;
    private final double widthMm;
    private final double heightMm;
    private final List<ArtLayer> layers;
    private final List<Problem> warnings;
    private final Group drawing;

    /** @param drawing all there is, hidden groups too, in mm of the page */
    public DrawnArtwork(Path file, double widthMm, double heightMm, List<ArtLayer> layers, List<Problem> warnings, Group drawing) {
        this.file = Objects.requireNonNull(file, "file");
        this.widthMm = Require.finite("widthMm", widthMm);
        this.heightMm = Require.finite("heightMm", heightMm);
        this.layers = List.copyOf(layers);
        this.warnings = warnings.stream().sorted(Problem.WORST_FIRST).toList();
        this.drawing = Objects.requireNonNull(drawing, "drawing");
    }

    @Override
    public Path file() {
        return file;
    }

    @Override
    public double widthMm() {
        return widthMm;
    }

    @Override
    public double heightMm() {
        return heightMm;
    }

    @Override
    public List<ArtLayer> layers() {
        return layers;
    }

    @Override
    public List<Problem> warnings() {
        return warnings;
    }

    @Override
    public List<LayerGuess> guesses() {
        return LayerGuesses.of(drawing, layers);
    }

    private Group chosen(LayerChoice choice) {
        return choice.layerId().map(drawing::only).orElse(drawing);
    }

    @Override
    public List<DrawnLine> lines(LayerChoice choice, double flatnessMm) {
        return Outlines.lines(chosen(choice), Require.within("flatnessMm", flatnessMm, 1e-4, 10));
    }

    @Override
    public List<ColourArea> areas(LayerChoice choice) {
        return Outlines.areas(chosen(choice));
    }

    @Override
    public GrayBands gray(LayerChoice choice, RasterRequest request, Work work) {
        return new GrayStrips(chosen(choice), request, work);
    }

    @Override
    public BufferedImage picture(LayerChoice choice, int widthPx, int heightPx, RegionMm region) {
        Require.within("widthPx", widthPx, 1, 20_000);
        Require.within("heightPx", heightPx, 1, 20_000);
        AffineTransform mmToPx = AffineTransform.getScaleInstance(widthPx / region.widthMm(), heightPx / region.heightMm());
        mmToPx.translate(-region.xMm(), -region.yMm());
        try (Canvas canvas = Canvas.clear(new Rectangle(widthPx, heightPx), mmToPx)) {
            new Painter(Work.UNWATCHED).paint(chosen(choice), canvas);
            BufferedImage picture = new BufferedImage(widthPx, heightPx, BufferedImage.TYPE_INT_ARGB);
            int[] row = new int[widthPx];
            for (int y = 0; y < heightPx; y++) {
                picture.setRGB(0, y, widthPx, 1, canvas.image().getRGB(0, y, widthPx, 1, row, 0, widthPx), 0, widthPx);
            }
            return picture;
        }
    }

    @Override
    public void close() {
        // all in memory: nothing is held open
    }
}
