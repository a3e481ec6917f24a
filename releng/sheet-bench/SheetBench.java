import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.awt.image.IndexColorModel;
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
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;

import saddlebar.artwork.Artwork;
import saddlebar.artwork.ArtworkReaders;
import saddlebar.artwork.LayerChoice;
import saddlebar.artwork.RasterRequest;
import saddlebar.artwork.ReadSettings;
import saddlebar.model.art.GrayCoding;
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
 * A tabloid sheet at 1200 dpi, or its first rows, through our kernels and through public programs, files read and written on both sides; ours warm in this
 * process, theirs whole processes (which start in some milliseconds). Wall time and time of the processors (all threads, compiler and collector of ours
 * among them), which what else the machine does changes less. Medians, with the spread of the rounds.
 */
public final class SheetBench {
    private static final int WIDTH = 13200;
    private static final int WARM_ROUNDS = 2;
    private static final ToneTable TONE = ToneTable.linear();
    private static final ScreeningMethods METHODS = ScreeningMethods.ownMethods();

    private interface Task {
        void run() throws Exception;
    }

    private final Path folder;
    private final int rows;
    private final int rounds;
    /** Processors' time and most memory of the programs that the last task ran. */
    private double childSeconds;
    private double childMb;
    private final List<String> memory = new ArrayList<>();

    private SheetBench(Path folder, int rows, int rounds) {
        this.folder = folder;
        this.rows = rows;
        this.rounds = rounds;
    }

    public static void main(String[] args) throws Exception {
        if (args[0].equals("photograph")) {
            photograph(Path.of(args[1]), Path.of(args[2]), 2);
            return;
        }
        new SheetBench(Path.of(args[0]), Integer.parseInt(args[1]), Integer.parseInt(args[2])).run();
    }

    private void run() throws Exception {
        Path gray = folder.resolve("gray.pgm");
        makeGray(gray);
        double load = java.lang.management.ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
        System.out.printf(Locale.ROOT, "%n## %s, %d x %d px (%.0f Mpx), %d rounds%n%n", LocalDate.now(), WIDTH, rows, WIDTH * (double) rows / 1e6, rounds);
        System.out.printf(Locale.ROOT, "2 cores, x86-64, Java %s; load average at the start %.1f.%n%n", System.getProperty("java.specification.version"), load);
        System.out.println("| work | ours, wall s (least-most) | processors s | peer | peer, wall s (least-most) | processors s | MB | wall: peer / ours "
                + "| processors: peer / ours |\n| --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        ScreeningRecipe fine = ScreeningRecipe.withDefaults().withMethod("diffusion").withDotMm(0.021);
        ScreeningRecipe raster = fine.withScan(ScreeningRecipe.Scan.RASTER);
        Path ours = folder.resolve("ours.pbm");
        Path theirs = folder.resolve("theirs.pbm");
        Task netpbmFs = () -> command(theirs, "pgmtopbm", "-fs", gray.toString());
        row("error diffusion, 1 px, to and fro, one thread", () -> screen(gray, fine, 1, ours), "pgmtopbm -fs", netpbmFs);
        sameTone(ours, theirs, 0.005);
        row("the same, every row left to right, one thread", () -> screen(gray, raster, 1, ours), "pgmtopbm -fs", netpbmFs);
        sameLocally(ours, theirs, 0.02);
        Path pillow = folder.resolve("pillow.pbm");
        Task pillowFs = () -> command(null, "/usr/bin/python3", "-c", "from PIL import Image\nImage.MAX_IMAGE_PIXELS = None\nImage.open('" + gray
                + "').convert('1').save('" + pillow + "')");
        row("the same, every row left to right, one thread", () -> screen(gray, raster, 1, ours), "Pillow convert('1')", pillowFs);
        sameLocally(ours, pillow, 0.02);
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
        coding("1 px diffusion (ours deflated, since T.6 would be larger)", fine, gray);
        ghostscript(gray);
        photograph();
        memory();
        if (System.getenv("SADDLEBAR") != null) {
            wholeProcess(System.getenv("SADDLEBAR"));
        }
        System.out.printf(Locale.ROOT, "%nMost memory of our whole process on the photograph page, heap 256 MB: %s. Load average at the end %.1f.%n",
                String.join("; ", memory), java.lang.management.ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    }

    /** A page of the sheet's size that holds one gray photograph (noise and soft shapes, 300 px an inch, JPEG), made by netpbm and Ghostscript's language. */
    private Path photographPage(int heightPx) throws Exception {
        int width = WIDTH / 4;
        int height = heightPx / 4;
        BufferedImage photo = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
        SplittableRandom random = new SplittableRandom(11);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double soft = 128 + 90 * Math.sin(x / 170.0) * Math.cos(y / 110.0) + random.nextInt(-12, 13);
                photo.getRaster().setSample(x, y, 0, Math.max(0, Math.min(255, (int) soft)));
            }
        }
        Path page = folder.resolve("photo.pdf");
        try (PDDocument document = new PDDocument()) {
            PDPage sheet = new PDPage(new PDRectangle(WIDTH * 72 / 1200f, heightPx * 72 / 1200f));
            document.addPage(sheet);
            try (PDPageContentStream content = new PDPageContentStream(document, sheet)) {
                content.drawImage(JPEGFactory.createFromImage(document, photo, 0.9f), 0, 0, WIDTH * 72 / 1200f, heightPx * 72 / 1200f);
            }
            document.save(page.toFile());
        }
        return page;
    }

