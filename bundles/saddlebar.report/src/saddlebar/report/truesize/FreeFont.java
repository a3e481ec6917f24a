package saddlebar.report.truesize;

import java.io.IOException;
import java.io.InputStream;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** Liberation Sans (SIL Open Font License), which lies in PDFBox: embedded, and the same on every machine. */
public final class FreeFont {
    private static final String RESOURCE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private FreeFont() {
    }

    public static PDType0Font in(PDDocument document) throws IOException {
        try (InputStream file = PDDocument.class.getResourceAsStream(RESOURCE)) {
            if (file == null) {
                throw new IllegalStateException("PDFBox no longer carries " + RESOURCE);
            }
            return PDType0Font.load(document, file, true);
        }
    }

    /** The text with what the font lacks replaced by a question mark. */
    public static String shown(PDType0Font font, String text) {
        StringBuilder shown = new StringBuilder(text.length());
        text.codePoints().forEach(c -> shown.appendCodePoint(has(font, c) ? c : '?'));
        return shown.toString();
    }

    private static boolean has(PDType0Font font, int codePoint) {
        try {
            return codePoint >= ' ' && font.encode(Character.toString(codePoint)).length > 0;
        } catch (IOException | IllegalArgumentException e) { // how PDFBox says that a font lacks a letter
            return false;
        }
    }
}
