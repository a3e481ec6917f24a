package saddlebar.stencil.code;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

import saddlebar.model.work.Work;
import saddlebar.stencil.BitBands;

/**
 * 1-bit gray PNG at full resolution with its px a metre, its words and a metadata packet, without a time: gray 0 = black = toner. Streamed. Equal bytes on every run of
 * one Java; another Java may pack the same bits to other bytes, since deflate leaves that free.
 * <p>Source: ISO/IEC 15948 (PNG), 11.2 and 11.3.
 */
public final class BitonalPng {
    /** Keyword of a metadata packet in the PNG registry (ISO 16684-1 names it too); an escape, since it holds the name of a firm. */
    static final String XMP = "XML:com.\u0061dobe.xmp";
    private static final int BAND_BYTES = 1 << 18;

    private BitonalPng() {
    }

    /**
     * Writes bits and closes them.
     *
     * @param work told one unit a row
     */
    public static WrittenBits write(BitBands bits, Path target, BitonalSettings settings, Work work) throws IOException {
        try (bits; OutputFile file = OutputFile.open(target, settings.replace())) {
            BitsHash hash = new BitsHash(bits.widthPx(), bits.heightPx());
            PngChunks chunks = new PngChunks(file);
            chunks.header(bits.widthPx(), bits.heightPx(), 1, 0);
            chunks.resolution(settings.dpi());
            chunks.text("Title", settings.title());
            chunks.text("Description", settings.description());
            chunks.text("Software", settings.software());
            writeRows(bits, chunks, hash, work);
            String sha256OfBits = hash.hex();
            // behind the rows, since their hash is known only now
            chunks.text(XMP, new String(XmpPacket.of(settings.title(), settings.description(), sha256OfBits), StandardCharsets.UTF_8));
            chunks.end();
            try (PngBits written = new PngBits(file.written(), String.valueOf(target.getFileName()))) {
                return file.commitIfSame(sha256OfBits, written, "deflate", "", work);
            }
        }
    }

    private static void writeRows(BitBands bits, PngChunks chunks, BitsHash hash, Work work) throws IOException {
        int bytesPerRow = PackedRows.bytesPerRow(bits.widthPx());
        int rowsAtOnce = Math.max(1, BAND_BYTES / bytesPerRow);
        long[] band = new long[rowsAtOnce * bits.wordsPerRow()];
        byte[] packed = new byte[1 + bytesPerRow];
        long[] row = new long[bits.wordsPerRow()];
        int rowsDone = 0;
        try (PngRows idat = new PngRows(chunks)) {
            for (int rows = bits.read(band, rowsAtOnce); rows > 0; rows = bits.read(band, rowsAtOnce)) {
                work.checkpoint();
                hash.add(band, rows);
                for (int y = 0; y < rows; y++) {
                    for (int word = 0; word < row.length; word++) {
                        row[word] = ~band[y * row.length + word];
                    }
                    PackedRows.pack(row, 1, bits.widthPx(), packed, 1);
                    idat.write(packed, packed.length);
                }
                rowsDone += rows;
                work.advance(rows);
            }
            idat.finish();
        }
        if (rowsDone != bits.heightPx()) {
            throw new IOException("a picture of " + bits.heightPx() + " rows ended after " + rowsDone);
        }
    }
}
