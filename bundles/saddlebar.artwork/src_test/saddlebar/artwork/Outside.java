package saddlebar.artwork;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.Assumptions;

/** General-purpose programs that paint the same file independently. A test that asks one is left out where it is not installed. */
public final class Outside {
    private Outside() {
    }

    /**
     * How two pictures in gray differ.
     *
     * @param rms      root of the mean square of the difference
     * @param shareOff share of the pixels whose gray is more than 24 below all or above all of the nine around the same place in theirs:
     *                 programs round edges to pixels in other ways, but by less than one
     */
    public record Difference(double meanOurs, double meanTheirs, double rms, double shareOff) {
        @Override
        public String toString() {
            return String.format(java.util.Locale.ROOT, "means %.2f and %.2f, rms %.2f, %.3f %% are off", meanOurs, meanTheirs, rms,
                    100 * shareOff);
        }
    }

    public static void assumeInstalled(String program) {
        boolean there = false;
        for (String folder : System.getenv().getOrDefault("PATH", "").split(File.pathSeparator)) {
            there |= new File(folder, program).canExecute();
        }
        Assumptions.assumeTrue(there, program + " is not installed");
    }

    /** Runs a program that must succeed within a minute. */
    public static void run(Path folder, String... command) {
        try {
            Process process = new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true).start();
            String said = new String(process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
            if (!process.waitFor(60, TimeUnit.SECONDS) || process.exitValue() != 0) {
                process.destroy();
                throw new AssertionError(String.join(" ", command) + ": " + said);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    /** The drawing on white paper by rsvg-convert (librsvg). */
    public static byte[] svgGray(Path file, int widthPx, int heightPx) {
        assumeInstalled("rsvg-convert");
        Path out = file.resolveSibling("theirs.png");
        run(file.getParent(), "rsvg-convert", "-b", "white", "-w", Integer.toString(widthPx), "-h", Integer.toString(heightPx), "-o", out.toString(),
                file.toString());
        return gray(out, widthPx, heightPx);
    }

    /** A page by pdftoppm (poppler). */
    public static byte[] pdfGray(Path file, int page, double dpi, int widthPx, int heightPx) {
        assumeInstalled("pdftoppm");
        Path out = file.resolveSibling("theirs.png");
        run(file.getParent(), "pdftoppm", "-png", "-singlefile", "-cropbox", "-r", Double.toString(dpi), "-f", Integer.toString(page), "-l",
                Integer.toString(page), file.toString(), file.resolveSibling("theirs").toString());
        return gray(out, widthPx, heightPx);
    }

    /** Code values by 0.2126 R + 0.7152 G + 0.0722 B, as ours. */
    private static byte[] gray(Path png, int widthPx, int heightPx) {
        try {
            BufferedImage image = ImageIO.read(png.toFile());
            if (Math.abs(image.getWidth() - widthPx) > 1 || Math.abs(image.getHeight() - heightPx) > 1) {
                throw new AssertionError("theirs is " + image.getWidth() + " x " + image.getHeight() + " px instead of " + widthPx + " x " + heightPx);
            }
            byte[] gray = new byte[widthPx * heightPx];
            for (int y = 0; y < heightPx; y++) {
                for (int x = 0; x < widthPx; x++) {
                    boolean inside = x < image.getWidth() && y < image.getHeight();
                    int rgb = !inside
                            ? 0xFFFFFF
                            : image.getRaster().getNumBands() < 3 && image.getColorModel().getPixelSize() <= 16
                                    && !(image.getColorModel() instanceof java.awt.image.IndexColorModel)
                                            ? image.getRaster().getSample(x, y, 0) * 0x010101
                                            : image.getRGB(x, y);
                    gray[y * widthPx + x] = (byte) Math.rint(0.2126 * (rgb >> 16 & 0xFF) + 0.7152 * (rgb >> 8 & 0xFF) + 0.0722 * (rgb & 0xFF));
                }
            }
            return gray;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Difference difference(byte[] ours, byte[] theirs, int widthPx) {
        double squares = 0;
        int off = 0;
        for (int i = 0; i < ours.length; i++) {
            int apart = (ours[i] & 0xFF) - (theirs[i] & 0xFF);
            squares += (double) apart * apart;
            off += Math.abs(apart) > 24 && isOff(ours[i] & 0xFF, theirs, i, widthPx) ? 1 : 0;
        }
        return new Difference(Art.mean(ours), Art.mean(theirs), Math.sqrt(squares / ours.length), (double) off / ours.length);
    }

    private static boolean isOff(int gray, byte[] theirs, int at, int widthPx) {
        int least = 255;
        int most = 0;
        int height = theirs.length / widthPx;
        for (int y = Math.max(0, at / widthPx - 1); y <= Math.min(height - 1, at / widthPx + 1); y++) {
            for (int x = Math.max(0, at % widthPx - 1); x <= Math.min(widthPx - 1, at % widthPx + 1); x++) {
                least = Math.min(least, theirs[y * widthPx + x] & 0xFF);
                most = Math.max(most, theirs[y * widthPx + x] & 0xFF);
            }
        }
        return gray < least - 24 || gray > most + 24;
    }

    /** For looking at: both and where they differ, side by side, if the property {@code saddlebar.pictures} names a folder. */
    public static void show(String name, byte[] ours, byte[] theirs, int widthPx) {
        String folder = System.getProperty("saddlebar.pictures");
        if (folder == null) {
            return;
        }
        int h = ours.length / widthPx;
        BufferedImage both = new BufferedImage(3 * widthPx, h, BufferedImage.TYPE_BYTE_GRAY);
        for (int i = 0; i < ours.length; i++) {
            int x = i % widthPx;
            for (int k : List.of(0, 1, 2)) {
                int value = k == 0 ? ours[i] & 0xFF : k == 1 ? theirs[i] & 0xFF : 255 - Math.abs((ours[i] & 0xFF) - (theirs[i] & 0xFF));
                both.getRaster().setSample(x + k * widthPx, i / widthPx, 0, value);
            }
        }
        try {
            ImageIO.write(both, "png", new File(folder, name + ".png"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
