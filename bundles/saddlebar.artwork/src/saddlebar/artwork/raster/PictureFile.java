package saddlebar.artwork.raster;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import javax.imageio.stream.FileImageInputStream;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

import saddlebar.artwork.drawing.Picture;

/** A picture file, on disk or in memory: its head, and its rows as often as wanted. */
public final class PictureFile {
    /** Opens the bytes anew. */
    interface Bytes {
        ImageInputStream open() throws IOException;
    }

    private final Bytes bytes;
    private final String where;
    private final PictureHead head;

    private PictureFile(Bytes bytes, String where) throws IOException {
        this.bytes = bytes;
        this.where = where;
        try (ImageInputStream in = bytes.open()) {
            this.head = PictureHead.read(in, where);
        }
    }

    /**
     * Judges a file by its head.
     *
     * @param where file and line, or file, for refusals
     */
    public static PictureFile of(Path file, String where) throws IOException {
        return new PictureFile(() -> new FileImageInputStream(file.toFile()), where);
    }

    /** Judges bytes that stand inside another file. */
    public static PictureFile of(byte[] content, String where) throws IOException {
        return new PictureFile(() -> new MemoryCacheImageInputStream(new ByteArrayInputStream(content)), where);
    }

    /** Whether bytes begin like a picture that is read. */
    public static boolean isPicture(byte[] head) {
        return PictureHead.Kind.of(head) != null;
    }

    /** Pixels of a row as stored. */
    public int widthPx() {
        return head.widthPx();
    }

    /** Rows as stored. */
    public int heightPx() {
        return head.heightPx();
    }

    PictureHead head() {
        return head;
    }

    /** What should be told of it, as parts of a sentence. */
    public List<String> notes() {
        List<String> all = new ArrayList<>(head.notes());
        if (head.inks()) {
            all.add("its colours are inks (cyan, magenta, yellow, black) and are turned into light without a profile, so they may look different;"
                    + " save it as gray or sRGB");
        }
        return all;
    }

    /** Its rows, turned the way up that it wants. */
    PictureRows rows() throws IOException {
        PictureRows stored = storedRows();
        if (head.orientation() == 1) {
            return stored;
        }
        try (PictureRows rows = stored) {
            return new MemoryRows(MemoryRows.whole(rows, head.orientation(), where));
        }
    }

    private PictureRows storedRows() throws IOException {
        if (head.kind() == PictureHead.Kind.PNG && !head.interlaced()) {
            return new PngRows(bytes, head, where);
        }
        return new PlatformRows(bytes, head, where);
    }

    /** The whole picture in memory. */
    public Picture picture() throws IOException {
        try (PictureRows rows = storedRows()) {
            return MemoryRows.whole(rows, head.orientation(), where);
        }
    }
}
