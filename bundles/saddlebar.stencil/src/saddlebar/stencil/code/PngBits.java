package saddlebar.stencil.code;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.CRC32;

import saddlebar.model.problem.Refusal;
import saddlebar.stencil.BitBands;

/**
 * Rows of a 1-bit gray PNG as {@link BitonalPng} writes them (filter 0, no interlace), 1 = black, with what it says of itself. Check values of all parts
 * but the rows are looked at when it is opened; that of the rows by the packing itself. Damage is told when its row is read.
 * <p>Source: ISO/IEC 15948 (PNG), 5.3, 11.2.2, 11.3.3.4 (iTXt), 11.3.5.3 (pHYs).
 */
final class PngBits implements BitBands {
    private static final int MOST_PX = 1 << 20;
    private static final int MOST_PARTS = 1 << 20;
    private static final int MOST_TEXT = 1 << 20;
    private static final int PART_EXTRA_BYTES = 12;

    private record Part(long at, int bytes) {
    }

    private final String name;
    private final FileChannel file;
    private final List<Part> data = new ArrayList<>();
    private final Map<String, String> texts = new TreeMap<>();
    private final InputStream rows;
    private final byte[] packed;
    private int widthPx;
    private int heightPx;
    private double dpi;
    private int row;

    /** Opens a file; a {@link Refusal} names it and what is wrong with it. */
    PngBits(Path path, String name) throws IOException {
        this.name = name;
        this.file = FileChannel.open(path, StandardOpenOption.READ);
        try {
            lookOver();
        } catch (IOException | RuntimeException e) {
            file.close();
            throw e;
        }
        this.packed = new byte[1 + PackedRows.bytesPerRow(widthPx)];
        this.rows = new InflatedBytes(new Data());
    }

    /** Px an inch; 0 if the file does not say. */
    double dpi() {
        return dpi;
    }

    /** A text by its keyword; empty if there is none. */
    String text(String keyword) {
        return texts.getOrDefault(keyword, "");
    }

    private void lookOver() throws IOException {
        if (!Arrays.equals(bytes(0, 8).array(), PngChunks.SIGNATURE)) {
            throw refused("this is no PNG file", "give a PNG file");
        }
        long at = 8;
        String kind = "";
        for (int part = 0; !kind.equals("IEND"); part++) {
            ByteBuffer head = bytes(at, 8);
            int length = head.getInt(0);
            kind = new String(head.array(), 4, 4, StandardCharsets.ISO_8859_1);
            if (length < 0 || at > file.size() - length - PART_EXTRA_BYTES || part > MOST_PARTS) {
                throw refused("the file is cut short or damaged: part " + kind.replaceAll("[^A-Za-z]", "?") + " at " + at + " lies beyond its end",
                        "copy or make it again");
            }
            if (part == 0 != kind.equals("IHDR")) {
                throw refused("its first part is not its header, or there are two", "copy or make it again");
            }
            look(kind, at + 8, length);
            at += length + PART_EXTRA_BYTES;
        }
        if (data.isEmpty()) {
            throw refused("it has no picture", "copy or make it again");
        }
    }

    private void look(String kind, long at, int length) throws IOException {
        switch (kind) {
            case "IDAT" -> data.add(new Part(at, length));
            case "IHDR" -> header(checked(kind, at, length, 13));
            case "pHYs" -> {
                ByteBuffer resolution = checked(kind, at, length, 9);
                dpi = resolution.get(8) == 1 ? Math.rint((resolution.getInt(0) & 0xFFFFFFFFL) * 0.0254 * 100) / 100 : 0;
            }
            case "iTXt" -> {
                if (length <= MOST_TEXT) {
                    text(checked(kind, at, length, length).array());
                }
            }
            default -> {
                // says nothing that is asked for
            }
        }
    }

