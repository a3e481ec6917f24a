package saddlebar.stencil.sheet;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;

import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Letters as outlines of Liberation Sans (SIL Open Font License), which lies in PDFBox: the same on every machine, whatever fonts it has. One
 * letter after the other by its advance, without kerning, joining or right-to-left order; a letter that the font lacks shows as its empty box.
 * For one thread.
 */
public final class SheetFont implements AutoCloseable {
    /** Height of a capital letter in em (OS/2 table of the font: 1409 of 2048). */
    static final double CAPITAL_EM = 1409 / 2048.0;
    private static final String RESOURCE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private final TrueTypeFont font;
    private final double unitsPerEm;
    private final Map<Integer, Path2D> outlines = new HashMap<>();

    public SheetFont() throws IOException {
        try (InputStream in = open(); RandomAccessReadBuffer bytes = new RandomAccessReadBuffer(in)) {
            this.font = new TTFParser(true).parse(bytes);
            this.unitsPerEm = font.getUnitsPerEm();
        }
    }

    /** The font's file. */
    static InputStream open() {
        InputStream in = PDDocument.class.getResourceAsStream(RESOURCE);
        if (in == null) {
            throw new IllegalStateException("PDFBox no longer carries " + RESOURCE);
        }
        return in;
    }

    public double widthMm(String text, double emMm) throws IOException {
        double units = 0;
        for (int c : text.codePoints().toArray()) {
            units += font.getAdvanceWidth(glyph(c));
        }
        return units / unitsPerEm * emMm;
    }

    /** Outlines of a line of text, y down, with its base line at {@code yMm} and its left at {@code xMm}. */
    public Path2D outline(String text, double xMm, double yMm, double emMm) throws IOException {
        Path2D line = new Path2D.Double(Path2D.WIND_NON_ZERO);
        double scale = emMm / unitsPerEm;
        double penMm = xMm;
        for (int c : text.codePoints().toArray()) {
            int glyph = glyph(c);
            line.append(outline(glyph).getPathIterator(new AffineTransform(scale, 0, 0, -scale, penMm, yMm)), false);
            penMm += font.getAdvanceWidth(glyph) * scale;
        }
        return line;
    }

    /** The text, shortened by an ellipsis if it is wider than this. */
    public String fitted(String text, double emMm, double mostMm) throws IOException {
        if (widthMm(text, emMm) <= mostMm) {
            return text;
        }
        int[] letters = text.codePoints().toArray();
        int keep = letters.length;
        while (keep > 0 && widthMm(new String(letters, 0, keep) + "\u2026", emMm) > mostMm) {
            keep--;
        }
        return new String(letters, 0, keep).strip() + "\u2026";
    }

    /** The text with letters that the font lacks replaced by a question mark, for writers that refuse them. */
    public String shown(String text) throws IOException {
        StringBuilder shown = new StringBuilder(text.length());
        for (int c : text.codePoints().toArray()) {
            shown.appendCodePoint(glyph(c) == 0 ? '?' : c);
        }
        return shown.toString();
    }

    private int glyph(int codePoint) throws IOException {
        return font.getUnicodeCmapLookup().getGlyphId(codePoint);
    }

    private Path2D outline(int glyph) throws IOException {
        Path2D known = outlines.get(glyph);
        if (known == null) {
            GlyphData data = font.getGlyph().getGlyph(glyph);
            known = data == null ? new Path2D.Double() : data.getPath();
            outlines.put(glyph, known);
        }
        return known;
    }

    @Override
    public void close() throws IOException {
        font.close();
    }
}
