package saddlebar.stencil.code;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

import saddlebar.model.problem.Refusal;

/** The first directory of a TIFF file as it was found; every number in it is doubted until looked at. */
final class TiffDirectory {
    private static final int MOST_VALUES = 1 << 21;
    private static final int MOST_TEXT = 1 << 20;
    private static final int MOST_FIELDS = 0xFFFF;
    private static final int CLASSIC = 42;
    private static final int BIG = 43;

    private record Field(int type, long count, long valueAt) {
    }

    private final FileChannel file;
    private final String name;
    private final ByteOrder order;
    private final boolean big;
    private final Map<Integer, Field> fields = new TreeMap<>();

    TiffDirectory(FileChannel file, String name) throws IOException {
        this.file = file;
        this.name = name;
        ByteBuffer header = bytes(0, 8, ByteOrder.LITTLE_ENDIAN);
        int mark = header.getShort(0);
        if (mark != 0x4949 && mark != 0x4D4D) {
            throw refused("this is no TIFF file", "give a TIFF file");
        }
        this.order = mark == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN;
        header.order(order);
        int version = header.getShort(2) & 0xFFFF;
        if (version != CLASSIC && version != BIG) {
            throw refused("this is no TIFF file (version " + version + ", not 42 or 43)", "save it as TIFF 6.0");
        }
        this.big = version == BIG;
        if (big && (header.getShort(4) != 8 || header.getShort(6) != 0)) {
            throw refused("its header says offsets of " + header.getShort(4) + " bytes, which BigTIFF does not have", "save it as TIFF 6.0");
        }
        readFields(big ? bytes(8, 8, order).getLong(0) : header.getInt(4) & 0xFFFFFFFFL);
    }

    private void readFields(long at) throws IOException {
        int head = big ? 8 : 2;
        int width = big ? 20 : 12;
        int inside = big ? 8 : 4;
        ByteBuffer number = bytes(at, head, order);
        long count = big ? number.getLong(0) : number.getShort(0) & 0xFFFF;
        if (count < 0 || count > MOST_FIELDS) {
            throw refused("its directory says that it has " + Long.toUnsignedString(count) + " fields", "copy or save it again");
        }
        ByteBuffer entries = bytes(at + head, width * (int) count, order);
        for (int i = 0; i < count; i++) {
            int entry = width * i;
            int tag = entries.getShort(entry) & 0xFFFF;
            int type = entries.getShort(entry + 2) & 0xFFFF;
            long values = big ? entries.getLong(entry + 4) : entries.getInt(entry + 4) & 0xFFFFFFFFL;
            int bytesOf = TiffTag.bytesOf(type);
            boolean fits = bytesOf == 0 || values >= 0 && values <= inside / bytesOf;
            int valueAt = entry + width - inside;
            long place = big ? entries.getLong(valueAt) : entries.getInt(valueAt) & 0xFFFFFFFFL;
            fields.putIfAbsent(tag, new Field(type, values, fits ? at + head + valueAt : place));
        }
    }

    boolean has(int tag) {
        return fields.containsKey(tag);
    }

    /** A single whole number; {@code absent} if the field is not there. */
    long number(int tag, long absent) throws IOException {
        return has(tag) ? numbers(tag)[0] : absent;
    }

    long[] numbers(int tag) throws IOException {
        Field field = fields.get(tag);
        if (field == null || field.count < 1 || field.count > MOST_VALUES || !isWhole(field.type)) {
            throw refused("field " + tag + " of its directory is missing or no list of whole numbers", "save the file again as TIFF 6.0");
        }
        int width = TiffTag.bytesOf(field.type);
        ByteBuffer bytes = bytes(field.valueAt, (int) field.count * width, order);
        long[] values = new long[(int) field.count];
        for (int i = 0; i < values.length; i++) {
            values[i] = switch (width) {
                case 2 -> bytes.getShort(2 * i) & 0xFFFF;
                case 4 -> bytes.getInt(4 * i) & 0xFFFFFFFFL;
                default -> bytes.getLong(8 * i); // below 0 beyond 2^63, which no file reaches: whoever uses it refuses it
            };
        }
        return values;
    }

    private static boolean isWhole(int type) {
        return type == TiffTag.SHORT || type == TiffTag.LONG || type == TiffTag.LONG8;
    }

    /** Whether counts and offsets have 8 bytes. */
    boolean isBig() {
        return big;
    }

    /** A fraction; 0 if it is not there or has no value. */
    double fraction(int tag) throws IOException {
        Field field = fields.get(tag);
        if (field == null || field.type != TiffTag.RATIONAL || field.count < 1) {
            return 0;
        }
        ByteBuffer bytes = bytes(field.valueAt, 8, order);
        double below = bytes.getInt(4) & 0xFFFFFFFFL;
        return below == 0 ? 0 : (bytes.getInt(0) & 0xFFFFFFFFL) / below;
    }

    /** A text up to its first 0; empty if it is not there. */
    String text(int tag) throws IOException {
        Field field = fields.get(tag);
        if (field == null || field.type != TiffTag.ASCII && field.type != TiffTag.BYTE || field.count < 1 || field.count > MOST_TEXT) {
            return "";
        }
        String text = StandardCharsets.UTF_8.decode(bytes(field.valueAt, (int) field.count, order)).toString();
        int end = text.indexOf('\0');
        return end < 0 ? text : text.substring(0, end);
    }

    Refusal refused(String what, String remedy) {
        return new Refusal(name, what, remedy);
    }

    private ByteBuffer bytes(long at, int count, ByteOrder byteOrder) throws IOException {
        if (at < 0 || at > file.size() - count) {
            throw new Refusal(name, "the file is cut short or damaged: " + count + " bytes at " + Long.toUnsignedString(at) + " lie beyond its end",
                    "copy or save it again", new EOFException());
        }
        ByteBuffer bytes = ByteBuffer.allocate(count).order(byteOrder);
        while (bytes.hasRemaining() && file.read(bytes, at + bytes.position()) >= 0) {
            continue;
        }
        return bytes.flip();
    }
}
