package saddlebar.stencil.code;

import java.io.IOException;
import java.io.OutputStream;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.util.Arrays;

/** A growing string of bits, first bit highest (FillOrder 1 of TIFF), in bytes and an accumulator of at most 63 bits. For one thread. */
final class CodeBits {
    static final VarHandle INT = MethodHandles.byteArrayViewVarHandle(int[].class, ByteOrder.BIG_ENDIAN);
    static final VarHandle LONG = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.BIG_ENDIAN);

    /** Whole bytes so far; valid below {@link #length}. */
    byte[] bytes;
    int length;
    /** Bits that do not yet fill a byte or an int, right-aligned: the lowest {@link #pendingBits}; those above are not valid. */
    long pending;
    int pendingBits;

    CodeBits(int expectedBytes) {
        bytes = new byte[Math.max(64, expectedBytes)];
    }

    void clear() {
        length = 0;
        pending = 0;
        pendingBits = 0;
    }

    long bitLength() {
        return 8L * length + pendingBits;
    }

    /** Makes room for so many bytes after those that are there. */
    void ensure(int moreBytes) {
        if (bytes.length - length < moreBytes) {
            bytes = Arrays.copyOf(bytes, Math.max(length + moreBytes, Math.addExact(bytes.length, bytes.length >> 1)));
        }
    }

    /** Appends the lowest {@code bits} of a code word, at most 32. */
    void put(int code, int bits) {
        pending = pending << bits | code & (1L << bits) - 1;
        pendingBits += bits;
        if (pendingBits >= 32) {
            ensure(8);
            pendingBits -= 32;
            INT.set(bytes, length, (int) (pending >>> pendingBits));
            length += 4;
        }
    }

    /** Appends so many ones. */
    void putOnes(int count) {
        for (int left = count; left > 0; left -= 32) {
            put(-1, Math.min(32, left));
        }
    }

    /** Appends all bits of another string. */
    void append(CodeBits other) {
        ensure(other.length + 16);
        int at = 0;
        if (pendingBits % 8 == 0) {
            pad();
            System.arraycopy(other.bytes, 0, bytes, length, other.length);
            length += other.length;
            at = other.length;
        }
        for (; at + 4 <= other.length; at += 4) {
            put((int) INT.get(other.bytes, at), 32);
        }
        for (; at < other.length; at++) {
            put(other.bytes[at], 8);
        }
        int rest = other.pendingBits;
        if (rest > 32) {
            put((int) (other.pending >>> 32), rest - 32);
            rest = 32;
        }
        put((int) other.pending, rest);
    }

    /** Appends zeros up to a whole byte and moves all bits to the bytes. */
    void pad() {
        int fill = -pendingBits & 7;
        pending <<= fill;
        pendingBits += fill;
        ensure(8);
        while (pendingBits > 0) {
            pendingBits -= 8;
            bytes[length++] = (byte) (pending >>> pendingBits);
        }
    }

    /** Hands the whole bytes on and keeps only the bits that are left over. */
    void drainTo(OutputStream out) throws IOException {
        while (pendingBits >= 8) {
            ensure(1);
            pendingBits -= 8;
            bytes[length++] = (byte) (pending >>> pendingBits);
        }
        out.write(bytes, 0, length);
        length = 0;
    }
}
