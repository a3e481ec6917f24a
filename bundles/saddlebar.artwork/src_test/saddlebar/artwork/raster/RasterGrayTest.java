package saddlebar.artwork.raster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import saddlebar.artwork.Art;
import saddlebar.artwork.LayerChoice;
import saddlebar.artwork.Outside;
import saddlebar.artwork.RasterRequest;
import saddlebar.model.art.GrayCoding;

/** Gray values and size of pictures; files and reference values come from netpbm and ImageMagick where a test says so. */
class RasterGrayTest {
    @TempDir
    Path folder;

    /** Pixel for pixel as coded: at the picture's own resolution no value changes. */
    private byte[] own(Path file, int widthPx, int heightPx, double dpi) {
        Art art = Art.read(file);
        assertEquals(widthPx * 25.4 / dpi, art.widthMm(), 0.01, file.toString());
        assertEquals(heightPx * 25.4 / dpi, art.heightMm(), 0.01, file.toString());
        return art.gray(LayerChoice.all(), new RasterRequest(0, 0, widthPx, heightPx, widthPx * 25.4 / art.widthMm(), GrayCoding.CODE_VALUES), 7);
    }

    /** A gray ramp 0, 17, 34 ... 255 of 16 x 4 px, by a PGM written here and turned into other formats by ImageMagick at 300 px an inch. */
    @ParameterizedTest
    @CsvSource({"png, -depth 8", "png, -depth 16", "png, -colors 16 -type Palette", "png, -type TrueColor", "png, -type TrueColorMatte", "tiff, -depth 8",
            "tiff, -depth 16", "tiff, -compress LZW", "tiff, -compress Zip", "tiff, -type TrueColor -compress None"})
    void theSameRampInManyFormats(String format, String options) throws IOException {
        Outside.assumeInstalled("convert");
        byte[] head = "P5\n16 4\n255\n".getBytes(java.nio.charset.StandardCharsets.US_ASCII);
        byte[] pgm = Arrays.copyOf(head, head.length + 64);
        for (int i = 0; i < 64; i++) {
            pgm[head.length + i] = (byte) (i % 16 * 17);
        }
        Files.write(folder.resolve("ramp.pgm"), pgm);
        List<String> command = new java.util.ArrayList<>(List.of("convert", "ramp.pgm"));
        command.addAll(Arrays.asList(options.split(" ")));
        command.addAll(List.of("-units", "PixelsPerInch", "-density", "300", "ramp." + format));
        Outside.run(folder, command.toArray(new String[0]));
        byte[] gray = own(folder.resolve("ramp." + format), 16, 4, 300);
        for (int i = 0; i < 64; i++) {
            assertEquals(i % 16 * 17, gray[i] & 0xFF, 0.0, format + " " + options + " at " + i);
        }
    }

    /** JPEG loses a little: mean and pixels near those of djpeg-like decoding by ImageMagick ({@code convert x.jpg x.pgm}). */
    @Test
    void jpegAsAnotherDecoderHasIt() throws IOException {
        Outside.assumeInstalled("convert");
        Outside.run(folder, "convert", "-size", "120x80", "gradient:black-white", "-colorspace", "Gray", "-units", "PixelsPerInch", "-density", "200",
                "-quality", "90", "a.jpg");
        Outside.run(folder, "convert", "a.jpg", "-depth", "8", "a.png");
        BufferedImage theirs = ImageIO.read(new File(folder.toFile(), "a.png"));
        byte[] ours = own(folder.resolve("a.jpg"), 120, 80, 200);
        for (int i = 0; i < ours.length; i++) {
            assertEquals(theirs.getRaster().getSample(i % 120, i / 120, 0), ours[i] & 0xFF, 2.0, "at " + i);
        }
    }

    /** 0.2126 R + 0.7152 G + 0.0722 B of code values (IEC 61966-2-1): 54, 182, 18; half clear black on white is 127 or 128. */
    @Test
    void coloursAndOpacity() throws IOException {
        BufferedImage image = new BufferedImage(5, 1, BufferedImage.TYPE_INT_ARGB);
        int[] argb = {0xFFFF0000, 0xFF00FF00, 0xFF0000FF, 0x80000000, 0x00123456};
        image.setRGB(0, 0, 5, 1, argb, 0, 5);
        Path file = folder.resolve("a.png");
        ImageIO.write(image, "png", file.toFile());
        byte[] gray = own(file, 5, 1, 96);
        int[] wanted = {54, 182, 18, 127, 255};
        for (int i = 0; i < 5; i++) {
            assertEquals(wanted[i], gray[i] & 0xFF, 0.5, "at " + i);
        }
    }

    @Test
    void enlargedAndReducedKeepTheMeanWhateverTheBand() throws IOException {
        BufferedImage image = new BufferedImage(300, 200, BufferedImage.TYPE_BYTE_GRAY);
        long sum = 0;
        for (int i = 0; i < 60_000; i++) {
            int value = (i * 7919 >> 3) & 0xFF;
            image.getRaster().setSample(i % 300, i / 300, 0, value);
            sum += value;
        }
        Path file = folder.resolve("a.png");
        ImageIO.write(image, "png", file.toFile());
        Art art = Art.read(file);
        for (double dpi : new double[] {32, 96, 288}) {
            byte[] whole = art.gray(LayerChoice.all(), art.page(dpi), 1000);
            assertEquals(sum / 60_000.0, Art.mean(whole), 1.0, dpi + " dpi");
            for (int rows : new int[] {1, 13, 64}) {
                assertEquals(-1, Arrays.mismatch(whole, art.gray(LayerChoice.all(), art.page(dpi), rows)));
            }
        }
        assertTrue(art.warns("art-size", "does not say how large"));
    }
}
