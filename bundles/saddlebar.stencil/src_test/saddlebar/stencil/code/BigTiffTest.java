package saddlebar.stencil.code;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;
import saddlebar.stencil.BitBands;
import saddlebar.stencil.BitPicture;

/** Files beyond 4 GiB: BigTIFF, by libtiff's specification of 2007; libtiff is asked too. */
class BigTiffTest {
    private static final BitonalSettings SETTINGS = BitonalSettings.at(1200).withTitle("A banner").withDescription("am 40 lpi").onThreads(2);

    @TempDir
    private Path folder;

    /** The same directory as a huge file has, about a small picture: where a file may have so many bytes at most. */
    @Test
    void smallBigTiffsAreReadByAll() throws Exception {
        for (BitPicture picture : new BitPicture[] {Fields.dots(1100, 700, 30), Fields.drawn(1313, 300, 1), Fields.noise(1001, 400, 0.5, 3)}) {
            for (int rowsPerStrip : new int[] {0, 64}) {
                Path file = folder.resolve("big.tif");
                BitonalSettings settings = SETTINGS.withRowsPerStrip(rowsPerStrip).replacing(true);
                try (BitBands bits = picture.bands();
                        OutputFile out = OutputFile.open(file, true);
                        CodedBits coded = CodedBits.of(bits, file, settings, Work.UNWATCHED)) {
                    BitonalTiff.write(coded, out, file, settings, 1000, Work.UNWATCHED);
                }
                assertEquals(43, Files.readAllBytes(file)[2]);
                try (TiffBits read = BitonalTiff.read(file)) {
                    assertEquals(1200, read.info().xDpi());
                    assertEquals("A banner", read.info().title());
                    assertEquals(picture, BitPicture.of(read));
                }
                String said = PublicTool.run("tiffinfo", "-D", file);
                assertFalse(said.contains("Warning") || said.contains("rror"), said);
                assertTrue(said.contains("Resolution: 1200, 1200 pixels/inch") && said.contains("DocumentName: A banner"), said);
                Path theirs = folder.resolve("theirs.tif");
                PublicTool.run("tiffcp", "-c", "g4", file, theirs);
                assertEquals(picture, read(theirs));
                PublicTool.run("tiffcp", "-8", "-B", "-c", "g4", file, theirs); // theirs, highest byte first
                assertEquals(picture, read(theirs));
            }
        }
    }

    /** Strips and directory really beyond 4 GiB, in a file of holes: 36,000 rows of 2^20 px, all white but the first and the last. */
    @Test
    void readsBeyondFourGibibytes() throws Exception {
        int rows = 36_000;
        int bytesPerRow = 1 << 17;
        int rowsPerStrip = 4_000;
        Path file = folder.resolve("huge.tif");
        TiffFields fields = new TiffFields();
        fields.longs(TiffTag.IMAGE_WIDTH, 1 << 20);
        fields.longs(TiffTag.IMAGE_LENGTH, rows);
        fields.shorts(TiffTag.BITS_PER_SAMPLE, 1);
        fields.shorts(TiffTag.COMPRESSION, TiffTag.COMPRESSION_NONE);
        fields.shorts(TiffTag.PHOTOMETRIC, 0);
        fields.shorts(TiffTag.SAMPLES_PER_PIXEL, 1);
        fields.longs(TiffTag.ROWS_PER_STRIP, rowsPerStrip);
        long[] offsets = new long[rows / rowsPerStrip];
        long[] counts = new long[offsets.length];
        for (int i = 0; i < offsets.length; i++) {
            offsets[i] = 16 + (long) i * rowsPerStrip * bytesPerRow;
            counts[i] = (long) rowsPerStrip * bytesPerRow;
        }
        fields.offsets(TiffTag.STRIP_OFFSETS, true, offsets);
        fields.offsets(TiffTag.STRIP_BYTE_COUNTS, true, counts);
        long directoryAt = 16 + (long) rows * bytesPerRow;
        try (RandomAccessFile out = new RandomAccessFile(file.toFile(), "rw")) {
            out.write(
                    ByteBuffer.allocate(16).order(ByteOrder.LITTLE_ENDIAN).putShort((short) 0x4949).putShort((short) 43).putShort((short) 8).putShort((short) 0)
                            .putLong(directoryAt).array());
            out.write(0xA5);
            out.seek(directoryAt - 1);
            out.write(0x5A);
            out.write(fields.bytes(directoryAt, true));
        }
        assertTrue(Files.size(file) > 1L << 32);
        try (TiffBits read = BitonalTiff.read(file)) {
            long[] band = new long[read.wordsPerRow()];
            read.read(band, 1);
            assertEquals(0xA5L << 56, band[0]);
            long others = 0;
            for (int y = 1; y < rows; y++) {
                assertEquals(1, read.read(band, 1));
                if (y < rows - 1 && (y & 511) == 0) {
                    others += Arrays.stream(band).filter(word -> word != 0).count();
                }
            }
            assertEquals(0, others);
            assertEquals(0x5A, band[band.length - 1]);
            assertEquals(0, read.read(band, 1));
        }
        String said = PublicTool.run("tiffdump", file);
        assertTrue(said.contains("BigTIFF") && said.contains("Directory 0: offset " + directoryAt), said);
        assertTrue(PublicTool.run("tiffinfo", file).contains("Image Width: 1048576 Image Length: 36000"));
    }

