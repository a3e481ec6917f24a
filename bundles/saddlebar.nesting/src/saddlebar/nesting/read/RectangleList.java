package saddlebar.nesting.read;

import java.io.IOException;
import java.io.Reader;
import java.util.List;

import saddlebar.nesting.NestItem;

/** Reads rectangles from CSV with the columns {@code id,width_mm,height_mm,quantity,rotate}, in any order. */
public final class RectangleList {
    private RectangleList() {
    }

    /**
     * @param fileName what refusals call the file
     * @throws saddlebar.model.problem.Refusal with file and line
     */
    public static List<NestItem> read(Reader csv, String fileName) throws IOException {
        throw new UnsupportedOperationException("being written");
    }
}
