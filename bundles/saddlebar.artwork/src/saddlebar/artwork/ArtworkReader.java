package saddlebar.artwork;

import java.io.IOException;
import java.nio.file.Path;

/**
 * Reads one family of art files. Whoever wants another kind of file adds a bundle with one such service; nothing here is edited. A reader has
 * no state and may be called from several threads.
 */
public interface ArtworkReader {
    /** The kinds of file it reads, for sentences: {@code SVG}, or {@code PNG, TIFF and JPEG}. */
    String kinds();

    /**
     * Whether this reader is the one for a file, judged by its content; the name only helps where content does not tell.
     *
     * @param fileName name without folders
     * @param head     the first bytes of the file, at most {@link ArtworkReaders#HEAD_BYTES}
     */
    boolean canRead(String fileName, byte[] head);

    /**
     * How many pages a file has that this reader reads.
     *
     * @throws saddlebar.model.problem.Refusal as {@link #read}
     * @throws IOException                      if the disk fails
     */
    default int pages(Path file) throws IOException {
        return 1;
    }

    /**
     * Reads the file whole, checks it, and lets go of it.
     *
     * @throws saddlebar.model.problem.Refusal if the file is no such artwork, is damaged or unsafe, or has no size
     * @throws IOException                      if the disk fails
     */
    Artwork read(Path file, ReadSettings settings) throws IOException;
}
