package saddlebar.stencil.code;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;

import saddlebar.model.work.Work;
import saddlebar.stencil.BitBands;
import saddlebar.stencil.BitPicture;

/**
 * Speed of T.6 on a tabloid sheet at 1200 dpi: a screen of 40 lines an inch, and scattered px. Run by hand with a folder; it leaves {@code am.tif}
 * and {@code noise.tif} (plain) there, on which {@code tiffcp -c g4} can be timed in the same minute, and its figures in {@code speed.txt}.
 */
final class CodingBench {
    private static final int WIDTH_PX = 13_200;
    private static final int HEIGHT_PX = 20_400;

    private CodingBench() {
    }

    public static void main(String[] arguments) throws IOException {
        StringBuilder out = new StringBuilder();
        Path folder = Path.of(arguments[0]);
        for (String name : new String[] {"am", "noise"}) {
            BitPicture tile = name.equals("am") ? Fields.dots(WIDTH_PX, 1020, 30) : Fields.noise(WIDTH_PX, 1020, 0.5, 1);
            try (BitBands bits = new Repeated(tile)) {
                PlainTiff.write(bits, folder.resolve(name + ".tif"));
            }
            int reps = name.equals("am") ? 9 : 5;
            double[] encodeS = new double[reps];
            double[] decodeS = new double[reps];
            long bytes = 0;
            for (int rep = 0; rep < reps; rep++) {
                T6Encoder encoder = new T6Encoder(WIDTH_PX);
                CodeBits code = new CodeBits(1 << 20);
                long start = cpuNs();
                bytes = 0;
                for (int y = 0; y < HEIGHT_PX; y += tile.heightPx()) {
                    code.clear();
                    encoder.rows(tile.words(), 0, tile.heightPx(), code);
                    bytes += code.length;
                }
                encodeS[rep] = (cpuNs() - start) / 1e9;
                byte[] strip = T6Encoder.strip(tile);
                long[] row = new long[tile.wordsPerRow()];
                start = cpuNs();
                for (int y = 0; y < HEIGHT_PX; y += tile.heightPx()) {
                    T6Decoder decoder = new T6Decoder(new ByteArrayInputStream(strip), WIDTH_PX);
                    while (decoder.next(row, 0)) {
                        continue;
                    }
                }
                decodeS[rep] = (cpuNs() - start) / 1e9;
            }
            Arrays.sort(encodeS);
            Arrays.sort(decodeS);
            double mpx = WIDTH_PX * (double) HEIGHT_PX / 1e6;
            out.append(String.format(Locale.ROOT, "%s: coded %.3f s (%.0f Mpx/s), decoded %.3f s (%.0f Mpx/s), %d bytes%n", name, encodeS[reps / 2],
                    mpx / encodeS[reps / 2], decodeS[reps / 2], mpx / decodeS[reps / 2], bytes));
            for (int threads = 1; threads <= 2; threads++) {
                double[] wholeS = new double[5];
                for (int rep = 0; rep < wholeS.length; rep++) {
                    long start = System.nanoTime();
                    try (BitBands bits = new Repeated(tile)) {
                        BitonalTiff.write(bits, folder.resolve("ours.tif"), BitonalSettings.at(1200).onThreads(threads).replacing(true), Work.UNWATCHED);
                    }
                    wholeS[rep] = (System.nanoTime() - start) / 1e9;
                }
                Arrays.sort(wholeS);
                out.append(String.format(Locale.ROOT, "  file coded, written, synced, read back and hashed on %d threads: %.3f s%n", threads, wholeS[2]));
            }
        }
        Files.writeString(folder.resolve("speed.txt"), out);
    }

    /** Time of the processor, as a program's user time is told: what else runs does not count. */
    private static long cpuNs() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    /** A tile again and again down the sheet. */
    private static final class Repeated implements BitBands {
        private final BitPicture tile;
        private int row;

        Repeated(BitPicture tile) {
            this.tile = tile;
        }

        @Override
        public int widthPx() {
            return tile.widthPx();
        }

        @Override
        public int heightPx() {
            return HEIGHT_PX;
        }

        @Override
        public int read(long[] target, int maxRows) {
            int inTile = row % tile.heightPx();
            int rows = Math.min(Math.min(maxRows, tile.heightPx() - inTile), HEIGHT_PX - row);
            System.arraycopy(tile.words(), inTile * wordsPerRow(), target, 0, rows * wordsPerRow());
            row += rows;
            return rows;
        }

        @Override
        public void close() {
            // the tile stays
        }
    }
}
