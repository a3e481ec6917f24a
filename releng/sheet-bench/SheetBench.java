import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.SplittableRandom;

import saddlebar.model.work.Work;
import saddlebar.stencil.BitBands;
import saddlebar.stencil.ScreenedBands;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.code.BitonalSettings;
import saddlebar.stencil.code.BitonalTiff;
import saddlebar.stencil.code.BitsHash;
import saddlebar.stencil.code.TiffBits;
import saddlebar.stencil.tone.ToneTable;

/**
 * A tabloid sheet at 1200 dpi, or its first rows, through our kernels and through public programs. Wall time of the whole work, files read and written
 * on both sides; ours warm in this process, theirs whole processes (which start in some milliseconds). Medians, with the spread of the rounds.
 */
public final class SheetBench {
    private static final int WIDTH = 13200;
    private static final ToneTable TONE = ToneTable.linear();
    private static final ScreeningMethods METHODS = ScreeningMethods.ownMethods();

    private interface Task {
        void run() throws Exception;
    }

    private final Path folder;
    private final int rows;
    private final int rounds;

    private SheetBench(Path folder, int rows, int rounds) {
        this.folder = folder;
        this.rows = rows;
        this.rounds = rounds;
    }

    public static void main(String[] args) throws Exception {
        new SheetBench(Path.of(args[0]), Integer.parseInt(args[1]), Integer.parseInt(args[2])).run();
    }

    private void run() throws Exception {
        Path gray = folder.resolve("gray.pgm");
        makeGray(gray);
        double load = java.lang.management.ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
        System.out.printf(Locale.ROOT, "%n## %s, %d x %d px (%.0f Mpx), %d rounds%n%n", LocalDate.now(), WIDTH, rows, WIDTH * (double) rows / 1e6, rounds);
        System.out.printf(Locale.ROOT, "2 cores, x86-64, Java %s; load average at the start %.1f.%n%n", System.getProperty("java.specification.version"), load);
        System.out.println("| work | ours s (least-most) | peer | peer s (least-most) | peer / ours |\n| --- | --- | --- | --- | --- |");
        ScreeningRecipe fine = ScreeningRecipe.withDefaults().withMethod("diffusion").withDotMm(0.021);
        ScreeningRecipe raster = fine.withScan(ScreeningRecipe.Scan.RASTER);
        Path ours = folder.resolve("ours.pbm");
        Path theirs = folder.resolve("theirs.pbm");
        Task netpbmFs = () -> command(theirs, "pgmtopbm", "-fs", gray.toString());
        row("error diffusion, 1 px, to and fro, one thread", () -> screen(gray, fine, 1, ours), "pgmtopbm -fs", netpbmFs);
        sameTone(ours, theirs, 0.005);
        row("the same, every row left to right, one thread", () -> screen(gray, raster, 1, ours), "pgmtopbm -fs", netpbmFs);
        String one = sha(ours);
        row("the same, two threads", () -> screen(gray, raster, 2, ours), "pgmtopbm -fs", netpbmFs);
        require(one.equals(sha(ours)), "two threads made other bits than one");
        row("jarvis-judice-ninke, 1 px", () -> screen(gray, fine.withFilter("jarvis-judice-ninke"), 1, ours), "pgmtopbm -fs", netpbmFs);
        row("ostromoukhov, 1 px", () -> screen(gray, fine.withFilter("ostromoukhov"), 1, ours), "pgmtopbm -fs", netpbmFs);
        Task netpbmCluster = () -> command(theirs, "pgmtopbm", "-cluster3", gray.toString());
        for (String method : new String[] {"am", "bluenoise", "hybrid", "stipple", "lines"}) {
            ScreeningRecipe recipe = ScreeningRecipe.withDefaults().withMethod(method);
            row(method, () -> screen(gray, recipe, 1, ours), "pgmtopbm -cluster3", netpbmCluster);
            sameTone(ours, theirs, 0.05); // their cell has few tones
        }
        coding("T.6, dots of 40 lines an inch", ScreeningRecipe.withDefaults(), gray);
        coding("1 px diffusion (ours then plain, since T.6 would be larger)", fine, gray);
        ghostscript(gray);
    }

    private void coding(String what, ScreeningRecipe recipe, Path gray) throws Exception {
        Path ours = folder.resolve("ours.tif");
        Path theirs = folder.resolve("theirs.tif");
        Path plain = folder.resolve("plain.tif");
        Path pbm = folder.resolve("bits.pbm");
        screen(gray, recipe, 1, pbm);
        command(plain, "pnmtotiff", "-none", pbm.toString());
        BitonalSettings settings = BitonalSettings.at(1200).replacing(true);
        row(what + ": encode and verify, one thread", () -> encode(pbm, ours, settings.onThreads(1)), "tiffcp -c g4",
                () -> command(null, "tiffcp", "-c", "g4", plain.toString(), theirs.toString()));
        row(what + ": the same, two threads", () -> encode(pbm, ours, settings.onThreads(2)), "tiffcp -c g4",
                () -> command(null, "tiffcp", "-c", "g4", plain.toString(), theirs.toString()));
        require(BitsHash.of(BitonalTiff.read(ours), Work.UNWATCHED).equals(BitsHash.of(BitonalTiff.read(theirs), Work.UNWATCHED)), "both hold the same bits");
        row(what + ": decode what libtiff coded", () -> decode(theirs), "tiffcp -c none",
                () -> command(null, "tiffcp", "-c", "none", theirs.toString(), plain.toString()));
    }

