package saddlebar.stencil.code;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/**
 * A TIFF directory while it is put together: fields in ascending order, values that do not fit into their fields after them (TIFF 6.0, section 2; BigTIFF,
 * whose counts and offsets have 8 bytes, as libtiff's specification of 2007 has it).
 */
final class TiffFields {
    private record Field(int type, int count, byte[] value) {
    }

    private final Map<Integer, Field> fields = new TreeMap<>();

    void shorts(int tag, int value) {
        fields.put(tag, new Field(TiffTag.SHORT, 1, buffer(2).putShort((short) value).array()));
    }

    void longs(int tag, long... values) {
        ByteBuffer bytes = buffer(4 * values.length);
        for (long value : values) {
            bytes.putInt((int) value);
        }
        fields.put(tag, new Field(TiffTag.LONG, values.length, bytes.array()));
    }

    /** Places or sizes within a file. */
    void offsets(int tag, boolean big, long... values) {
        if (!big) {
            longs(tag, values);
            return;
        }
        ByteBuffer bytes = buffer(8 * values.length);
        for (long value : values) {
            bytes.putLong(value);
        }
        fields.put(tag, new Field(TiffTag.LONG8, values.length, bytes.array()));
    }

    void bytes(int tag, byte[] value) {
        fields.put(tag, new Field(TiffTag.BYTE, value.length, value.clone()));
    }

    /** A positive number as a fraction, exact to 1/1000. */
    void rational(int tag, double value) {
        boolean whole = value == Math.rint(value);
        ByteBuffer bytes = buffer(8).putInt((int) Math.round(whole ? value : value * 1000)).putInt(whole ? 1 : 1000);
        fields.put(tag, new Field(TiffTag.RATIONAL, 1, bytes.array()));
    }

    /** Text with its closing 0; left out if empty. TIFF 6.0 speaks of 7-bit ASCII; other letters are written as UTF-8. */
    void text(int tag, String value) {
        if (!value.isEmpty()) {
            byte[] bytes = (value.replace('\0', ' ') + "\0").getBytes(StandardCharsets.UTF_8);
            fields.put(tag, new Field(TiffTag.ASCII, bytes.length, bytes));
        }
    }

    /**
     * @param at  where in the file the directory will lie, an even number
     * @param big for BigTIFF
     */
    byte[] bytes(long at, boolean big) {
        int inside = big ? 8 : 4;
        int directoryBytes = even(big ? 8 + 20 * fields.size() + 8 : 2 + 12 * fields.size() + 4);
        int outside = fields.values().stream().mapToInt(field -> field.value.length > inside ? even(field.value.length) : 0).sum();
        ByteBuffer bytes = buffer(directoryBytes + outside);
        int next = directoryBytes;
        number(bytes, fields.size(), big ? 8 : 2);
        for (Map.Entry<Integer, Field> entry : fields.entrySet()) {
            Field field = entry.getValue();
            bytes.putShort(entry.getKey().shortValue()).putShort((short) field.type);
            number(bytes, field.count, inside);
            if (field.value.length > inside) {
                number(bytes, at + next, inside);
                bytes.put(next, field.value);
                next += even(field.value.length);
            } else {
                bytes.put(field.value).position(bytes.position() + inside - field.value.length);
            }
        }
        number(bytes, 0, inside); // no further picture
        return bytes.array();
    }

    private static void number(ByteBuffer bytes, long value, int width) {
        switch (width) {
            case 2 -> bytes.putShort((short) value);
            case 4 -> bytes.putInt((int) value);
            default -> bytes.putLong(value);
        }
    }

    private static int even(int bytes) {
        return bytes + (bytes & 1);
    }

    private static ByteBuffer buffer(int bytes) {
        return ByteBuffer.allocate(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }
}
