package saddlebar.stencil.code;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

import saddlebar.model.problem.Refusal;
import saddlebar.stencil.BitBands;

/**
 * The rows of a bitonal TIFF 6.0 or BigTIFF file, 1 = black, read strip by strip: plain, deflated, by runs, T.4 in one dimension or T.6; both byte orders, both
 * orders of bits, both meanings of 0. Damage is told when its row is read.
 */
public final class TiffBits implements BitBands {
    private static final int MOST_PX = 1 << 20;

    /** Gives the rows of one strip. */
    private interface Rows {
        boolean next(long[] target, int firstWord) throws IOException;
    }

    private final String name;
    private final FileChannel file;
    private final TiffInfo info;
    private final int compression;
    private final boolean oneIsBlack;
    private final boolean lowestBitFirst;
    private final long[] offsets;
    private final long[] byteCounts;
    private final int rowsPerStrip;
    private int row;
    private Rows strip;
    private InputStream stripBytes;

    TiffBits(Path path, String name) throws IOException {
        this.name = name;
        this.file = FileChannel.open(path, StandardOpenOption.READ);
        try {
            TiffDirectory directory = new TiffDirectory(file, name);
            int width = size(directory, TiffTag.IMAGE_WIDTH);
            int height = size(directory, TiffTag.IMAGE_LENGTH);
            require(directory, TiffTag.BITS_PER_SAMPLE, 1, "it has gray or colour, not 1 bit a px");
            require(directory, TiffTag.SAMPLES_PER_PIXEL, 1, "it has colour, not 1 bit a px");
            require(directory, TiffTag.ORIENTATION, 1, "its rows do not run from the top left");
            this.compression = (int) directory.number(TiffTag.COMPRESSION, TiffTag.COMPRESSION_NONE);
            String compressionName = nameOf(directory);
            long photometric = directory.number(TiffTag.PHOTOMETRIC, 0);
            if (photometric > 1 || directory.has(TiffTag.TILE_WIDTH)) {
                throw directory.refused("it is tiled or no black and white picture", "save it as a bitonal TIFF in strips");
            }
            this.oneIsBlack = photometric == 0;
            this.lowestBitFirst = directory.number(TiffTag.FILL_ORDER, 1) == 2;
            this.rowsPerStrip = (int) Math.min(height, Math.max(1, directory.number(TiffTag.ROWS_PER_STRIP, height)));
            this.offsets = directory.numbers(TiffTag.STRIP_OFFSETS);
            this.byteCounts = directory.numbers(TiffTag.STRIP_BYTE_COUNTS);
            int strips = (height + rowsPerStrip - 1) / rowsPerStrip;
            if (offsets.length < strips || byteCounts.length < strips) {
                throw directory.refused("its directory has fewer strips than its " + height + " rows need", "save it again");
            }
            for (int i = 0; i < strips; i++) {
                if (offsets[i] < 0 || byteCounts[i] < 0 || offsets[i] > file.size() - byteCounts[i]) {
                    throw directory.refused("the file is cut short: strip " + i + " lies beyond its end", "copy or save it again");
                }
            }
            double perInch = directory.number(TiffTag.RESOLUTION_UNIT, 2) == 3 ? 2.54 : 1;
            this.info = new TiffInfo(width, height, perInch * directory.fraction(TiffTag.X_RESOLUTION),
                    perInch * directory.fraction(TiffTag.Y_RESOLUTION), directory.text(TiffTag.DOCUMENT_NAME),
                    directory.text(TiffTag.IMAGE_DESCRIPTION), directory.text(TiffTag.SOFTWARE), compressionName, strips,
                    directory.text(TiffTag.XMP));
        } catch (IOException | RuntimeException e) {
            file.close();
            throw e;
        }
    }

    private static int size(TiffDirectory directory, int tag) throws IOException {
        long px = directory.number(tag, 0);
        if (px < 1 || px > MOST_PX) {
            throw directory.refused("a side of " + px + " px cannot be read", "give a picture of 1 to " + MOST_PX + " px a side");
        }
        return (int) px;
    }

    private static void require(TiffDirectory directory, int tag, int wanted, String otherwise) throws IOException {
        if (directory.number(tag, 1) != wanted) {
            throw directory.refused(otherwise, "save it as a bitonal TIFF");
        }
    }

