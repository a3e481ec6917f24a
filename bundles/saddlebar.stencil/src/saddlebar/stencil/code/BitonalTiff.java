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
 * Bitonal TIFF 6.0 files: bit 1 = black (PhotometricInterpretation 0), first px highest (FillOrder 1), T.6 with an end of block a strip, or plain
 * where T.6 would be larger. No date. Layout: header, strips, directory, its values.
 * <p>Source: TIFF 6.0 (1992), sections 2, 3, 8, 10 and 11.
 */
public final class BitonalTiff {
    private static final int HEADER_BYTES = 8;
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
            return write(coded, file, target, settings, work);
        }
    }

    /** Writes rows that are coded already, which stay open. */
    public static WrittenBits write(CodedBits coded, Path target, BitonalSettings settings, Work work) throws IOException {
        try (OutputFile file = OutputFile.open(target, settings.replace())) {
            return write(coded, file, target, settings, work);
        }
    }

    /** Opens a bitonal TIFF; a {@link Refusal} names the file and what is wrong with it. */
    public static TiffBits read(Path file) throws IOException {
        return new TiffBits(file, String.valueOf(file.getFileName()));
    }

    private static WrittenBits write(CodedBits coded, OutputFile file, Path target, BitonalSettings settings, Work work) throws IOException {
        long directoryAt = HEADER_BYTES + coded.bytes() + (coded.bytes() & 1);
        byte[] directory = fields(coded, settings).bytes(directoryAt);
        if (directoryAt + directory.length > MOST_BYTES) {
            throw new Refusal(target.toString(), "a TIFF file cannot hold more than 4 GiB", "make the sheet smaller or its resolution lower");
        }
        file.write(ByteBuffer.allocate(HEADER_BYTES).order(ByteOrder.LITTLE_ENDIAN).putShort((short) 0x4949).putShort((short) 42)
                .putInt((int) directoryAt).array());
        try (InputStream strips = coded.open()) {
            strips.transferTo(file);
        }
        if ((coded.bytes() & 1) != 0) {
            file.write(0);
        }
        file.write(directory);
        try (TiffBits written = new TiffBits(file.written(), String.valueOf(target.getFileName()))) {
            return file.commitIfSame(coded.sha256OfBits(), written, coded.compression(), work);
        }
    }

    private static TiffFields fields(CodedBits coded, BitonalSettings settings) {
        TiffFields fields = new TiffFields();
        List<CodedBits.Strip> strips = coded.strips();
        fields.longs(TiffTag.NEW_SUBFILE_TYPE, 0);
        fields.longs(TiffTag.IMAGE_WIDTH, coded.widthPx());
        fields.longs(TiffTag.IMAGE_LENGTH, coded.heightPx());
        fields.shorts(TiffTag.BITS_PER_SAMPLE, 1);
        fields.shorts(TiffTag.COMPRESSION, coded.isPlain() ? TiffTag.COMPRESSION_NONE : TiffTag.COMPRESSION_T6);
        fields.shorts(TiffTag.PHOTOMETRIC, 0);
        fields.shorts(TiffTag.FILL_ORDER, 1);
        fields.text(TiffTag.DOCUMENT_NAME, settings.title());
        fields.text(TiffTag.IMAGE_DESCRIPTION, settings.description());
        fields.longs(TiffTag.STRIP_OFFSETS, strips.stream().mapToLong(strip -> HEADER_BYTES + strip.offset()).toArray());
        fields.shorts(TiffTag.ORIENTATION, 1);
        fields.shorts(TiffTag.SAMPLES_PER_PIXEL, 1);
        fields.longs(TiffTag.ROWS_PER_STRIP, coded.rowsPerStrip());
        fields.longs(TiffTag.STRIP_BYTE_COUNTS, strips.stream().mapToLong(CodedBits.Strip::bytes).toArray());
        fields.rational(TiffTag.X_RESOLUTION, settings.dpi());
        fields.rational(TiffTag.Y_RESOLUTION, settings.dpi());
        if (!coded.isPlain()) {
            fields.longs(TiffTag.T6_OPTIONS, 0);
        }
        fields.shorts(TiffTag.RESOLUTION_UNIT, 2);
        fields.text(TiffTag.SOFTWARE, settings.software());
        fields.bytes(TiffTag.XMP, XmpPacket.of(settings.title(), settings.description(), coded.sha256OfBits()));
        return fields;
    }
}