    /** A ramp of 400 grays, screened at 40 lines and 22.5 degrees, to a T.6 TIFF: from PDF with a Type 1 halftone there, from the gray rows here. */
    private void ghostscript(Path gray) throws Exception {
        double widthPt = WIDTH * 72 / 1200.0;
        double heightPt = rows * 72 / 1200.0;
        StringBuilder page = new StringBuilder("%!PS\n<< /PageSize [").append(widthPt).append(' ').append(heightPt)
                .append("] >> setpagedevice 40 22.5 { 180 mul cos exch 180 mul cos add 2 div } setscreen\n");
        for (int i = 0; i < 400; i++) {
            page.append(String.format(Locale.ROOT, "%.4f setgray %.4f 0 %.4f %.4f rectfill%n", i / 399.0, widthPt * i / 400, widthPt / 400 + 0.01, heightPt));
        }
        page.append("showpage\n");
        Path ps = folder.resolve("ramp.ps");
        Files.writeString(ps, page);
        Path ours = folder.resolve("ours.tif");
        Path theirs = folder.resolve("gs.tif");
        BitonalSettings settings = BitonalSettings.at(1200).replacing(true).onThreads(2);
        row("ramp to am 40/22.5 to T.6 TIFF, verified", () -> {
            try (Ramp ramp = new Ramp(); BitBands bits = new ScreenedBands(ramp, TONE, METHODS.method("am"), ScreeningRecipe.withDefaults())) {
                BitonalTiff.write(bits, ours, settings, Work.UNWATCHED);
            }
        }, "gs tiffg4, whole process", () -> command(null, "gs", "-q", "-dBATCH", "-dNOPAUSE", "-r1200", "-sDEVICE=tiffg4", "-sOutputFile=" + theirs,
                ps.toString()));
        double apart = Math.abs(share(BitonalTiff.read(ours)) - share(BitonalTiff.read(theirs)));
        require(apart < 0.01, "the ramps differ by " + apart + " in tone");
    }

    private void row(String what, Task ours, String peer, Task theirs) throws Exception {
        double[] mine = new double[rounds];
        double[] other = new double[rounds];
        ours.run(); // warms up
        theirs.run();
        for (int round = 0; round < rounds; round++) {
            mine[round] = seconds(ours);
            other[round] = seconds(theirs);
        }
        Arrays.sort(mine);
        Arrays.sort(other);
        System.out.printf(Locale.ROOT, "| %s | %.2f (%.2f-%.2f) | %s | %.2f (%.2f-%.2f) | %.1f |%n", what, mine[rounds / 2], mine[0], mine[rounds - 1], peer,
                other[rounds / 2], other[0], other[rounds - 1], other[rounds / 2] / mine[rounds / 2]);
    }

    private static double seconds(Task task) throws Exception {
        long begun = System.nanoTime();
        task.run();
        return (System.nanoTime() - begun) / 1e9;
    }

