package saddlebar.stencil.code;

import java.io.ByteArrayInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.CancellationException;

import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;
import saddlebar.stencil.BitBands;
import saddlebar.stencil.BitPicture;

/**
 * Any bytes through the readers of coded bits: they are read or refused, and nothing else ever comes out. {@code releng/fuzz} feeds this by coverage; the
 * bytes that it found to matter are kept and read again by every build ({@link FuzzCorpusTest}). The first byte says which reader, the next two the width.
 */
public final class FuzzedReaders {
    private static final int READERS = 6;
    private static final int MOST_ROWS = 200;
    private static final int MOST_CHECKPOINTS = 50;

    private static final class Scratch {
        private static final Path FILE = create();

        private static Path create() {
            try {
                Path file = Files.createTempFile("fuzzed", ".bytes");
                file.toFile().deleteOnExit();
                return file;
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    private FuzzedReaders() {
    }

    /** Called by the fuzzer, by this name. */
    public static void fuzzerTestOneInput(byte[] bytes) throws IOException {
        if (bytes.length < 3) {
            return;
        }
        byte[] rest = Arrays.copyOfRange(bytes, 3, bytes.length);
        int width = 1 + ((bytes[1] & 0xFF) << 8 | bytes[2] & 0xFF) % 5000;
        switch ((bytes[0] & 0xFF) % READERS) {
            case 0 -> t6(rest, width);
            case 1 -> t4(rest, width);
            case 2 -> file(rest, () -> BitonalTiff.read(Scratch.FILE));
            case 3 -> file(rest, () -> new PngBits(Scratch.FILE, "fuzzed"));
            case 4 -> described(rest);
            default -> inflated(rest, width);
        }
    }

    private interface Opening {
        BitBands open() throws IOException;
    }

    /** What was read once is coded and read again to the same. */
    private static void t6(byte[] code, int width) throws IOException {
        BitPicture read = new BitPicture(width, MOST_ROWS);
        int rows = 0;
        try {
            T6Decoder decoder = new T6Decoder(new ByteArrayInputStream(code), width);
            while (rows < MOST_ROWS && decoder.next(read.words(), rows * read.wordsPerRow())) {
                rows++;
            }
        } catch (DamagedCodeException e) {
            if (e.row() != rows) {
                throw new IllegalStateException("damage told in row " + e.row() + ", not " + rows, e);
            }
        }
        if (rows == 0) {
            return;
        }
        BitPicture whole = new BitPicture(width, rows); // a row that breaks off leaves nothing that counts
        System.arraycopy(read.words(), 0, whole.words(), 0, whole.words().length);
        if (!T6Decoder.strip(new ByteArrayInputStream(T6Encoder.strip(whole)), width, rows).equals(whole)) {
            throw new IllegalStateException("what was read is coded otherwise");
        }
    }

    private static void t4(byte[] code, int width) throws IOException {
        for (boolean byteRows : new boolean[] {false, true}) {
            T4Decoder decoder = new T4Decoder(new ByteArrayInputStream(code), width, byteRows);
            long[] row = new long[(width + 63) >> 6];
            try {
                for (int y = 0; y < MOST_ROWS && decoder.next(row, 0); y++) {
                    noBitsPast(row, width);
                }
            } catch (DamagedCodeException e) {
                e.row();
            }
        }
    }

    private static void file(byte[] bytes, Opening opening) throws IOException {
        Files.write(Scratch.FILE, bytes);
        try (BitBands bits = opening.open()) {
            long[] row = new long[bits.wordsPerRow()];
            for (int y = 0; y < MOST_ROWS && bits.read(row, 1) > 0; y++) {
                noBitsPast(row, bits.widthPx());
            }
        } catch (Refusal told) {
            sentence(told);
        }
    }

    /** Whatever it is: PDF, PNG, TIFF or none. */
    private static void described(byte[] bytes) throws IOException {
        Files.write(Scratch.FILE, bytes);
        int[] asked = new int[1];
        try {
            StencilFile.read(Scratch.FILE, new Work() {
                @Override
                public void advance(long units) {
                    // not shown
                }

                @Override
                public void checkpoint() {
                    if (++asked[0] > MOST_CHECKPOINTS) {
                        throw new CancellationException("enough");
                    }
                }
            }).recipeIntact();
        } catch (Refusal told) {
            sentence(told);
        } catch (CancellationException enough) {
            asked[0] = 0;
        }
    }

    private static void inflated(byte[] bytes, int width) throws IOException {
        try (BitBands bits = new StreamBits(new ByteArrayInputStream(bytes), width, MOST_ROWS, BitPacking.DEFLATE)) {
            long[] row = new long[bits.wordsPerRow()];
            while (bits.read(row, 1) > 0) {
                noBitsPast(row, width);
            }
        } catch (InflatedBytes.DamagedBytesException | EOFException damaged) {
            damaged.getMessage();
        }
    }

    private static void noBitsPast(long[] row, int width) {
        if ((width & 63) != 0 && (row[row.length - 1] & -1L >>> (width & 63)) != 0) {
            throw new IllegalStateException("bits past the width of " + width);
        }
    }

    private static void sentence(Refusal told) {
        if (told.getMessage() == null || told.getMessage().length() < 10) {
            throw new IllegalStateException("refused without a sentence", told);
        }
    }

    /** Writes seeds into a folder: what our writers make, and codes. */
    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        BitonalSettings settings = BitonalSettings.at(600).withTitle("t").withDescription("am 40 lpi").onThreads(1).replacing(true);
        BitPicture[] pictures = {Fields.drawn(61, 17, 3), Fields.dots(130, 20, 9), Fields.noise(77, 9, 0.5, 2), Fields.noise(300, 20, 0.1, 2)};
        Path file = Files.createTempFile("seed", ".bytes");
        for (int i = 0; i < pictures.length; i++) {
            BitPicture picture = pictures[i];
            seed(folder, "t6-" + i, 0, picture.widthPx(), T6Encoder.strip(picture));
            BitonalTiff.write(picture.bands(), file, settings.withRowsPerStrip(i == 1 ? 7 : 0), Work.UNWATCHED);
            seed(folder, "tiff-" + i, 2, 0, Files.readAllBytes(file));
            seed(folder, "described-tiff-" + i, 4, 0, Files.readAllBytes(file));
            try (OutputFile out = OutputFile.open(file, true); CodedBits coded = CodedBits.of(picture.bands(), file, settings, Work.UNWATCHED)) {
                BitonalTiff.write(coded, out, file, settings, 10, Work.UNWATCHED);
            }
            seed(folder, "big-" + i, 2, 0, Files.readAllBytes(file));
            BitonalPng.write(picture.bands(), file, settings, Work.UNWATCHED);
            seed(folder, "png-" + i, 3, 0, Files.readAllBytes(file));
            SheetPdf.write(picture.bands(), file, settings, Work.UNWATCHED);
            seed(folder, "pdf-" + i, 4, 0, Files.readAllBytes(file));
        }
        // of width 8: ends of line, a row of runs 3 2 3, ends of line (ITU-T T.4)
        seed(folder, "t4", 1, 8, new byte[] {0x00, 0x18, (byte) 0x78, 0x00, 0x10, 0x01, 0x00, 0x10, 0x01});
        seed(folder, "zlib", 5, 9, new byte[] {0x78, 0x01, 0x63, 0x60, 0x60, 0x60, 0x00, 0x00, 0x00, 0x04, 0x00, 0x01});
        Files.delete(file);
    }

    private static void seed(Path folder, String name, int reader, int width, byte[] bytes) throws IOException {
        byte[] seed = new byte[bytes.length + 3];
        seed[0] = (byte) reader;
        seed[1] = (byte) (width - 1 >> 8);
        seed[2] = (byte) (width - 1);
        System.arraycopy(bytes, 0, seed, 3, bytes.length);
        Files.write(folder.resolve(name), seed);
    }
}
