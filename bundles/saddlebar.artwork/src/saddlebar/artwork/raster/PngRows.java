package saddlebar.artwork.raster;

import java.io.EOFException;
import java.io.IOException;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

import javax.imageio.stream.ImageInputStream;

/**
 * Rows of a PNG that is not interlaced, one at a time (ISO/IEC 15948: 9 filters, 10 compression): the platform's own reader starts from the
 * top for every part, which a large scan cannot afford. 16 bits are rounded to 8.
 */
final class PngRows implements PictureRows {
    private static final int IDAT = 0x49444154;
    private static final int PLTE = 0x504C5445;
    private static final int TRNS = 0x74524E53;
    private static final int GRAY = 0;
    private static final int COLOUR = 2;
    private static final int PALETTE = 3;

    private final ImageInputStream in;
    private final PictureHead head;
    private final String where;
    private final Inflater inflater = new Inflater();
    private final CRC32 sum = new CRC32();
    private final byte[] packed = new byte[1 << 16];
    private final int colourType;
    private final int pixelBytes;
    private final byte[] palette = new byte[256 * 4];
    private boolean seeThrough;
    private int[] clearColour;
    private byte[] before;
    private byte[] now;
    private long chunkLeft;
    private int row;

    PngRows(PictureFile.Bytes bytes, PictureHead head, String where) throws IOException {
        this.in = bytes.open();
        this.head = head;
        this.where = where;
        in.seek(8 + 8 + 9); // signature, head of the first chunk, size and depth
        this.colourType = in.readUnsignedByte();
        int rowBits = head.channels() * head.bits();
        this.pixelBytes = Math.max(1, rowBits / 8);
        long rowBytes = ((long) head.widthPx() * rowBits + 7) / 8;
        if (rowBytes > Integer.MAX_VALUE / 2) {
            in.close();
            throw PictureHead.damaged(PictureHead.Kind.PNG, where, "a row has " + rowBytes + " bytes", null);
        }
        this.before = new byte[(int) rowBytes];
        this.now = new byte[(int) rowBytes];
        java.util.Arrays.fill(palette, (byte) 0xFF);
        try {
            toPixels();
        } catch (EOFException e) {
            close();
            throw PictureHead.truncated(PictureHead.Kind.PNG, where, e);
        }
    }

    /** Reads the chunks before the pixels and stops at the first chunk of those. */
    private void toPixels() throws IOException {
        in.seek(8);
        while (true) {
            long length = in.readUnsignedInt();
            int type = in.readInt();
            if (type == IDAT) {
                begin(length, type);
                return;
            }
            long next = in.getStreamPosition() + length + 4;
            if (type == PLTE && length <= 256 * 3) {
                for (int i = 0; i < length / 3; i++) {
                    in.readFully(palette, 4 * i, 3);
                }
            } else if (type == TRNS && length <= 256) {
                transparency((int) length);
            }
            in.seek(next);
        }
    }

    private void transparency(int length) throws IOException {
        if (colourType == PALETTE) {
            for (int i = 0; i < length; i++) {
                palette[4 * i + 3] = in.readByte();
                seeThrough |= palette[4 * i + 3] != (byte) 0xFF;
            }
        } else if (colourType == GRAY && length >= 2 || colourType == COLOUR && length >= 6) {
            clearColour = new int[head.channels()];
            for (int c = 0; c < clearColour.length; c++) {
                clearColour[c] = in.readUnsignedShort();
            }
            seeThrough = true;
        }
    }

    private void begin(long length, int type) {
        chunkLeft = length;
        sum.reset();
        for (int shift = 24; shift >= 0; shift -= 8) {
            sum.update(type >>> shift);
        }
    }

    @Override
    public int widthPx() {
        return head.widthPx();
    }

    @Override
    public int heightPx() {
        return head.heightPx();
    }

    @Override
    public int channels() {
        if (colourType == PALETTE) {
            return seeThrough ? 4 : 3;
        }
        return head.channels() + (clearColour != null ? 1 : 0);
    }