    private ByteBuffer checked(String kind, long at, int length, int wanted) throws IOException {
        if (length != wanted) {
            throw refused("its part " + kind + " has " + length + " bytes, not " + wanted, "copy or make it again");
        }
        CRC32 check = new CRC32();
        ByteBuffer part = bytes(at, length);
        check.update(kind.getBytes(StandardCharsets.ISO_8859_1));
        check.update(part.array());
        if ((int) check.getValue() != bytes(at + length, 4).getInt(0)) {
            throw refused("its part " + kind + " is damaged", "copy or make it again");
        }
        return part;
    }

    private void header(ByteBuffer header) {
        widthPx = header.getInt(0);
        heightPx = header.getInt(4);
        if (header.get(8) != 1 || header.get(9) != 0 || header.get(10) != 0 || header.get(11) != 0 || header.get(12) != 0) {
            throw refused("it is no 1-bit gray picture without interlacing", "give a stencil");
        }
        if (widthPx < 1 || heightPx < 1 || widthPx > MOST_PX || heightPx > MOST_PX) {
            throw refused("a picture of " + widthPx + " x " + heightPx + " px cannot be read", "give a picture of 1 to " + MOST_PX + " px a side");
        }
    }

    /** Keyword, 0, whether packed, how, language, 0, keyword in that language, 0, text; only plain ones are kept. */
    private void text(byte[] part) {
        String all = new String(part, StandardCharsets.UTF_8);
        int keyword = all.indexOf('\0');
        if (keyword < 1 || all.length() < keyword + 5 || all.charAt(keyword + 1) != 0) {
            return;
        }
        int language = all.indexOf('\0', keyword + 3);
        int translated = language < 0 ? -1 : all.indexOf('\0', language + 1);
        if (translated >= 0) {
            texts.putIfAbsent(all.substring(0, keyword), all.substring(translated + 1));
        }
    }

    private Refusal refused(String what, String remedy) {
        return new Refusal(name, what, remedy);
    }

    private ByteBuffer bytes(long at, int count) throws IOException {
        if (at > file.size() - count) {
            throw refused("the file is cut short or damaged: " + count + " bytes at " + at + " lie beyond its end", "copy or make it again");
        }
        ByteBuffer bytes = ByteBuffer.allocate(count);
        while (bytes.hasRemaining()) {
            if (file.read(bytes, at + bytes.position()) < 0) {
                throw new EOFException(name + " became shorter while it was read");
            }
        }
        return bytes.flip();
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
    public int read(long[] target, int maxRows) throws IOException {
        int count = Math.min(maxRows, heightPx - row);
        for (int i = 0; i < count; i++) {
            try {
                if (rows.readNBytes(packed, 0, packed.length) < packed.length) {
                    throw refused("damaged at row " + row + ": the rows end before the last of " + heightPx, "copy or make it again");
                }
            } catch (InflatedBytes.DamagedBytesException e) {
                throw new Refusal(name, "damaged at row " + row + ": " + e.getMessage(), "copy or make it again", e);
            }
            if (packed[0] != 0) {
                throw refused("row " + row + " is filtered, as no stencil is that this program wrote", "give a stencil");
            }
            for (int at = 1; at < packed.length; at++) {
                packed[at] = (byte) ~packed[at];
            }
            PackedRows.unpack(packed, 1, widthPx, target, i * wordsPerRow());
            row++;
        }
        return count;
    }

    @Override
    public void close() {
        try (file) {
            rows.close();
        } catch (IOException e) {
            throw new IllegalStateException(name + " cannot be closed", e);
        }
    }

    /** The bytes of all parts of the picture, one after the other. */
    private final class Data extends InputStream {
        private int part;
        private int done;

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
        }

        @Override
        public int read(byte[] target, int offset, int length) throws IOException {
            while (part < data.size() && done == data.get(part).bytes) {
                part++;
                done = 0;
            }
            if (part == data.size()) {
                return -1;
            }
            Part here = data.get(part);
            int have = file.read(ByteBuffer.wrap(target, offset, Math.min(length, here.bytes - done)), here.at + done);
            done += Math.max(0, have);
            return have;
        }
    }
}
