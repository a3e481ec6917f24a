package saddlebar.stencil.code;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.zip.InflaterInputStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.work.Work;
import saddlebar.stencil.BitPicture;

/** Fields of every width from 1 to 70 and about 2,000, by chance and drawn, as TIFF, PDF and PNG, through the decoders of other programs. */
class DecodersTest {
    private static final BitonalSettings SETTINGS = BitonalSettings.at(1200).withTitle("f").withDescription("r").onThreads(1).replacing(true);

    @TempDir
    private Path folder;

    private static List<BitPicture> fields() {
        List<BitPicture> fields = new ArrayList<>();
        for (int width = 1; width <= 70; width++) {
            fields.add(width % 3 == 0 ? Fields.noise(width, 23, 0.3, width) : Fields.drawn(width, 23, width));
        }
        for (int width = 1995; width <= 2005; width++) {
            fields.add(width % 2 == 0 ? Fields.noise(width, 40, 0.2, width) : Fields.drawn(width, 40, width));
        }
        return fields;
    }

    /** libtiff: T.6, deflated and plain. */
    @Test
    void libtiff() throws Exception {
        Path ours = folder.resolve("ours.tif");
        Path theirs = folder.resolve("theirs.tif");
        List<String> compressions = new ArrayList<>();
        for (BitPicture field : fields()) {
            compressions.add(BitonalTiff.write(field.bands(), ours, SETTINGS, Work.UNWATCHED).compression());
            PublicTool.run("tiffcp", "-c", "g3:1d", ours, theirs); // decoded by them, coded by them in another way, read by us
            try (TiffBits read = BitonalTiff.read(theirs)) {
                assertEquals("T.4", read.info().compression());
                assertEquals(field, BitPicture.of(read), field.widthPx() + " px wide");
            }
        }
        assertTrue(compressions.containsAll(List.of("T.6", "deflate", "none")), compressions.toString());
    }

    @Test
    void ghostscript() throws Exception {
        List<Object> command = new ArrayList<>(List.of("gs", "-q", "-dBATCH", "-dNOPAUSE", "-dSAFER", "-r1200", "-sDEVICE=pbmraw",
                "-sOutputFile=" + folder.resolve("%d.pbm")));
        List<BitPicture> fields = fields();
        for (int i = 0; i < fields.size(); i++) {
            Path pdf = folder.resolve(i + ".pdf");
            SheetPdf.write(fields.get(i).bands(), pdf, SETTINGS, Work.UNWATCHED);
            command.add(pdf);
        }
        PublicTool.run(command.toArray());
        for (int i = 0; i < fields.size(); i++) {
            assertEquals(fields.get(i), PublicTool.pbm(folder.resolve(i + 1 + ".pbm")), fields.get(i).widthPx() + " px wide");
        }
    }

    @Test
    void poppler() throws Exception {
        for (BitPicture field : fields()) {
            Path pdf = folder.resolve("ours.pdf");
            SheetPdf.write(field.bands(), pdf, SETTINGS, Work.UNWATCHED);
            PublicTool.run("pdftoppm", "-mono", "-r", "1200", "-singlefile", pdf, folder.resolve("drawn"));
            assertEquals(field, PublicTool.pbm(folder.resolve("drawn.pbm")), field.widthPx() + " px wide");
        }
    }

    /** ImageMagick: TIFF and PNG. */
    @Test
    void imageMagick() throws Exception {
        List<BitPicture> fields = fields();
        for (int i = 0; i < fields.size(); i += 4) {
            Path tiff = folder.resolve("ours.tif");
            Path png = folder.resolve("ours.png");
            BitonalTiff.write(fields.get(i).bands(), tiff, SETTINGS, Work.UNWATCHED);
            BitonalPng.write(fields.get(i).bands(), png, SETTINGS, Work.UNWATCHED);
            for (Path file : new Path[] {tiff, png}) {
                PublicTool.run("convert", file, "pbm:" + folder.resolve("theirs.pbm"));
                assertEquals(fields.get(i), PublicTool.pbm(folder.resolve("theirs.pbm")), fields.get(i).widthPx() + " px wide, " + file);
            }
        }
    }

    /** Many threads, the same stream; the JDK's own reader gets back what was written. */
    @Test
    void deflatedInPieces() throws IOException {
        SplittableRandom random = new SplittableRandom(8);
        for (int size : new int[] {0, 1, 1 << 20, (1 << 20) + 1, 5_000_000}) {
            byte[] plain = new byte[size];
            for (int i = 0; i < size; i++) {
                plain[i] = (byte) (random.nextInt(10) < 7 && i > 100_000 ? plain[i - 99_999] : random.nextInt(4) == 0 ? random.nextInt(256) : 0);
            }
            byte[] first = null;
            for (int threads = 1; threads <= 4; threads++) {
                ExecutorService pool = threads == 1 ? null : Executors.newFixedThreadPool(threads);
                ByteArrayOutputStream out = new ByteArrayOutputStream();
                try (ZlibStream stream = new ZlibStream(out, pool, threads)) {
                    for (int at = 0; at < size; at += 70_001) {
                        stream.write(Arrays.copyOfRange(plain, at, Math.min(size, at + 70_001)), Math.min(size - at, 70_001));
                    }
                    assertEquals(stream.finish(), out.size());
                } finally {
                    if (pool != null) {
                        pool.shutdownNow();
                    }
                }
                first = first == null ? out.toByteArray() : first;
                assertArrayEquals(first, out.toByteArray(), threads + " threads");
            }
            assertArrayEquals(plain, new InflaterInputStream(new ByteArrayInputStream(first)).readAllBytes());
            try (InflatedBytes inflated = new InflatedBytes(new ByteArrayInputStream(first))) {
                assertArrayEquals(plain, inflated.readAllBytes());
            }
            if (size > 0) {
                first[first.length - 1] ^= 1; // the check value
                try (InflatedBytes damaged = new InflatedBytes(new ByteArrayInputStream(first))) {
                    assertThrows(InflatedBytes.DamagedBytesException.class, damaged::readAllBytes);
                }
            }
        }
    }

    /** What a stencil of single px costs: the smallest of three, and a word why. */
    @Test
    void theSmallestIsTaken() throws IOException {
        BitPicture scattered = Fields.noise(3000, 2000, 0.1, 5);
        WrittenBits tiff = BitonalTiff.write(scattered.bands(), folder.resolve("s.tif"), SETTINGS, Work.UNWATCHED);
        WrittenBits pdf = SheetPdf.write(scattered.bands(), folder.resolve("s.pdf"), SETTINGS, Work.UNWATCHED);
        long plain = 375L * 2000;
        long t6 = T6Encoder.strip(scattered).length;
        assertEquals("deflate", tiff.compression());
        assertEquals("deflate", pdf.compression());
        assertTrue(tiff.bytes() < Math.min(plain, t6), tiff.bytes() + " of " + plain + " and " + t6);
        assertTrue(tiff.choice().contains("since T.6 "), tiff.choice());
        assertEquals("", BitonalTiff.write(Fields.dots(3000, 2000, 30).bands(), folder.resolve("d.tif"), SETTINGS, Work.UNWATCHED).choice());
        assertTrue(Files.size(folder.resolve("d.tif")) < plain / 4);
    }
}
