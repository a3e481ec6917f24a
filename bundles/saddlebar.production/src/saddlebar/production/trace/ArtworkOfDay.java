package saddlebar.production.trace;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

import javax.imageio.ImageIO;

import saddlebar.artwork.Artwork;
import saddlebar.artwork.ArtworkReaders;
import saddlebar.artwork.LayerChoice;
import saddlebar.artwork.RasterRequest;
import saddlebar.artwork.ReadSettings;
import saddlebar.model.art.GrayBands;
import saddlebar.model.art.GrayCoding;
import saddlebar.model.file.Hashes;
import saddlebar.model.file.PendingFile;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.work.Work;
import saddlebar.production.trace.ThenAndNow.ChangedArtwork;

/**
 * A drawing of an earlier day beside today's, in one picture: what both have is gray, what only the earlier one had is vermilion, what only today's has is blue
 * (two colours that most eyes tell apart: Okabe and Ito).
 */
public final class ArtworkOfDay {
    private static final int WIDTH_PX = 1200;
    private static final int THEN_RGB = 0xD55E00;
    private static final int NOW_RGB = 0x0072B2;

    private final ArtworkReaders readers;

    public ArtworkOfDay(ArtworkReaders readers) {
        this.readers = readers;
    }

    /** The commission's file with this content, if it is still there: drawings are never changed, a new one is a new file. */
    static Optional<Path> file(CommissionFolder folder, String sha256) {
        Path artwork = folder.path().resolve("artwork");
        if (!Files.isDirectory(artwork)) {
            return Optional.empty();
        }
        try (Stream<Path> files = Files.list(artwork)) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                if (Hashes.sha256(file).equals(sha256)) {
                    return Optional.of(file);
                }
            }
            return Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Draws the difference.
     *
     * @throws Refusal if the earlier file is gone or one of them has no such layer
     */
    public BufferedImage difference(ChangedArtwork changed, Work work) throws IOException {
        Path then = changed.then().orElseThrow(() -> new Refusal(changed.subject(), "the drawing of that day is no longer in the folder artwork",
                "put it back from a backup; its SHA-256 is " + changed.thenSha256()));
        int[][] gray = {gray(then, changed, work), gray(changed.now(), changed, work)};
        int height = gray[0].length / WIDTH_PX;
        BufferedImage picture = new BufferedImage(WIDTH_PX, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < WIDTH_PX; x++) {
                int at = y * WIDTH_PX + x;
                picture.setRGB(x, y, colour(gray[0][at], at < gray[1].length ? gray[1][at] : 255));
            }
        }
        return picture;
    }

    /** As {@link #difference}, written as PNG. */
    public void write(ChangedArtwork changed, Path file, Work work) throws IOException {
        BufferedImage picture = difference(changed, work);
        try (PendingFile pending = PendingFile.beside(file)) {
            ImageIO.write(picture, "png", pending.out());
            pending.commit();
        }
    }

    /** Both dark: gray as the darker; one of them darker: its colour, as strong as they differ. */
    private static int colour(int then, int now) {
        int both = Math.max(then, now);
        int apart = Math.abs(then - now);
        int base = 255 - (255 - both) * 2 / 3;
        int rgb = then < now ? THEN_RGB : NOW_RGB;
        return blend(base, rgb >> 16 & 255, apart) << 16 | blend(base, rgb >> 8 & 255, apart) << 8 | blend(base, rgb & 255, apart);
    }

    private static int blend(int base, int colour, int apart) {
        return (base * (255 - apart) + colour * apart) / 255;
    }

    private int[] gray(Path file, ChangedArtwork changed, Work work) throws IOException {
        try (Artwork artwork = readers.read(file, ReadSettings.ofWidth(changed.widthMm()))) {
            double dpi = WIDTH_PX / changed.widthMm() * 25.4;
            int height = Math.max(1, (int) Math.rint(artwork.heightMm() / 25.4 * dpi));
            int[] all = new int[WIDTH_PX * height];
            byte[] rows = new byte[WIDTH_PX * 64];
            try (GrayBands bands = artwork.gray(LayerChoice.of(artwork.chosenLayer(changed.artLayer())),
                    new RasterRequest(0, 0, WIDTH_PX, height, dpi, GrayCoding.CODE_VALUES), work)) {
                int done = 0;
                for (int n = bands.read(rows, 64); n > 0; n = bands.read(rows, 64)) {
                    for (int i = 0; i < n * WIDTH_PX; i++) {
                        all[done + i] = rows[i] & 255;
                    }
                    done += n * WIDTH_PX;
                    work.checkpoint();
                }
            }
            return all;
        }
    }
}
