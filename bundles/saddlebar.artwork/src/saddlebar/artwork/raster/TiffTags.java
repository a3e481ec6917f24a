package saddlebar.artwork.raster;

import java.io.IOException;
import java.nio.ByteOrder;
import java.util.HashMap;
import java.util.Map;

import javax.imageio.stream.ImageInputStream;

import saddlebar.model.problem.Refusal;

/** The fields of the first directory of a TIFF (revision 6.0), those with numbers. */
final class TiffTags {
    static final int WIDTH = 256;
    static final int HEIGHT = 257;
    static final int BITS = 258;
    static final int COMPRESSION = 259;
    static final int PHOTOMETRIC = 262;
    static final int STRIP_OFFSETS = 273;
    static final int ORIENTATION = 274;
    static final int SAMPLES = 277;
    static final int STRIP_BYTES = 279;
    static final int X_RESOLUTION = 282;
    static final int Y_RESOLUTION = 283;
    static final int RESOLUTION_UNIT = 296;
    static final int TILE_OFFSETS = 324;
    static final int TILE_BYTES = 325;
    static final int SAMPLE_FORMAT = 339;

    private static final int MOST_FIELDS = 1000;
    private static final int MOST_VALUES = 4_000_000;
    private static final int[] SIZES = {0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8};

    private final Map<Integer, double[]> fields = new HashMap<>();
    private boolean more;

    private TiffTags() {
    }

    static TiffTags read(ImageInputStream in, String where) throws IOException {
        TiffTags tags = new TiffTags();
        long start = in.getStreamPosition();
        int order = in.readUnsignedByte();
        in.readUnsignedByte();
        in.setByteOrder(order == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        if (in.readUnsignedShort() != 42) {
            throw new Refusal(where, "this is a TIFF of the large kind, which is not read", "save it as plain TIFF or PNG");
        }
        in.seek(start + in.readUnsignedInt());
        int count = in.readUnsignedShort();
        if (count > MOST_FIELDS) {
            throw PictureHead.damaged(PictureHead.Kind.TIFF, where, "its directory has " + count + " fields", null);
        }
        for (int i = 0; i < count; i++) {
            long field = in.getStreamPosition();
            tags.field(in, start);
            in.seek(field + 12);
        }
        tags.more = in.readUnsignedInt() != 0;
        return tags;
    }

    private void field(ImageInputStream in, long start) throws IOException {
        int tag = in.readUnsignedShort();
        int type = in.readUnsignedShort();
        long count = in.readUnsignedInt();
        if (type < 1 || type > 12 || type == 2 || type == 7 || count < 1 || count > MOST_VALUES) {
            return; // words and private data
        }
        if (count * SIZES[type] > 4) {
            in.seek(start + in.readUnsignedInt());
        }
        if (in.length() >= 0 && in.getStreamPosition() + count * SIZES[type] > in.length()) {
            throw new java.io.EOFException();
        }
        double[] values = new double[(int) count];
        for (int i = 0; i < values.length; i++) {
            values[i] = value(in, type);
        }
        fields.put(tag, values);
    }

    private static double value(ImageInputStream in, int type) throws IOException {
        return switch (type) {
            case 1 -> in.readUnsignedByte();
            case 3 -> in.readUnsignedShort();
            case 4 -> in.readUnsignedInt();
            case 5 -> {
                double over = in.readUnsignedInt();
                double under = in.readUnsignedInt();
                yield under == 0 ? 0 : over / under;
            }
            case 6 -> in.readByte();
            case 8 -> in.readShort();
            case 9 -> in.readInt();
            case 10 -> {
                double over = in.readInt();
                double under = in.readInt();
                yield under == 0 ? 0 : over / under;
            }
            case 11 -> in.readFloat();
            default -> in.readDouble();
        };
    }

    /** Whether further pages follow. */
    boolean more() {
        return more;
    }

    double[] all(int tag) {
        return fields.getOrDefault(tag, new double[0]);
    }

    double real(int tag, double otherwise) {
        double[] values = all(tag);
        return values.length == 0 ? otherwise : values[0];
    }

    long number(int tag, long otherwise) {
        return (long) real(tag, otherwise);
    }
}
