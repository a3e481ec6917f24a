package saddlebar.artwork.raster;

import java.io.ByteArrayInputStream;
import java.io.EOFException;
import java.io.IOException;

import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

import saddlebar.model.problem.Refusal;

/** Walks the markers of a JPEG (ISO/IEC 10918-1, JFIF 10918-5, Exif) to its end. */
final class JpegHead {
    private static final double CM_PER_INCH = 2.54;

    private final ImageInputStream in;
    private final String where;
    private final PictureHead.Draft draft = new PictureHead.Draft();
    private final byte[] buffer = new byte[1 << 16];
    private double exifDpiX;
    private double exifDpiY;

    JpegHead(ImageInputStream in, String where) {
        this.in = in;
        this.where = where;
    }

    PictureHead read() throws IOException {
        in.seek(2);
        int marker = marker();
        while (marker != 0xD9) {
            if (marker >= 0xD0 && marker <= 0xD7 || marker == 0x01) {
                marker = marker();
                continue;
            }
            long start = in.getStreamPosition();
            int length = in.readUnsignedShort();
            if (length < 2) {
                throw PictureHead.damaged(PictureHead.Kind.JPEG, where, "a marker has no length", null);
            }
            segment(marker, length - 2);
            long next = start + length;
            if (in.length() >= 0 && next > in.length()) {
                throw new EOFException();
            }
            in.seek(next);
            marker = marker == 0xDA ? afterScan() : marker();
        }
        if (draft.channels == 0) {
            throw PictureHead.damaged(PictureHead.Kind.JPEG, where, "it holds no picture", null);
        }
        if (draft.dpiX <= 1 && exifDpiX > 1) { // JFIF often says 1 x 1 without a unit where Exif knows better
            draft.dpiX = exifDpiX;
            draft.dpiY = exifDpiY;
        }
        draft.inks = draft.channels == 4;
        return draft.as(PictureHead.Kind.JPEG);
    }

    private int marker() throws IOException {
        if (in.readUnsignedByte() != 0xFF) {
            throw PictureHead.damaged(PictureHead.Kind.JPEG, where, "a marker is missing", null);
        }
        int code = in.readUnsignedByte();
        while (code == 0xFF) {
            code = in.readUnsignedByte();
        }
        return code;
    }

    /** Coded pixels run to the next marker that is neither a stuffed zero nor a restart. */
    private int afterScan() throws IOException {
        boolean ff = false;
        while (true) {
            long at = in.getStreamPosition();
            int n = in.read(buffer);
            if (n <= 0) {
                throw new EOFException();
            }
            for (int i = 0; i < n; i++) {
                int value = buffer[i] & 0xFF;
                if (ff && value != 0 && value != 0xFF && !(value >= 0xD0 && value <= 0xD7)) {
                    in.seek(at + i + 1);
                    return value;
                }
                ff = value == 0xFF;
            }
        }
    }

    private void segment(int marker, int length) throws IOException {
        if (marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC) {
            if (marker > 0xC2) {
                throw new Refusal(where, "this kind of JPEG (marker " + Integer.toHexString(marker) + ") is not read", "save it as plain JPEG or PNG");
            }
            draft.bits = in.readUnsignedByte();
            draft.height = in.readUnsignedShort();
            draft.width = in.readUnsignedShort();
            draft.channels = in.readUnsignedByte();
        } else if (marker == 0xE0 && length >= 14) {
            byte[] head = bytes(12);
            if (head[0] == 'J' && head[1] == 'F' && head[2] == 'I' && head[3] == 'F') {
                int x = (head[8] & 0xFF) << 8 | head[9] & 0xFF;
                int y = (head[10] & 0xFF) << 8 | head[11] & 0xFF;
                double perInch = head[7] == 1 ? 1 : head[7] == 2 ? CM_PER_INCH : 0;
                draft.dpiX = x * perInch;
                draft.dpiY = y * perInch;
            }
        } else if (marker == 0xE1 && length > 14) {
            byte[] head = bytes(length);
            if (head[0] == 'E' && head[1] == 'x' && head[2] == 'i' && head[3] == 'f' && head[4] == 0) {
                exif(head);
            }
        } else if (marker == 0xEE && length >= 12) {
            byte[] head = bytes(12);
            if (head[0] == 'A' && head[1] == 'd' && head[2] == 'o' && head[3] == 'b' && head[4] == 'e') {
                draft.colourTransform = head[11] & 0xFF;
            }
        }
    }

    private byte[] bytes(int length) throws IOException {
        byte[] bytes = new byte[length];
        in.readFully(bytes);
        return bytes;
    }

    /** Exif is a small TIFF inside; what is wrong in it is passed over. */
    private void exif(byte[] segment) {
        try (MemoryCacheImageInputStream inner = new MemoryCacheImageInputStream(new ByteArrayInputStream(segment, 6, segment.length - 6))) {
            TiffTags tags = TiffTags.read(inner, where);
            draft.orientation = (int) tags.number(TiffTags.ORIENTATION, 1);
            double perInch = tags.number(TiffTags.RESOLUTION_UNIT, 2) == 3 ? CM_PER_INCH : 1;
            exifDpiX = tags.real(TiffTags.X_RESOLUTION, 0) * perInch;
            exifDpiY = tags.real(TiffTags.Y_RESOLUTION, 0) * perInch;
        } catch (IOException | Refusal e) {
            draft.notes.add("its camera data cannot be read");
        }
    }
}
