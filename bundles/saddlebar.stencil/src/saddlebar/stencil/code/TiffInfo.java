package saddlebar.stencil.code;

/**
 * What a bitonal TIFF file says about itself.
 *
 * @param xDpi        device pixels an inch across; 0 if the file does not say
 * @param yDpi        device pixels an inch down; 0 if the file does not say
 * @param title       DocumentName, may be empty
 * @param description ImageDescription, may be empty
 * @param software    may be empty
 * @param compression {@code T.6}, {@code T.4}, {@code runs} (modified Huffman) or {@code none}
 * @param strips      number of strips
 * @param xmp         metadata packet, may be empty
 */
public record TiffInfo(int widthPx, int heightPx, double xDpi, double yDpi, String title, String description, String software, String compression,
        int strips, String xmp) {
}
