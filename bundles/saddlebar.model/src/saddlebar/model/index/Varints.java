package saddlebar.model.index;

import java.nio.ByteBuffer;
import java.util.Arrays;

/** Whole numbers in as few bytes as they need, seven bits a byte, the last byte without its top bit; a buffer that grows. */
final class Varints {
    private byte[] bytes = new byte[256];
    private int size;

    void add(long value) {
        long rest = value;
        while ((rest & ~0x7FL) != 0) {
            one((byte) (rest | 0x80));
            rest >>>= 7;
        }
        one((byte) rest);
    }

    /** For numbers that may be below nought: small ones of either sign stay short. */
    void addSigned(long value) {
        add(value << 1 ^ value >> 63);
    }

    void addBytes(byte[] more) {
        room(more.length);
        System.arraycopy(more, 0, bytes, size, more.length);
        size += more.length;
    }

    void addDouble(double value) {
        room(Double.BYTES);
        ByteBuffer.wrap(bytes).putDouble(size, value);
        size += Double.BYTES;
    }

    int size() {
        return size;
    }

    byte[] toBytes() {
        return Arrays.copyOf(bytes, size);
    }

    void clear() {
        size = 0;
    }

    private void one(byte value) {
        room(1);
        bytes[size++] = value;
    }

    private void room(int more) {
        if (size + more > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, size + more));
        }
    }

    static long read(ByteBuffer from) {
        long value = 0;
        for (int shift = 0; shift < Long.SIZE; shift += 7) {
            byte next = from.get();
            value |= (long) (next & 0x7F) << shift;
            if (next >= 0) {
                return value;
            }
        }
        throw new IllegalStateException("a number has no end");
    }

    static long readSigned(ByteBuffer from) {
        long value = read(from);
        return value >>> 1 ^ -(value & 1);
    }
}
