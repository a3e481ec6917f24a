package saddlebar.artwork.raster;

import java.awt.Rectangle;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;
import java.io.EOFException;
import java.io.IOException;
import java.util.Iterator;

import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.event.IIOReadWarningListener;
import javax.imageio.stream.ImageInputStream;

import saddlebar.model.problem.Refusal;

/**
 * Rows by the platform's own decoders (JPEG, TIFF, interlaced PNG), taken in bands of some millions of pixels, so that a large picture is
 * never whole in memory. Ink pictures (cyan, magenta, yellow, black) become light without a profile: r = (1 - c)(1 - k).
 */
final class PlatformRows implements PictureRows {
    private static final int BAND_PX = 8 << 20;

    private final ImageInputStream in;
    private final PictureHead head;
    private final String where;
    private final ImageReader reader;
    private final int bandRows;
    private final byte[] band;
    private final int channels;
    private String warning;
    private int bandTop;
    private int bandFilled;
    private int row;

    PlatformRows(PictureFile.Bytes bytes, PictureHead head, String where) throws IOException {
        this.in = bytes.open();
        this.head = head;
        this.where = where;
        this.reader = reader(head.kind().format());
        in.seek(0);
        reader.setInput(in, false, true);
        reader.addIIOReadWarningListener((IIOReadWarningListener) (source, text) -> warning = text);
        boolean whole = head.interlaced();
        this.bandRows = whole ? head.heightPx() : (int) Math.max(1, Math.min(head.heightPx(), BAND_PX / head.widthPx()));
        long size = (long) bandRows * head.widthPx();
        if (whole && size > MemoryRows.MOST_PX) {
            close();
            throw new Refusal(where, "this interlaced PNG is too large to be read", "save it without interlacing");
        }
        byte[] first = null;
        int found = 0;
        try {
            BufferedImage probe = head.inks() ? null : read(0, 1);
            found = probe == null ? 3 : channelsOf(probe.getColorModel());
            first = new byte[(int) size * found];
        } catch (IOException | RuntimeException e) {
            close();
            throw failed(e);
        }
        this.channels = found;
        this.band = first;
        this.bandTop = 0;
        this.bandFilled = 0;
    }

    private static ImageReader reader(String format) {
        ImageReader other = null;
        for (Iterator<ImageReader> all = ImageIO.getImageReadersByFormatName(format); all.hasNext();) {
            ImageReader one = all.next();
            if (one.getClass().getName().startsWith("com.sun.imageio.")) {
                return one; // the platform's own, whatever else is installed: same file, same pixels
            }
            other = one;
        }
        if (other == null) {
            throw new IllegalStateException("this Java platform reads no " + format);
        }
        return other;
    }

    private static int channelsOf(ColorModel model) {
        boolean gray = !(model instanceof IndexColorModel) && model.getColorSpace().getType() == ColorSpace.TYPE_GRAY;
        return (gray ? 1 : 3) + (model.hasAlpha() ? 1 : 0);
    }

    private BufferedImage read(int top, int rows) throws IOException {
        ImageReadParam part = reader.getDefaultReadParam();
        part.setSourceRegion(new Rectangle(0, top, head.widthPx(), rows));
        BufferedImage image = reader.read(0, part);
        tellsCut();
        return image;
    }

    private void tellsCut() {
        if (warning != null && warning.toLowerCase(java.util.Locale.ROOT).contains("premature")) {
            throw PictureHead.truncated(head.kind(), where, null);
        }
    }

    private RuntimeException failed(Exception cause) throws IOException {
        if (cause instanceof Refusal refusal) {
            return refusal;
        } else if (cause instanceof EOFException || cause.getCause() instanceof EOFException) {
            return PictureHead.truncated(head.kind(), where, new IOException(cause));
        } else if (cause instanceof IOException io && !(cause instanceof IIOException)) {
            throw io;
        }
        return PictureHead.damaged(head.kind(), where, "it cannot be decoded near row " + (row + 1), cause);
    }

    @Override
    public int widthPx() {
        return head.widthPx();
    }

    @Override
    public int heightPx() {
        return head.heightPx();
    }

    @Override
    public int channels() {
        return channels;
    }