    /** A real one, through the writer: five gibibytes of chance take minutes. */
    @Test
    void writesBeyondFourGibibytes() throws Exception {
        assumeTrue(Boolean.getBoolean("saddlebar.slow"), "minutes: run with -Dsaddlebar.slow=true");
        Path file = folder.resolve("written.tif");
        WrittenBits written = BitonalTiff.write(new Chance(1 << 18, 140_000), file, SETTINGS, Work.UNWATCHED);
        assertEquals("none", written.compression());
        assertTrue(written.bytes() > 1L << 32);
        assertEquals(BitsHash.of(new Chance(1 << 18, 140_000), Work.UNWATCHED), written.sha256OfBits());
        assertEquals(written.sha256OfBits(), BitsHash.of(BitonalTiff.read(file), Work.UNWATCHED));
        assertTrue(PublicTool.run("tiffdump", file).contains("BigTIFF"));
        String said = PublicTool.run("tiffinfo", "-D", file); // reads and checks all of it
        assertFalse(said.contains("Warning") || said.contains("rror"), said);
    }

    @Test
    void damagedDirectoriesAreRefused() throws IOException {
        Path file = folder.resolve("bad.tif");
        for (long at : new long[] {-1, Long.MIN_VALUE, Long.MAX_VALUE, 1L << 40, 15}) {
            Files.write(file, ByteBuffer.allocate(16).order(ByteOrder.LITTLE_ENDIAN).putShort((short) 0x4949).putShort((short) 43).putShort((short) 8)
                    .putShort((short) 0).putLong(at).array());
            assertTrue(assertThrows(Refusal.class, () -> read(file)).getMessage().startsWith("bad.tif: the file is cut short or damaged"));
        }
    }

    private static BitPicture read(Path file) throws IOException {
        try (TiffBits bits = BitonalTiff.read(file)) {
            return BitPicture.of(bits);
        }
    }

    /** Bits by chance that are not kept. */
    private static final class Chance implements BitBands {
        private final int widthPx;
        private final int heightPx;
        private final SplittableRandom random = new SplittableRandom(9);
        private int row;

        Chance(int widthPx, int heightPx) {
            this.widthPx = widthPx;
            this.heightPx = heightPx;
        }

        @Override
        public int widthPx() {
            return widthPx;
        }

        @Override
        public int heightPx() {
            return heightPx;
        }

        @Override
        public int read(long[] target, int maxRows) {
            int rows = Math.min(maxRows, heightPx - row);
            for (int i = 0; i < rows * wordsPerRow(); i++) {
                target[i] = random.nextLong();
            }
            row += rows;
            return rows;
        }

        @Override
        public void close() {
            // nothing is open
        }
    }
}