    private static String nameOf(TiffDirectory directory) throws IOException {
        int compression = (int) directory.number(TiffTag.COMPRESSION, TiffTag.COMPRESSION_NONE);
        return switch (compression) {
            case TiffTag.COMPRESSION_NONE -> "none";
            case TiffTag.COMPRESSION_RUNS -> "runs";
            case TiffTag.COMPRESSION_T4 -> {
                if ((directory.number(TiffTag.T4_OPTIONS, 0) & 1) != 0) {
                    throw directory.refused("its compression is two-dimensional T.4, which is not read", "save it with T.6 or no compression");
                }
                yield "T.4";
            }
            case TiffTag.COMPRESSION_T6 -> "T.6";
            case TiffTag.COMPRESSION_DEFLATE, TiffTag.COMPRESSION_DEFLATE_BEFORE -> {
                if (directory.number(TiffTag.PREDICTOR, 1) != 1) {
                    throw directory.refused("its px are kept as differences, which no bitonal file has", "save it with T.6 or no compression");
                }
                yield "deflate";
            }
            default -> throw directory.refused("its compression " + compression + " is not read", "save it with T.6 or no compression");
        };
    }

    public TiffInfo info() {
        return info;
    }

    @Override
    public int widthPx() {
        return info.widthPx();
    }

    @Override
    public int heightPx() {
        return info.heightPx();
    }

    @Override
    public int read(long[] target, int maxRows) throws IOException {
        int rows = Math.min(maxRows, heightPx() - row);
        for (int i = 0; i < rows; i++) {
            try {
                next(target, i * wordsPerRow());
            } catch (DamagedCodeException e) {
                int stripRow = row - row % rowsPerStrip;
                throw new Refusal(name, "damaged in strip " + row / rowsPerStrip + ", which begins at row " + stripRow + ", " + e.getMessage(),
                        "copy or make the file again", e);
            }
            row++;
        }
        return rows;
    }

    private void next(long[] target, int firstWord) throws IOException {
        int stripRow = row % rowsPerStrip;
        if (stripRow == 0) {
            openStrip(row / rowsPerStrip);
        }
        boolean there;
        try {
            there = strip.next(target, firstWord);
        } catch (InflatedBytes.DamagedBytesException e) {
            throw new DamagedCodeException(stripRow, e.getMessage());
        }
        if (!there) {
            throw new DamagedCodeException(stripRow, "the code ends before the last row");
        }
        if (!oneIsBlack) {
            invert(target, firstWord);
        }
    }

    private void openStrip(int index) throws IOException {
        if (stripBytes != null) {
            stripBytes.close();
        }
        stripBytes = new FileSlice(file, offsets[index], byteCounts[index]);
        if (lowestBitFirst) {
            stripBytes = new ReversedBits(stripBytes);
        }
        strip = switch (compression) {
            case TiffTag.COMPRESSION_NONE -> plainRows();
            case TiffTag.COMPRESSION_DEFLATE, TiffTag.COMPRESSION_DEFLATE_BEFORE -> {
                stripBytes = new InflatedBytes(stripBytes);
                yield plainRows();
            }
            case TiffTag.COMPRESSION_T6 -> new T6Decoder(stripBytes, widthPx())::next;
            default -> new T4Decoder(stripBytes, widthPx(), compression == TiffTag.COMPRESSION_RUNS)::next;
        };
    }

    private Rows plainRows() {
        byte[] packed = new byte[PackedRows.bytesPerRow(widthPx())];
        return (target, firstWord) -> {
            if (stripBytes.readNBytes(packed, 0, packed.length) < packed.length) {
                return false;
            }
            PackedRows.unpack(packed, 0, widthPx(), target, firstWord);
            return true;
        };
    }

    private void invert(long[] target, int firstWord) {
        int words = wordsPerRow();
        for (int word = firstWord; word < firstWord + words; word++) {
            target[word] = ~target[word];
        }
        if ((widthPx() & 63) != 0) {
            target[firstWord + words - 1] &= -1L << (64 - (widthPx() & 63));
        }
    }

    @Override
    public void close() {
        try (file) {
            if (stripBytes != null) {
                stripBytes.close();
            }
        } catch (IOException e) {
            throw new IllegalStateException(name + " cannot be closed", e);
        }
    }

    /** FillOrder 2: the first px is the lowest bit of each byte. */
    private static final class ReversedBits extends FilterInputStream {
        ReversedBits(InputStream in) {
            super(in);
        }

        @Override
        public int read(byte[] target, int offset, int length) throws IOException {
            int have = super.read(target, offset, length);
            for (int i = offset; i < offset + have; i++) {
                target[i] = (byte) (Integer.reverse(target[i]) >>> 24);
            }
            return have;
        }
    }
}