    private void photograph() throws Exception {
        Path page = photographPage(rows);
        Path ours = folder.resolve("ours.tif");
        Path theirs = folder.resolve("gs.tif");
        Task mine = () -> photograph(page, ours, 2);
        row("photograph page (PDF, JPEG) to am 40/22.5 to T.6 TIFF, verified, two threads", mine, "gs tiffg4, whole process",
                () -> command(null, "gs", "-q", "-dBATCH", "-dNOPAUSE", "-r1200", "-sDEVICE=tiffg4", "-sOutputFile=" + theirs, page.toString()));
        double apart = Math.abs(share(BitonalTiff.read(ours)) - share(BitonalTiff.read(theirs)));
        require(apart < 0.02, "the photographs differ by " + apart + " in tone");
        row("the same", mine, "pdftoppm -mono -r 1200 (no compression)",
                () -> command(null, "pdftoppm", "-mono", "-r", "1200", "-singlefile", page.toString(), folder.resolve("drawn").toString()));
    }

    static void photograph(Path page, Path target, int threads) throws IOException {
        try (Artwork artwork = ArtworkReaders.ownReaders().read(page, ReadSettings.asDrawn())) {
            RasterRequest place = RasterRequest.ofPage(artwork, 1200, GrayCoding.CODE_VALUES);
            try (BitBands bits = new ScreenedBands(artwork.gray(LayerChoice.all(), place, Work.UNWATCHED), TONE, METHODS.method("am"),
                    ScreeningRecipe.withDefaults(), threads)) {
                BitonalTiff.write(bits, target, BitonalSettings.at(1200).replacing(true).onThreads(threads), Work.UNWATCHED);
            }
        }
    }

    /** Most memory of the whole pipeline in a process with a heap of 256 MB, on a quarter of the rows and on all. */
    private void memory() throws Exception {
        for (int height : new int[] {rows / 4, rows}) {
            Path page = photographPage(height);
            command(null, "java", "-Xmx256m", "-Djava.awt.headless=true", "-cp", System.getProperty("java.class.path"), "SheetBench", "photograph",
                    page.toString(), folder.resolve("memory.tif").toString());
            memory.add(String.format(Locale.ROOT, "%d rows %.0f MB", height, childMb));
        }
    }

    /** The command line from its start to its end, and its memory at two heights of a sheet in a heap of 256 MB. */
    private void wholeProcess(String saddlebar) throws Exception {
        Path page = photographPage(rows);
        Path ours = folder.resolve("cli.tif");
        Path theirs = folder.resolve("gs.tif");
        row("the same page, our whole process from its start", () -> command(null, saddlebar, "screen", page.toString(), "--tone", "linear", "--quiet",
                "--progress", "none", "--replace", "--out", ours.toString()), "gs tiffg4, whole process",
                () -> command(null, "gs", "-q", "-dBATCH", "-dNOPAUSE", "-r1200", "-sDEVICE=tiffg4", "-sOutputFile=" + theirs, page.toString()));
        command(null, saddlebar, "screen", page.toString(), "--tone", "linear", "--quiet", "--progress", "none", "--replace", "--out", ours.toString());
        memory.add(String.format(Locale.ROOT, "the command line with its own heap %.0f MB", childMb));
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
        BufferedImage image = image(pbm);
        Path jdk = folder.resolve("jdk.tif");
        row(what + ": encode and verify, one thread", () -> encode(pbm, ours, settings.onThreads(1)), "the JDK's TIFF writer, T.6, warm in this process",
                () -> timed(() -> writeByJdk(image, jdk)));
        require(BitsHash.of(BitonalTiff.read(ours), Work.UNWATCHED).equals(BitsHash.of(BitonalTiff.read(jdk), Work.UNWATCHED)), "both hold the same bits");
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
        double[] myCpu = new double[rounds];
        double[] otherCpu = new double[rounds];
        for (int warm = 0; warm < WARM_ROUNDS; warm++) {
            ours.run();
        }
        theirs.run();
        for (int round = 0; round < rounds; round++) {
            double cpu = cpuSeconds();
            mine[round] = seconds(ours);
            myCpu[round] = cpuSeconds() - cpu + childSeconds;
            other[round] = seconds(theirs);
            otherCpu[round] = childSeconds;
        }
        for (double[] times : new double[][] {mine, other, myCpu, otherCpu}) {
            Arrays.sort(times);
        }
        int middle = rounds / 2;
        System.out.printf(Locale.ROOT, "| %s | %.2f (%.2f-%.2f) | %.2f | %s | %.2f (%.2f-%.2f) | %.2f | %.0f | %.1f | %.1f |%n", what, mine[middle], mine[0],
                mine[rounds - 1], myCpu[middle], peer, other[middle], other[0], other[rounds - 1], otherCpu[middle], childMb, other[middle] / mine[middle],
                otherCpu[middle] / myCpu[middle]);
    }

