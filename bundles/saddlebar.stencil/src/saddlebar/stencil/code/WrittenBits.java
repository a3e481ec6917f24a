package saddlebar.stencil.code;

import java.nio.file.Path;

/**
 * What a writer of 1-bit pictures has written and checked by reading it back before the file became visible.
 *
 * @param file         the file
 * @param sha256OfFile SHA-256 of its bytes, lower case hex
 * @param sha256OfBits SHA-256 of the picture as a raw PBM file (see {@link BitsHash}), whatever the format: equal bits, equal hash
 * @param bytes        size of the file
 * @param compression  {@code T.6}, {@code none} (plain bits) or {@code deflate}: the smallest
 * @param choice       why it is not T.6, with sizes, for a person; empty if it is, or if the format has but one way
 */
public record WrittenBits(Path file, String sha256OfFile, String sha256OfBits, long bytes, int widthPx, int heightPx, String compression, String choice) {
}
