package saddlebar.nesting.read;

import java.io.IOException;
import java.io.Reader;
import java.util.List;

import saddlebar.nesting.NestItem;

/**
 * A strip of outlines from JSON, in the form of the open data sets of strip packing: {@code strip_height} and {@code items} with
 * {@code id}, {@code demand}, {@code allowed_orientations} in degrees (absent: any angle) and {@code shape.data}, a list of points.
 *
 * @param stripHeightMm height along y
 * @param items         what to place
 */
public record StripFile(double stripHeightMm, List<NestItem> items) {
    public StripFile {
        items = List.copyOf(items);
    }

    /**
     * @param fileName what refusals call the file
     * @throws saddlebar.model.problem.Refusal with file and line
     */
    public static StripFile read(Reader json, String fileName) throws IOException {
        throw new UnsupportedOperationException("being written");
    }
}