    @Override
    public void next(byte[] target) throws IOException {
        byte[] filter = new byte[1];
        try {
            inflate(filter, 1);
            inflate(now, now.length);
        } catch (EOFException e) {
            throw PictureHead.truncated(PictureHead.Kind.PNG, where, e);
        } catch (DataFormatException e) {
            throw PictureHead.damaged(PictureHead.Kind.PNG, where, "its pixels cannot be unpacked in row " + (row + 1), e);
        }
        unfilter(filter[0]);
        spread(target);
        byte[] swap = before;
        before = now;
        now = swap;
        row++;
    }

    private void inflate(byte[] target, int length) throws IOException, DataFormatException {
        int done = 0;
        while (done < length) {
            int n = inflater.inflate(target, done, length - done);
            done += n;
            if (n == 0) {
                if (inflater.finished() || inflater.needsDictionary()) {
                    throw new EOFException();
                }
                feed();
            }
        }
    }

    private void feed() throws IOException {
        while (chunkLeft == 0) {
            if ((int) sum.getValue() != in.readInt()) {
                throw PictureHead.damaged(PictureHead.Kind.PNG, where, "a check sum is wrong near row " + (row + 1), null);
            }
            long length = in.readUnsignedInt();
            int type = in.readInt();
            if (type != IDAT) {
                throw new EOFException();
            }
            begin(length, type);
        }
        int n = in.read(packed, 0, (int) Math.min(packed.length, chunkLeft));
        if (n <= 0) {
            throw new EOFException();
        }
        sum.update(packed, 0, n);
        chunkLeft -= n;
        inflater.setInput(packed, 0, n);
    }

    private void unfilter(int filter) {
        int bpp = pixelBytes;
        int n = now.length;
        switch (filter) {
            case 0 -> {
                return;
            }
            case 1 -> {
                for (int i = bpp; i < n; i++) {
                    now[i] += now[i - bpp];
                }
            }
            case 2 -> {
                for (int i = 0; i < n; i++) {
                    now[i] += before[i];
                }
            }
            case 3 -> {
                for (int i = 0; i < n; i++) {
                    now[i] += (byte) (((i < bpp ? 0 : now[i - bpp] & 0xFF) + (before[i] & 0xFF)) / 2);
                }
            }
            case 4 -> {
                for (int i = 0; i < n; i++) {
                    int a = i < bpp ? 0 : now[i - bpp] & 0xFF;
                    int b = before[i] & 0xFF;
                    int c = i < bpp ? 0 : before[i - bpp] & 0xFF;
                    int pa = Math.abs(b - c);
                    int pb = Math.abs(a - c);
                    int pc = Math.abs(a + b - 2 * c);
                    now[i] += (byte) (pa <= pb && pa <= pc ? a : pb <= pc ? b : c);
                }
            }
            default -> throw PictureHead.damaged(PictureHead.Kind.PNG, where, "row " + (row + 1) + " has no known filter", null);
        }
    }

    /** Samples of any depth to bytes; a palette to its colours. */
    private void spread(byte[] target) {
        int width = head.widthPx();
        int stored = head.channels();
        int out = channels();
        int bits = head.bits();
        if (bits == 8 && stored == out) {
            System.arraycopy(now, 0, target, 0, width * out);
            return;
        }
        int most = (1 << bits) - 1;
        for (int x = 0; x < width; x++) {
            boolean clear = clearColour != null;
            for (int c = 0; c < stored; c++) {
                int sample = sample(x * stored + c, bits);
                if (colourType == PALETTE) {
                    System.arraycopy(palette, 4 * Math.min(sample, 255), target, x * out, out);
                } else {
                    target[x * out + c] = (byte) (bits == 8 ? sample : (sample * 255L + most / 2) / most);
                    clear &= clearColour != null && clearColour[c] == sample;
                }
            }
            if (clearColour != null) {
                target[x * out + stored] = (byte) (clear ? 0 : 0xFF);
            }
        }
    }

    private int sample(int index, int bits) {
        if (bits == 8) {
            return now[index] & 0xFF;
        } else if (bits == 16) {
            return (now[2 * index] & 0xFF) << 8 | now[2 * index + 1] & 0xFF;
        }
        int at = index * bits;
        return (now[at >> 3] & 0xFF) >> 8 - bits - (at & 7) & (1 << bits) - 1;
    }

    @Override
    public void close() throws IOException {
        inflater.end();
        in.close();
    }
}
