package saddlebar.stencil.code;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.List;

import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;
import saddlebar.stencil.BitBands;

/**
 * Bitonal TIFF 6.0 files: bit 1 = black (PhotometricInterpretation 0), first px highest (FillOrder 1), T.6 with an end of block a strip, or deflated or
 * plain where that is smaller. No date. Layout: header, strips, directory, its values. A file that would pass 4 GiB is written as BigTIFF.
 * <p>Sources: TIFF 6.0 (1992), sections 2, 3, 8, 10 and 11; TIFF Technical Note 2 (2002; deflate); BigTIFF as libtiff specifies it (2007).
 */
public final class BitonalTiff {
    private static final int HEADER_BYTES = 8;
    private static final int BIG_HEADER_BYTES = 16;
    private static final long MOST_BYTES = 0xFFFF_FFFFL;

    private BitonalTiff() {
    }

    /**
     * Writes bits and closes them.
     *
     * @param work told one unit a row
     * @throws saddlebar.model.problem.LockedException if the target exists and may not be replaced, or cannot be written; nothing is left behind
     */
    public static WrittenBits write(BitBands bits, Path target, BitonalSettings settings, Work work) throws IOException {
        try (bits; OutputFile file = OutputFile.open(target, settings.replace()); CodedBits coded = CodedBits.of(bits, target, settings, work)) {
            return write(coded, file, target, settings, MOST_BYTES, work);
        }
    }

    /** Writes rows that are coded already, which stay open. */
    public static WrittenBits write(CodedBits coded, Path target, BitonalSettings settings, Work work) throws IOException {
        try (OutputFile file = OutputFile.open(target, settings.replace())) {
            return write(coded, file, target, settings, MOST_BYTES, work);
        }
    }

    /** Opens a bitonal TIFF; a {@link Refusal} names the file and what is wrong with it. */
    public static TiffBits read(Path file) throws IOException {
        return new TiffBits(file, String.valueOf(file.getFileName()));
    }

    /** @param mostBytes files that would be longer become BigTIFF */
    static WrittenBits write(CodedBits coded, OutputFile file, Path target, BitonalSettings settings, long mostBytes, Work work) throws IOException {
        TiffFields classic = fields(coded, settings, false);
        long directoryAt = even(HEADER_BYTES + coded.bytes());
        byte[] directory = classic.bytes(directoryAt, false);
        boolean big = directoryAt + directory.length > mostBytes;
        if (big) {
            directoryAt = even(BIG_HEADER_BYTES + coded.bytes());
            directory = fields(coded, settings, true).bytes(directoryAt, true);
        }
        file.write(header(big, directoryAt));
        try (InputStream strips = coded.open()) {
            strips.transferTo(file);
        }
        if ((coded.bytes() & 1) != 0) {
            file.write(0);
        }
        file.write(directory);
        try (TiffBits written = new TiffBits(file.written(), String.valueOf(target.getFileName()))) {
            return file.commitIfSame(coded.sha256OfBits(), written, coded.compression(), coded.choice(), work);
        }
    }

    private static long even(long bytes) {
        return bytes + (bytes & 1);
    }

    private static byte[] header(boolean big, long directoryAt) {
        ByteBuffer header = ByteBuffer.allocate(big ? BIG_HEADER_BYTES : HEADER_BYTES).order(ByteOrder.LITTLE_ENDIAN).putShort((short) 0x4949);
        if (big) {
            return header.putShort((short) 43).putShort((short) 8).putShort((short) 0).putLong(directoryAt).array();
        }
        return header.putShort((short) 42).putInt((int) directoryAt).array();
    }

    private static int number(BitPacking packing) {
        return switch (packing) {
            case T6 -> TiffTag.COMPRESSION_T6;
            case PLAIN -> TiffTag.COMPRESSION_NONE;
            case DEFLATE -> TiffTag.COMPRESSION_DEFLATE;
        };
    }

    private static TiffFields fields(CodedBits coded, BitonalSettings settings, boolean big) {
        int headerBytes = big ? BIG_HEADER_BYTES : HEADER_BYTES;
        TiffFields fields = new TiffFields();
        List<CodedBits.Strip> strips = coded.strips();
        fields.longs(TiffTag.NEW_SUBFILE_TYPE, 0);
        fields.longs(TiffTag.IMAGE_WIDTH, coded.widthPx());
        fields.longs(TiffTag.IMAGE_LENGTH, coded.heightPx());
        fields.shorts(TiffTag.BITS_PER_SAMPLE, 1);
        fields.shorts(TiffTag.COMPRESSION, number(coded.packing()));
        fields.shorts(TiffTag.PHOTOMETRIC, 0);
        fields.shorts(TiffTag.FILL_ORDER, 1);
        fields.text(TiffTag.DOCUMENT_NAME, settings.title());
        fields.text(TiffTag.IMAGE_DESCRIPTION, settings.description());
        fields.offsets(TiffTag.STRIP_OFFSETS, big, strips.stream().mapToLong(strip -> headerBytes + strip.offset()).toArray());
        fields.shorts(TiffTag.ORIENTATION, 1);
        fields.shorts(TiffTag.SAMPLES_PER_PIXEL, 1);
        fields.longs(TiffTag.ROWS_PER_STRIP, coded.rowsPerStrip());
        fields.offsets(TiffTag.STRIP_BYTE_COUNTS, big, strips.stream().mapToLong(CodedBits.Strip::bytes).toArray());
        fields.rational(TiffTag.X_RESOLUTION, settings.dpi());
        fields.rational(TiffTag.Y_RESOLUTION, settings.dpi());
        if (coded.packing() == BitPacking.T6) {
            fields.longs(TiffTag.T6_OPTIONS, 0);
        }
        fields.shorts(TiffTag.RESOLUTION_UNIT, 2);
        fields.text(TiffTag.SOFTWARE, settings.software());
        fields.bytes(TiffTag.XMP, XmpPacket.of(settings.title(), settings.description(), coded.sha256OfBits()));
        return fields;
    }
}
