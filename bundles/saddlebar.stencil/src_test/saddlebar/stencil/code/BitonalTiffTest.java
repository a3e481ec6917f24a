package saddlebar.stencil.code;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;

import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

import saddlebar.model.file.Hashes;
import saddlebar.model.problem.LockedException;
import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;
import saddlebar.stencil.BitBands;
import saddlebar.stencil.BitPicture;

class BitonalTiffTest {
    private static final BitonalSettings SETTINGS = BitonalSettings.at(1200).withTitle("Heron window, sheet 1 of 3")
            .withDescription("am 40 lpi 22.5 deg round").withSoftware("Saddlebar test").onThreads(2);

    @TempDir
    private Path folder;

    static Stream<BitPicture> pictures() {
        return Stream.of(Fields.dots(1100, 700, 30), Fields.drawn(1313, 300, 1), Fields.noise(517, 200, 0.01, 2), new BitPicture(64, 64),
                Fields.row(0, 1), Fields.noise(1001, 400, 0.5, 3));
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void comesBackInOneStripAndInMany(BitPicture picture) throws IOException {
        for (int rowsPerStrip : new int[] {0, 1, 64, 100}) {
            Path file = folder.resolve("strips" + rowsPerStrip + ".tif");
            WrittenBits written = write(picture, file, SETTINGS.withRowsPerStrip(rowsPerStrip));
            try (TiffBits read = BitonalTiff.read(file)) {
                assertEquals("Heron window, sheet 1 of 3", read.info().title());
                assertEquals("am 40 lpi 22.5 deg round", read.info().description());
                assertEquals(1200, read.info().xDpi());
                assertEquals(1200, read.info().yDpi());
                assertEquals(written.compression(), read.info().compression());
                assertEquals(rowsPerStrip == 0 ? 1 : -Math.floorDiv(-picture.heightPx(), rowsPerStrip), read.info().strips());
                assertEquals(picture, BitPicture.of(read));
            }
            assertEquals(Hashes.sha256(file), written.sha256OfFile());
            assertEquals(Files.size(file), written.bytes());
        }
    }

    /** The hash is that of the picture as raw PBM: made here by another writer. */
    @ParameterizedTest
    @MethodSource("pictures")
    void hashIsThatOfTheRawPbm(BitPicture picture) throws IOException {
        Path pbm = folder.resolve("bits.pbm");
        PublicTool.writePbm(picture, pbm);
        WrittenBits written = write(picture, folder.resolve("bits.tif"), SETTINGS);
        assertEquals(Hashes.sha256(pbm), written.sha256OfBits());
    }

    /** libtiff reads our file to the same bits, and says the fields that TIFF 6.0 asks of a bitonal file. */
    @ParameterizedTest
    @MethodSource("pictures")
    void libtiffReadsOurs(BitPicture picture) throws Exception {
        for (int rowsPerStrip : new int[] {0, 50}) {
            Path ours = folder.resolve("ours" + rowsPerStrip + ".tif");
            WrittenBits written = write(picture, ours, SETTINGS.withRowsPerStrip(rowsPerStrip));
            Path plain = folder.resolve("plain.tif");
            PublicTool.run("tiffcp", "-c", "none", "-r", "1", ours, plain);
            assertEquals(picture, plainByLayout(plain, picture));
            String said = PublicTool.run("tiffinfo", "-D", ours);
            assertFalse(said.contains("Warning") || said.contains("rror"), said);
            List<String> fields = List.of("Image Width: " + picture.widthPx() + " Image Length: " + picture.heightPx(),
                    "Resolution: 1200, 1200 pixels/inch", "Bits/Sample: 1", "Photometric Interpretation: min-is-white", "FillOrder: msb-to-lsb",
                    "Samples/Pixel: 1",
                    Map.of("T.6", "Compression Scheme: CCITT Group 4", "none", "Compression Scheme: None", "deflate", "Deflate\n").get(written.compression()),
                    "DocumentName: Heron window, sheet 1 of 3", "ImageDescription: am 40 lpi 22.5 deg round", "Software: Saddlebar test");
            for (String field : fields) {
                assertTrue(said.contains(field), field + " is not in\n" + said);
            }
            assertFalse(said.contains("Date"), said);
        }
    }

    /** libtiff's own coder gives the same code: one strip of ours is one strip of theirs, byte for byte. */
    @ParameterizedTest
    @MethodSource("pictures")
    void libtiffCodesTheSame(BitPicture picture) throws Exception {
        Path plain = folder.resolve("plain.tif");
        writePlainByHand(picture, plain, false);
        Path theirs = folder.resolve("theirs.tif");
        PublicTool.run("tiffcp", "-c", "g4", "-r", picture.heightPx(), plain, theirs);
        byte[] all = Files.readAllBytes(theirs);
        byte[] strip = T6Encoder.strip(picture);
        int at = new String(all, StandardCharsets.ISO_8859_1).indexOf(new String(strip, StandardCharsets.ISO_8859_1));
        assertTrue(at >= 8, "their file does not hold our code");
        assertEquals(picture, read(theirs));
    }

    /** Files as others write them: many strips, both byte orders, lowest bit first, 0 = black, T.4, modified Huffman. */
    @ParameterizedTest
    @ValueSource(strings = {"-c g4 -r 7", "-B -c g4", "-L -c g4", "-c g4 -f lsb2msb", "-c g3:1d:fill", "-c g3:1d", "-c none -r 3", "-B -c none -r 3",
            "-c none -f lsb2msb"})
    void readsTheirs(String options) throws Exception {
        BitPicture picture = Fields.drawn(1313, 300, 1);
        for (boolean oneIsWhite : new boolean[] {false, true}) {
            Path plain = folder.resolve("plain.tif");
            writePlainByHand(picture, plain, oneIsWhite);
            Path theirs = folder.resolve("theirs.tif");
            PublicTool.run(Stream.of(Stream.of("tiffcp"), Stream.of(options.split(" ")), Stream.of(plain, theirs)).flatMap(s -> s).toArray());
            assertEquals(picture, read(theirs), options);
        }
    }

    /** Ghostscript's fax device draws a page; we read its T.6 to the bits that its PBM device draws. */
    @Test
    void readsGhostscript() throws Exception {
        Path page = folder.resolve("page.ps");
        Files.writeString(page, "%!\n<< /PageSize [200 150] >> setpagedevice 20 20 moveto 150 30 lineto 90 120 lineto closepath fill\n"
                + "5 setlinewidth 100 80 60 0 300 arc stroke /Times-Roman 30 selectfont 10 110 moveto (aQ) show showpage\n");
        PublicTool.run("gs", "-q", "-dBATCH", "-dNOPAUSE", "-r600", "-sDEVICE=tiffg4", "-sOutputFile=" + folder.resolve("gs.tif"), page);
        PublicTool.run("gs", "-q", "-dBATCH", "-dNOPAUSE", "-r600", "-sDEVICE=pbmraw", "-sOutputFile=" + folder.resolve("gs.pbm"), page);
        BitPicture drawn = PublicTool.pbm(folder.resolve("gs.pbm"));
        assertTrue(drawn.count() > 100_000);
        try (TiffBits read = BitonalTiff.read(folder.resolve("gs.tif"))) {
            assertEquals("T.6", read.info().compression());
            assertEquals(600, read.info().xDpi(), 0.01);
            assertEquals(drawn, BitPicture.of(read));
        }
    }

    /** The JDK's reader sees our bits, and we see those of its writer. */
    @ParameterizedTest
    @MethodSource("pictures")
    void theJdkReadsOursAndWeReadItsT6(BitPicture picture) throws IOException {
        Path ours = folder.resolve("ours.tif");
        write(picture, ours, SETTINGS.withRowsPerStrip(37));
        BufferedImage seen = ImageIO.read(ours.toFile());
        BufferedImage image = new BufferedImage(picture.widthPx(), picture.heightPx(), BufferedImage.TYPE_BYTE_BINARY,
                new IndexColorModel(1, 2, new byte[] {-1, 0}, new byte[] {-1, 0}, new byte[] {-1, 0}));
        for (int y = 0; y < picture.heightPx(); y++) {
            for (int x = 0; x < picture.widthPx(); x++) {
                assertEquals(picture.get(x, y) ? 0xFF000000 : 0xFFFFFFFF, seen.getRGB(x, y));
                image.getRaster().setSample(x, y, 0, picture.get(x, y) ? 1 : 0);
            }
        }
        ImageWriter writer = ImageIO.getImageWritersByFormatName("tiff").next();
        ImageWriteParam parameters = writer.getDefaultWriteParam();
        parameters.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        parameters.setCompressionType("CCITT T.6");
        Path theirs = folder.resolve("theirs.tif");
        try (ImageOutputStream out = ImageIO.createImageOutputStream(theirs.toFile())) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), parameters);
        } finally {
            writer.dispose();
        }
        assertEquals(picture, read(theirs));
    }

    @Test
    void bytesDoNotDependOnThreads() throws IOException {
        BitPicture picture = Fields.dots(4000, 3000, 30);
        for (int rowsPerStrip : new int[] {0, 128}) {
            Path one = folder.resolve("one.tif");
            BitonalSettings settings = SETTINGS.withRowsPerStrip(rowsPerStrip).replacing(true);
            write(picture, one, settings.onThreads(1));
            for (int threads = 2; threads <= 5; threads++) {
                Path many = folder.resolve("many.tif");
                write(picture, many, settings.onThreads(threads));
                assertArrayEquals(Files.readAllBytes(one), Files.readAllBytes(many), threads + " threads");
            }
        }
    }

    /** Scattered px would take more than twice the plain bits: the file holds plain bits and says so, on one thread or many. */
    @Test
    void takesPlainBitsWhereT6IsLarger() throws Exception {
        BitPicture noise = Fields.noise(1500, 1200, 0.5, 4);
        assertTrue(T6Encoder.strip(noise).length > 2 * 188 * 1200);
        for (int rowsPerStrip : new int[] {0, 300}) {
            byte[] first = null;
            for (int threads = 1; threads <= 3; threads++) {
                Path file = folder.resolve("noise" + rowsPerStrip + "-" + threads + ".tif");
                WrittenBits written = write(noise, file, SETTINGS.withRowsPerStrip(rowsPerStrip).onThreads(threads));
                assertEquals("none", written.compression());
                assertEquals("plain bits (0.2 MB), since T.6 makes these bits longer and deflate no shorter", written.choice());
                assertTrue(written.bytes() < 188 * 1200 + 1000, written.bytes() + " bytes");
                assertEquals(noise, read(file));
                byte[] bytes = Files.readAllBytes(file);
                first = first == null ? bytes : first;
                assertArrayEquals(first, bytes);
            }
        }
        PublicTool.run("tiffcp", "-c", "g4", folder.resolve("noise300-1.tif"), folder.resolve("back.tif"));
        assertEquals(noise, read(folder.resolve("back.tif")));
    }

    /** A picture whose lower half only is noise turns plain on the way. */
    @Test
    void turnsPlainInTheMidst() throws IOException {
        BitPicture picture = Fields.noise(2000, 2000, 0.5, 5);
        for (int i = 0; i < 700 * picture.wordsPerRow(); i++) {
            picture.words()[i] = 0;
        }
        for (int rowsPerStrip : new int[] {0, 250}) {
            Path file = folder.resolve("half" + rowsPerStrip + ".tif");
            WrittenBits written = write(picture, file, SETTINGS.withRowsPerStrip(rowsPerStrip));
            assertEquals("deflate", written.compression()); // of what turned plain the white part is small again
            assertTrue(written.bytes() < 0.7 * 250 * 2000, written.bytes() + " bytes");
            assertTrue(written.choice().startsWith("deflate (0.3 MB), since T.6 makes these bits longer and plain bits take 0.5 MB"), written.choice());
            assertEquals(picture, read(file));
        }
    }

    @Test
    void tellsOneUnitARow() throws IOException {
        AtomicLong told = new AtomicLong();
        Work counting = new Work() {
            @Override
            public void advance(long units) {
                told.addAndGet(units);
            }

            @Override
            public void checkpoint() {
                // not stopped
            }
        };
        write(Fields.dots(3000, 2000, 30), folder.resolve("a.tif"), SETTINGS, counting);
        assertEquals(2000, told.get());
        write(Fields.noise(1500, 2000, 0.5, 1), folder.resolve("b.tif"), SETTINGS, counting);
        assertEquals(4000, told.get());
    }

    @Test
    void leavesNothingWhenStopped() throws IOException {
        AtomicLong asked = new AtomicLong();
        Work stopping = new Work() {
            @Override
            public void advance(long units) {
                // not shown
            }

            @Override
            public void checkpoint() {
                if (asked.incrementAndGet() == 3) {
                    throw new CancellationException("stopped");
                }
            }
        };
        assertThrows(CancellationException.class,
                () -> write(Fields.dots(3000, 3000, 30), folder.resolve("a.tif"), SETTINGS, stopping));
        assertEmpty();
    }

    @Test
    void leavesNothingWhenTheBitsFail() {
        IOException e = assertThrows(IOException.class, () -> {
            try (BitBands failing = new Failing()) {
                BitonalTiff.write(failing, folder.resolve("a.tif"), SETTINGS, Work.UNWATCHED);
            }
        });
        assertEquals("artwork gone", e.getMessage());
        assertEmpty();
    }

    @Test
    void neverReplacesWithoutLeave() throws IOException {
        Path file = folder.resolve("mine.tif");
        Files.writeString(file, "mine");
        LockedException e = assertThrows(LockedException.class,
                () -> write(Fields.row(3, 4), file, SETTINGS));
        assertTrue(e.getMessage().contains("mine.tif exists already"), e.getMessage());
        assertEquals("mine", Files.readString(file));
        write(Fields.row(3, 4), file, SETTINGS.replacing(true));
        assertEquals(Fields.row(3, 4), read(file));
        assertThrows(LockedException.class, () -> write(Fields.row(3, 4), folder, SETTINGS.replacing(true)));
        assertThrows(LockedException.class,
                () -> write(Fields.row(3, 4), file.resolve("below-a-file.tif"), SETTINGS));
    }

    @Test
    void refusesWhatIsNoBitonalTiff() throws IOException {
        assertTrue(refusal(new byte[0]).contains("cut short"));
        assertTrue(refusal("GIF89a..".getBytes(StandardCharsets.US_ASCII)).contains("no TIFF file"));
        BufferedImage gray = new BufferedImage(30, 20, BufferedImage.TYPE_BYTE_GRAY);
        Path file = folder.resolve("gray.tif");
        ImageIO.write(gray, "tiff", file.toFile());
        assertTrue(refusal(Files.readAllBytes(file)).contains("not 1 bit a px"));
        Path good = folder.resolve("good.tif");
        write(Fields.drawn(800, 200, 7), good, SETTINGS.withRowsPerStrip(20));
        byte[] bytes = Files.readAllBytes(good);
        String cut = refusal(Arrays.copyOf(bytes, bytes.length - 100));
        assertTrue(cut.startsWith("bad.tif: the file is cut short"), cut);
    }

    /** Each byte of a small file damaged in turn: read or refused with the file's name, never another failure. */
    @Test
    void damageIsReadOrRefused() throws IOException {
        Path good = folder.resolve("good.tif");
        write(Fields.drawn(200, 30, 7), good, SETTINGS.withRowsPerStrip(10));
        byte[] bytes = Files.readAllBytes(good);
        int refused = 0;
        Path bad = folder.resolve("bad.tif");
        Files.write(bad, bytes);
        try (RandomAccessFile file = new RandomAccessFile(bad.toFile(), "rw")) {
            for (int at = 0; at < bytes.length; at++) {
                file.seek(at);
                file.write(bytes[at] ^ 0xFF);
                try (TiffBits read = BitonalTiff.read(bad)) {
                    long[] row = new long[read.wordsPerRow()];
                    for (int y = 0; y < Math.min(1000, read.heightPx()); y++) {
                        read.read(row, 1);
                    }
                } catch (Refusal e) {
                    assertTrue(e.getMessage().startsWith("bad.tif: "), e.getMessage());
                    refused++;
                }
                file.seek(at);
                file.write(bytes[at]);
            }
        }
        assertTrue(refused > 50, refused + " of " + bytes.length);
    }

    private String refusal(byte[] bytes) throws IOException {
        Path file = folder.resolve("bad.tif");
        Files.write(file, bytes);
        return assertThrows(Refusal.class, () -> read(file)).getMessage();
    }

    private void assertEmpty() {
        assertArrayEquals(new String[0], folder.toFile().list());
    }

    /** An uncompressed TIFF in one strip after its header, put together byte by byte without our writer. */
    private static void writePlainByHand(BitPicture picture, Path file, boolean oneIsWhite) throws IOException {
        int bytesPerRow = (picture.widthPx() + 7) / 8;
        int data = bytesPerRow * picture.heightPx();
        int at = 8 + data + (data & 1);
        ByteBuffer out = ByteBuffer.allocate(at + 2 + 9 * 12 + 4);
        out.putShort((short) 0x4D4D).putShort((short) 42).putInt(at);
        for (int y = 0; y < picture.heightPx(); y++) {
            for (int i = 0; i < bytesPerRow; i++) {
                int px = 0;
                for (int x = 8 * i; x < 8 * i + 8; x++) {
                    px = px << 1 | (x < picture.widthPx() && picture.get(x, y) ? 1 : 0);
                }
                out.put((byte) (oneIsWhite ? ~px : px));
            }
        }
        out.position(at);
        int[][] fields = {{256, picture.widthPx()}, {257, picture.heightPx()}, {258, 1}, {259, 1}, {262, oneIsWhite ? 1 : 0}, {273, 8}, {277, 1},
                {278, picture.heightPx()}, {279, data}};
        out.putShort((short) fields.length);
        for (int[] field : fields) {
            out.putShort((short) field[0]).putShort((short) 4).putInt(1).putInt(field[1]);
        }
        Files.write(file, out.putInt(0).array());
    }

    /** Plain rows of a file that tiffcp wrote with one row a strip: rows lie one after the other from byte 8. */
    private static BitPicture plainByLayout(Path file, BitPicture like) throws IOException {
        byte[] all = Files.readAllBytes(file);
        int bytesPerRow = (like.widthPx() + 7) / 8;
        BitPicture picture = new BitPicture(like.widthPx(), like.heightPx());
        for (int y = 0; y < like.heightPx(); y++) {
            for (int x = 0; x < like.widthPx(); x++) {
                picture.set(x, y, (all[8 + y * bytesPerRow + x / 8] >> 7 - x % 8 & 1) != 0);
            }
        }
        return picture;
    }

    private static WrittenBits write(BitPicture picture, Path file, BitonalSettings settings) throws IOException {
        return write(picture, file, settings, Work.UNWATCHED);
    }

    private static WrittenBits write(BitPicture picture, Path file, BitonalSettings settings, Work work) throws IOException {
        try (BitBands bits = picture.bands()) {
            return BitonalTiff.write(bits, file, settings, work);
        }
    }

    private static BitPicture read(Path file) throws IOException {
        try (TiffBits bits = BitonalTiff.read(file)) {
            return BitPicture.of(bits);
        }
    }

    /** Breaks in its sixth band. */
    private static final class Failing implements BitBands {
        private int bands;

        @Override
        public int widthPx() {
            return 100;
        }

        @Override
        public int heightPx() {
            return 100;
        }

        @Override
        public int read(long[] target, int maxRows) throws IOException {
            if (bands++ == 5) {
                throw new IOException("artwork gone");
            }
            return 1;
        }

        @Override
        public void close() {
            // nothing open
        }
    }
}
