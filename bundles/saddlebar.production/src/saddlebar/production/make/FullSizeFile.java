package saddlebar.production.make;

import java.nio.file.Path;

/**
 * A file at full size.
 *
 * @param window   label of the panel
 * @param widthMm  of the drawing; of ganged patterns that of a page's room
 * @param pages    to print; with the map of the pages
 */
public record FullSizeFile(String window, FullSizeKind kind, Path file, double widthMm, double heightMm, int pages) {
}
