package saddlebar.artwork.raster;

import java.io.EOFException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import javax.imageio.stream.ImageInputStream;

import saddlebar.model.problem.Refusal;

/**
 * What a picture file says of itself, read and checked without decoding a pixel: a file that claims more than it holds is refused here.
 *
 * @param kind        which format
 * @param widthPx     pixels of a row as stored
 * @param heightPx    rows as stored
 * @param dpiX        pixels an inch across, 0 if the file does not say
 * @param dpiY        and down
 * @param channels    samples of a pixel as stored
 * @param bits        bits of a sample
 * @param orientation 1 to 8 as in Exif: how it is to be turned; 1 as stored
 * @param interlaced  stored in passes, so that no row is ready before the end
 * @param inks        coded as ink (cyan, magenta, yellow, black) and not as light
 * @param colourTransform colour transform that an APP14 marker names (0 none, 1 YCbCr, 2 YCCK), -1 without one
 * @param notes       what should be told
 */
record PictureHead(Kind kind, int widthPx, int heightPx, double dpiX, double dpiY, int channels, int bits, int orientation, boolean interlaced,
        boolean inks, int colourTransform, List<String> notes) {
    /** A picture with more pixels than this is taken for a trap: a square metre at 1200 dpi has 2.2 thousand million. */
    static final long MOST_PX = 2_500_000_000L;
    /** Fewer than this many pixels an inch, or more, are a slip and count as unsaid. */
    private static final double LEAST_DPI = 10;
    private static final double MOST_DPI = 100_000;

    /** Formats that are read. */
    enum Kind {
        PNG("png"), JPEG("jpeg"), TIFF("tiff");

        private final String format;

        Kind(String format) {
            this.format = format;
        }

        /** The name under which the platform has it. */
        String format() {
            return format;
        }

        /** The format that these first bytes belong to, null for none. */
        static Kind of(byte[] head) {
            if (starts(head, 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A)) {
                return PNG;
            } else if (starts(head, 0xFF, 0xD8, 0xFF)) {
                return JPEG;
            } else if (starts(head, 'I', 'I', 42, 0) || starts(head, 'M', 'M', 0, 42) || starts(head, 'I', 'I', 43, 0)
                    || starts(head, 'M', 'M', 0, 43)) {
                return TIFF;
            }
            return null;
        }

        private static boolean starts(byte[] head, int... bytes) {
            for (int i = 0; i < bytes.length; i++) {
                if (i >= head.length || (head[i] & 0xFF) != bytes[i]) {
                    return false;
                }
            }
            return true;
        }
    }

    PictureHead {
        notes = List.copyOf(notes);
    }

    /** @param where the file, or the element that holds the picture, for refusals */
    static PictureHead read(ImageInputStream in, String where) throws IOException {
        byte[] first = new byte[8];
        in.seek(0);
        int n = in.read(first);
        Kind kind = Kind.of(java.util.Arrays.copyOf(first, Math.max(n, 0)));
        if (kind == null) {
            throw new Refusal(where, "this picture is neither PNG nor JPEG nor TIFF", "save it as one of these");
        }
        in.seek(0);
        try {
            PictureHead head = switch (kind) {
                case PNG -> new PngHead(in, where).read();
                case JPEG -> new JpegHead(in, where).read();
                case TIFF -> new TiffHead(in, where).read();
            };
            head.judge(where);
            return head;
        } catch (EOFException e) {
            throw truncated(kind, where, e);
        }
    }

    static Refusal truncated(Kind kind, String where, IOException cause) {
        return new Refusal(where, "the " + kind + " picture ends too early: part of the file is missing", "copy or save it again", cause);
    }

    static Refusal damaged(Kind kind, String where, String what, Throwable cause) {
        return new Refusal(where, "the " + kind + " picture is damaged: " + what, "copy or save it again", cause);
    }

    private void judge(String where) {
        if (widthPx < 1 || heightPx < 1) {
            throw new Refusal(where, "the picture has no size: " + widthPx + " x " + heightPx + " px", "save it again");
        }
        if ((long) widthPx * heightPx > MOST_PX) {
            throw new Refusal(where, "the picture claims " + widthPx + " x " + heightPx + " px, more than any sheet needs",
                    "save it at the size and resolution at which it is printed, 1200 px an inch at most");
        }
    }

    boolean saysSize() {
        return dpiX > 0 && dpiY > 0;
    }

    /** Whether width and height change places when it is turned as it wants. */
    boolean lying() {
        return orientation >= 5;
    }

    /** Gathers what a format tells. */
    static final class Draft {
        int width;
        int height;
        double dpiX;
        double dpiY;
        int channels;
        int bits = 8;
        int orientation = 1;
        boolean interlaced;
        boolean inks;
        int colourTransform = -1;
        final List<String> notes = new ArrayList<>();

        PictureHead as(Kind kind) {
            boolean sound = dpiX >= LEAST_DPI && dpiX <= MOST_DPI && dpiY >= LEAST_DPI && dpiY <= MOST_DPI;
            if (!sound && (dpiX > 1 || dpiY > 1)) {
                notes.add("it claims " + dpiX + " x " + dpiY + " px an inch, which cannot be meant");
            }
            return new PictureHead(kind, width, height, sound ? dpiX : 0, sound ? dpiY : 0, channels, bits,
                    orientation >= 1 && orientation <= 8 ? orientation : 1, interlaced, inks, colourTransform, notes);
        }
    }
}