    private static double cpuSeconds() {
        return ((com.sun.management.OperatingSystemMXBean) java.lang.management.ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime() / 1e9;
    }

    private double seconds(Task task) throws Exception {
        childSeconds = 0;
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

    /** Work of this process that stands for a peer. */
    private void timed(Task task) throws Exception {
        double cpu = cpuSeconds();
        task.run();
        childSeconds = cpuSeconds() - cpu;
        childMb = 0;
    }

    private static BufferedImage image(Path pbm) throws IOException {
        byte[] white = {-1, 0};
        try (PbmRows bits = new PbmRows(pbm)) {
            BufferedImage image = new BufferedImage(bits.widthPx(), bits.heightPx(), BufferedImage.TYPE_BYTE_BINARY, new IndexColorModel(1, 2, white, white, white));
            byte[] data = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
            int bytes = (bits.widthPx() + 7) / 8;
            long[] row = new long[bits.wordsPerRow()];
            for (int y = 0; bits.read(row, 1) > 0; y++) {
                for (int i = 0; i < bytes; i++) {
                    data[y * bytes + i] = (byte) (row[i / 8] >>> 56 - 8 * (i % 8));
                }
            }
            return image;
        }
    }

    private static void writeByJdk(BufferedImage image, Path file) throws IOException {
        Files.deleteIfExists(file);
        ImageWriter writer = ImageIO.getImageWritersByFormatName("tiff").next();
        ImageWriteParam parameters = writer.getDefaultWriteParam();
        parameters.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        parameters.setCompressionType("CCITT T.6");
        try (ImageOutputStream out = ImageIO.createImageOutputStream(file.toFile())) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), parameters);
        } finally {
            writer.dispose();
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

    /** Squares of 16 x 16 px differ in tone by less than {@code most} on average: both diffuse, and round errors otherwise. */
    private static void sameLocally(Path ours, Path theirs, double most) throws IOException {
        double sum = 0;
        long squares = 0;
        try (BitBands one = new PbmRows(ours); BitBands other = new PbmRows(theirs)) {
            int words = one.wordsPerRow();
            long[] a = new long[16 * words];
            long[] b = new long[16 * words];
            while (one.read(a, 16) == 16 && other.read(b, 16) == 16) {
                for (int square = 0; square < one.widthPx() / 16; square++) {
                    int count = 0;
                    for (int y = 0; y < 16; y++) {
                        int at = y * words + square / 4;
                        count += Long.bitCount(a[at] << 16 * (square % 4) >>> 48) - Long.bitCount(b[at] << 16 * (square % 4) >>> 48);
                    }
                    sum += Math.abs(count) / 256.0;
                    squares++;
                }
            }
        }
        System.err.printf(Locale.ROOT, "squares of 16 px differ by %.4f in tone%n", sum / squares);
        require(sum / squares < most, "squares differ by " + sum / squares);
    }

    private static String sha(Path pbm) throws IOException {
        return BitsHash.of(new PbmRows(pbm), Work.UNWATCHED);
    }

    private static void require(boolean holds, String what) {
        if (!holds) {
            throw new IllegalStateException(what);
        }
    }

    private void command(Path out, String... words) throws Exception {
        Path said = folder.resolve("time");
        List<String> timed = new ArrayList<>(List.of("/usr/bin/time", "-o", said.toString(), "-f", "%U %S %M"));
        timed.addAll(List.of(words));
        ProcessBuilder builder = new ProcessBuilder(timed).redirectError(ProcessBuilder.Redirect.DISCARD);
        builder.redirectOutput(out == null ? ProcessBuilder.Redirect.DISCARD : ProcessBuilder.Redirect.to(new File(out.toString())));
        int exit = builder.start().waitFor();
        require(exit == 0, String.join(" ", words) + " ended with " + exit);
        String[] figures = Files.readString(said).strip().split(" ");
        childSeconds += Double.parseDouble(figures[0]) + Double.parseDouble(figures[1]);
        childMb = Double.parseDouble(figures[2]) / 1024;
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
