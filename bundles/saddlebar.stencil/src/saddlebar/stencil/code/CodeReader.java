package saddlebar.stencil.code;

import java.io.IOException;
import java.io.InputStream;

/** Bits of coded rows, first bit highest, from a stream. Past its end it gives zeros and remembers how many were used. */
final class CodeReader {
    private final InputStream in;
    private final byte[] buffer = new byte[1 << 14];
    private int at;
    private int end;
    private boolean ended;
    private long held;
    private int heldBits;
    private int zerosBits;

    CodeReader(InputStream in) {
        this.in = in;
    }

    /** The next bits, at most 32, without taking them. */
    int look(int bits) throws IOException {
        if (heldBits < bits) {
            refill();
        }
        return (int) (held >>> (heldBits - bits)) & (int) ((1L << bits) - 1);
    }

    /** Takes bits that were looked at. */
    void take(int bits) {
        heldBits -= bits;
    }

    /** True once bits were taken that the stream does not have. */
    boolean overrun() {
        return heldBits < zerosBits;
    }

    /** True if what was looked at may have been the zeros past the stream's end. */
    boolean nearEnd() {
        return heldBits - zerosBits < RunCodes.LOOK_BITS;
    }

    /** True if the stream has no more bits that are not yet taken. */
    boolean exhausted() throws IOException {
        if (heldBits == 0) {
            refill();
        }
        return heldBits <= zerosBits;
    }

    /** Takes the bits up to the next whole byte of the stream. */
    void alignToByte() {
        heldBits -= heldBits & 7;
    }

    private void refill() throws IOException {
        if (end - at >= 4) {
            held = held << 32 | (int) CodeBits.INT.get(buffer, at) & 0xFFFFFFFFL;
            at += 4;
            heldBits += 32;
            return;
        }
        while (heldBits <= 32) {
            if (at == end && !ended) {
                at = 0;
                end = Math.max(0, in.read(buffer));
                ended = end == 0;
            }
            held <<= 8;
            heldBits += 8;
            if (at < end) {
                held |= buffer[at++] & 0xFF;
            } else {
                zerosBits += 8;
            }
        }
    }
}