    @Override
    public void next(byte[] target) throws IOException {
        if (row >= bandTop + bandFilled) {
            int rows = Math.min(bandRows, head.heightPx() - row);
            try {
                if (head.inks()) {
                    inks(row, rows);
                } else {
                    colours(read(row, rows), rows);
                }
            } catch (IOException | RuntimeException e) {
                throw failed(e);
            }
            bandTop = row;
            bandFilled = rows;
        }
        int length = head.widthPx() * channels;
        System.arraycopy(band, (row - bandTop) * length, target, 0, length);
        row++;
    }

    private void colours(BufferedImage image, int rows) {
        Raster raster = image.getRaster();
        ColorModel model = image.getColorModel();
        int width = head.widthPx();
        int to = 0;
        if (model instanceof IndexColorModel index) {
            int[] pixels = new int[width];
            for (int y = 0; y < rows; y++) {
                raster.getSamples(0, y, width, 1, 0, pixels);
                for (int x = 0; x < width; x++) {
                    int rgb = index.getRGB(pixels[x]);
                    band[to++] = (byte) (rgb >> 16);
                    band[to++] = (byte) (rgb >> 8);
                    band[to++] = (byte) rgb;
                    if (channels == 4) {
                        band[to++] = (byte) (rgb >>> 24);
                    }
                }
            }
            return;
        }
        // samples as they stand: the platform's colour conversion would bend gray
        boolean premultiplied = model.isAlphaPremultiplied() && model.hasAlpha();
        int bands = raster.getNumBands();
        int[] pixels = new int[width * bands];
        for (int y = 0; y < rows; y++) {
            raster.getPixels(0, y, width, 1, pixels);
            for (int x = 0; x < width; x++) {
                int alpha = premultiplied ? eight(pixels[x * bands + channels - 1], model.getComponentSize(channels - 1)) : 255;
                for (int c = 0; c < channels; c++) {
                    int value = eight(pixels[x * bands + c], model.getComponentSize(c));
                    boolean colour = c < channels - 1 || !model.hasAlpha();
                    band[to++] = (byte) (premultiplied && colour && alpha > 0 ? Math.min(255, (value * 255 + alpha / 2) / alpha) : value);
                }
            }
        }
    }

    private static int eight(int sample, int bits) {
        int most = (1 << bits) - 1;
        return bits == 8 ? sample : (int) (((sample & most) * 255L + most / 2) / most);
    }

    private void inks(int top, int rows) throws IOException {
        ImageReadParam part = reader.getDefaultReadParam();
        part.setSourceRegion(new Rectangle(0, top, head.widthPx(), rows));
        Raster raster = reader.canReadRaster() ? reader.readRaster(0, part) : reader.read(0, part).getRaster();
        tellsCut();
        int width = head.widthPx();
        int bands = raster.getNumBands();
        int[] pixels = new int[width * bands];
        int to = 0;
        for (int y = 0; y < rows; y++) {
            raster.getPixels(raster.getMinX(), raster.getMinY() + y, width, 1, pixels);
            for (int x = 0; x < width; x++) {
                int at = x * bands;
                int c = pixels[at];
                int m = pixels[at + 1];
                int ye = pixels[at + 2];
                int k = bands > 3 ? pixels[at + 3] : 0;
                if (head.colourTransform() == 2) { // the first three as luminance and chroma (ISO/IEC 10918-5)
                    double luma = c;
                    double blue = m - 128.0;
                    double red = ye - 128.0;
                    c = clamped(luma + 1.402 * red);
                    m = clamped(luma - 0.344136 * blue - 0.714136 * red);
                    ye = clamped(luma + 1.772 * blue);
                }
                boolean inverted = head.colourTransform() >= 0; // such files store 255 for no ink
                band[to++] = light(c, k, inverted);
                band[to++] = light(m, k, inverted);
                band[to++] = light(ye, k, inverted);
            }
        }
    }

    private static int clamped(double value) {
        return (int) Math.max(0, Math.min(255, Math.rint(value)));
    }

    private static byte light(int ink, int black, boolean inverted) {
        int a = inverted ? ink : 255 - ink;
        int b = inverted ? black : 255 - black;
        return (byte) ((a * b + 127) / 255);
    }

    @Override
    public void close() throws IOException {
        reader.dispose();
        in.close();
    }
}
