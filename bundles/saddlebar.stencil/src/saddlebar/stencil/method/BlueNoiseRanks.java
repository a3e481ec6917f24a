package saddlebar.stencil.method;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The blue-noise orders that are shipped as data, each read once: row by row, every rank from 0 to side * side - 1 once. */
final class BlueNoiseRanks {
    private BlueNoiseRanks() {
    }

    /** Read when a first picture asks for it. */
    private static final class Small {
        private static final int[] RANKS = read(64);
    }

    private static final class Large {
        private static final int[] RANKS = read(128);
    }

    /**
     * @param side 64 or 128
     * @return a copy
     */
    static int[] of(int side) {
        return switch (side) {
            case 64 -> Small.RANKS.clone();
            case 128 -> Large.RANKS.clone();
            default -> throw new IllegalArgumentException("no blue noise of " + side + " a side is shipped");
        };
    }

    private static int[] read(int side) {
        byte[] text;
        try (InputStream stream = BlueNoiseRanks.class.getResourceAsStream("bluenoise-" + side + ".txt")) {
            text = stream.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        int[] ranks = new int[side * side];
        int count = 0;
        for (int at = 0; at < text.length;) {
            int c = text[at];
            if (c == '#') {
                while (text[at] != '\n') {
                    at++;
                }
            } else if (c >= '0' && c <= '9') {
                int rank = 0;
                for (; at < text.length && text[at] >= '0' && text[at] <= '9'; at++) {
                    rank = 10 * rank + text[at] - '0';
                }
                ranks[count++] = rank;
            } else {
                at++;
            }
        }
        return ranks;
    }
}
