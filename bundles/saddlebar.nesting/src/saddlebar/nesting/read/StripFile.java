package saddlebar.nesting.read;

import java.io.IOException;
import java.io.Reader;
import java.util.List;

import saddlebar.nesting.NestItem;

/**
 * A strip of outlines from JSON, in the form of the open data sets of strip packing: {@code strip_height} and {@code items} with
 * {@code id}, {@code demand}, {@code allowed_orientations} in degrees (absent or null: any angle) and {@code shape} of the type
 * {@code simple_polygon} with {@code data}, a list of points. Units are read as mm. What else it holds is left out.
 *
 * @param stripHeightMm height along y
 * @param items         what to place
 */
public record StripFile(double stripHeightMm, List<NestItem> items) {
    public StripFile {
        items = List.copyOf(items);
    }

    /**
     * @param json     not closed
     * @param fileName what refusals call the file
     * @throws saddlebar.model.problem.Refusal with file and line
     */
    public static StripFile read(Reader json, String fileName) throws IOException {
        return new StripFileParser(json, fileName).strip();
    }
}