    private void makeGray(Path file) throws IOException {
        SplittableRandom random = new SplittableRandom(7);
        byte[] row = new byte[WIDTH];
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), 1 << 20)) {
            out.write(("P5\n" + WIDTH + " " + rows + "\n255\n").getBytes(StandardCharsets.US_ASCII));
            for (int y = 0; y < rows; y++) {
                for (int x = 0; x < WIDTH; x++) {
                    row[x] = (byte) Math.max(0, Math.min(255, x * 256 / WIDTH + random.nextInt(-8, 9)));
                }
                out.write(row);
            }
        }
    }

    private void screen(Path pgm, ScreeningRecipe recipe, int threads, Path pbm) throws IOException {
        try (PgmRows gray = new PgmRows(pgm);
                BitBands bits = new ScreenedBands(gray, TONE, METHODS.method(recipe.method()), recipe, threads);
                OutputStream out = new BufferedOutputStream(Files.newOutputStream(pbm), 1 << 20)) {
            out.write(("P4\n" + bits.widthPx() + " " + bits.heightPx() + "\n").getBytes(StandardCharsets.US_ASCII));
            int words = bits.wordsPerRow();
            long[] band = new long[32 * words];
            byte[] packed = new byte[8 * words];
            int bytes = (bits.widthPx() + 7) / 8;
            for (int have = bits.read(band, 32); have > 0; have = bits.read(band, 32)) {
                for (int y = 0; y < have; y++) {
                    for (int w = 0; w < words; w++) {
                        long word = band[y * words + w];
                        for (int b = 0; b < 8; b++) {
                            packed[8 * w + b] = (byte) (word >>> 56 - 8 * b);
                        }
                    }
                    out.write(packed, 0, bytes);
                }
            }
        }
    }

    private static void encode(Path pbm, Path tiff, BitonalSettings settings) throws IOException {
        try (PbmRows bits = new PbmRows(pbm)) {
            BitonalTiff.write(bits, tiff, settings, Work.UNWATCHED);
        }
    }

    private static void decode(Path tiff) throws IOException {
        try (TiffBits bits = BitonalTiff.read(tiff)) {
            long[] band = new long[64 * bits.wordsPerRow()];
            while (bits.read(band, 64) > 0) {
                continue;
            }
        }
    }

    private static double share(BitBands bits) throws IOException {
        try (bits) {
            long[] band = new long[64 * bits.wordsPerRow()];
            long painted = 0;
            for (int have = bits.read(band, 64); have > 0; have = bits.read(band, 64)) {
                for (int i = 0; i < have * bits.wordsPerRow(); i++) {
                    painted += Long.bitCount(band[i]);
                }
            }
            return (double) painted / bits.widthPx() / bits.heightPx();
        }
    }

    private static void sameTone(Path ours, Path theirs, double most) throws IOException {
        double apart = Math.abs(share(new PbmRows(ours)) - share(new PbmRows(theirs)));
        require(apart < most, "tones differ by " + apart);
    }

    private static String sha(Path pbm) throws IOException {
        return BitsHash.of(new PbmRows(pbm), Work.UNWATCHED);
    }

    private static void require(boolean holds, String what) {
        if (!holds) {
            throw new IllegalStateException(what);
        }
    }

    private static void command(Path out, String... words) throws Exception {
        ProcessBuilder builder = new ProcessBuilder(words).redirectError(ProcessBuilder.Redirect.DISCARD);
        builder.redirectOutput(out == null ? ProcessBuilder.Redirect.DISCARD : ProcessBuilder.Redirect.to(new File(out.toString())));
        int exit = builder.start().waitFor();
        require(exit == 0, String.join(" ", words) + " ended with " + exit);
    }

    /** 400 grays from black to white, as the page for the other program has them. */
    private final class Ramp implements saddlebar.model.art.GrayBands {
        private int row;

        @Override
        public int widthPx() {
            return WIDTH;
        }

        @Override
        public int heightPx() {
            return rows;
        }

        @Override
        public saddlebar.model.art.GrayCoding coding() {
            return saddlebar.model.art.GrayCoding.CODE_VALUES;
        }

        @Override
        public int read(byte[] target, int maxRows) {
            int have = Math.min(maxRows, rows - row);
            for (int x = 0; x < WIDTH; x++) {
                target[x] = (byte) Math.round(255.0 * (x * 400 / WIDTH) / 399);
            }
            for (int y = 1; y < have; y++) {
                System.arraycopy(target, 0, target, y * WIDTH, WIDTH);
            }
            row += have;
            return have;
        }

        @Override
        public void close() {
            // nothing was opened
        }
    }

    private static InputStream open(Path file) throws IOException {
        return new BufferedInputStream(Files.newInputStream(file), 1 << 20);
    }

    private static int number(InputStream in) throws IOException {
        int c = in.read();
        while (c <= ' ') {
            c = in.read();
        }
        int value = 0;
        for (; c > ' '; c = in.read()) {
            value = 10 * value + c - '0';
        }
        return value;
    }

    /** A raw PGM of one byte a px. */
    private static final class PgmRows implements saddlebar.model.art.GrayBands {
        private final InputStream in;
        private final int width;
        private final int height;
        private int row;

        PgmRows(Path file) throws IOException {
            in = open(file);
            in.skipNBytes(2);
            width = number(in);
            height = number(in);
            number(in);
        }

        @Override
        public int widthPx() {
            return width;
        }

        @Override
        public int heightPx() {
            return height;
        }

        @Override
        public saddlebar.model.art.GrayCoding coding() {
            return saddlebar.model.art.GrayCoding.CODE_VALUES;
        }

        @Override
        public int read(byte[] target, int maxRows) throws IOException {
            int have = Math.min(maxRows, height - row);
            in.readNBytes(target, 0, have * width);
            row += have;
            return have;
        }

        @Override
        public void close() {
            try {
                in.close();
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        }
    }

    /** A raw PBM. */
    private static final class PbmRows implements BitBands {
        private final InputStream in;
        private final int width;
        private final int height;
        private final byte[] packed;
        private int row;

        PbmRows(Path file) throws IOException {
            in = open(file);
            in.skipNBytes(2);
            width = number(in);
            height = number(in);
            packed = new byte[8 * ((width + 63) / 64)];
        }

        @Override
        public int widthPx() {
            return width;
        }

        @Override
        public int heightPx() {
            return height;
        }

        @Override
        public int read(long[] target, int maxRows) throws IOException {
            int have = Math.min(maxRows, height - row);
            int words = wordsPerRow();
            for (int y = 0; y < have; y++) {
                in.readNBytes(packed, 0, (width + 7) / 8);
                for (int w = 0; w < words; w++) {
                    long word = 0;
                    for (int b = 0; b < 8; b++) {
                        word = word << 8 | packed[8 * w + b] & 255;
                    }
                    target[y * words + w] = word;
                }
            }
            row += have;
            return have;
        }

        @Override
        public void close() {
            try {
                in.close();
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        }
    }
}
