package saddlebar.artwork.raster;

import java.io.EOFException;
import java.io.IOException;
import java.util.zip.CRC32;

import javax.imageio.stream.ImageInputStream;

import saddlebar.model.units.Units;

/** Walks the chunks of a PNG (ISO/IEC 15948) to its end. */
final class PngHead {
    private static final int IHDR = 0x49484452;
    private static final int PHYS = 0x70485973;
    private static final int IDAT = 0x49444154;
    private static final int IEND = 0x49454E44;
    private static final double MM_PER_METRE = 1000;

    private final ImageInputStream in;
    private final String where;
    private final PictureHead.Draft draft = new PictureHead.Draft();

    PngHead(ImageInputStream in, String where) {
        this.in = in;
        this.where = where;
    }

    PictureHead read() throws IOException {
        in.seek(8);
        boolean data = false;
        for (boolean first = true;; first = false) {
            long length = in.readUnsignedInt();
            int type = in.readInt();
            long next = in.getStreamPosition() + length + 4;
            if (first && type != IHDR || length > Integer.MAX_VALUE) {
                throw PictureHead.damaged(PictureHead.Kind.PNG, where, "its chunks are out of order", null);
            }
            if (in.length() >= 0 && next > in.length()) {
                throw new EOFException();
            }
            if (type == IHDR) {
                header((int) length);
            } else if (type == PHYS && length == 9) {
                double x = in.readUnsignedInt();
                double y = in.readUnsignedInt();
                if (in.readByte() == 1) {
                    draft.dpiX = x * Units.MM_PER_INCH / MM_PER_METRE;
                    draft.dpiY = y * Units.MM_PER_INCH / MM_PER_METRE;
                }
            } else if (type == IDAT) {
                data = true;
            } else if (type == IEND) {
                break;
            }
            in.seek(next);
        }
        if (!data) {
            throw PictureHead.damaged(PictureHead.Kind.PNG, where, "it holds no pixels", null);
        }
        return draft.as(PictureHead.Kind.PNG);
    }

    private void header(int length) throws IOException {
        byte[] bytes = new byte[4 + 13];
        in.seek(in.getStreamPosition() - 4);
        in.readFully(bytes);
        CRC32 sum = new CRC32();
        sum.update(bytes);
        if (length != 13 || in.readUnsignedInt() != sum.getValue()) {
            throw PictureHead.damaged(PictureHead.Kind.PNG, where, "the check sum of its head is wrong", null);
        }
        java.nio.ByteBuffer head = java.nio.ByteBuffer.wrap(bytes, 4, 13);
        draft.width = head.getInt();
        draft.height = head.getInt();
        draft.bits = head.get();
        int colour = head.get();
        head.getShort();
        draft.interlaced = head.get() != 0;
        draft.channels = switch (colour) {
            case 0, 3 -> 1;
            case 2 -> 3;
            case 4 -> 2;
            case 6 -> 4;
            default -> throw PictureHead.damaged(PictureHead.Kind.PNG, where, "it has no known kind of colour", null);
        };
    }
}
