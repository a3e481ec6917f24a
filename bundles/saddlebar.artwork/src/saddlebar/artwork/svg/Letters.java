package saddlebar.artwork.svg;

import java.awt.BasicStroke;
import java.awt.Composite;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.Stroke;
import java.text.AttributedCharacterIterator;
import java.util.ArrayList;
import java.util.List;

import org.apache.batik.bridge.FontFamilyResolver;
import org.apache.batik.bridge.StrokingTextPainter;
import org.apache.batik.bridge.TextNode;
import org.apache.batik.bridge.TextSpanLayout;
import org.apache.batik.gvt.text.TextPaintInfo;

/** A text laid out by Batik, as outlines with their paints, in the order in which they are painted. */
final class Letters {
    /**
     * One outline.
     *
     * @param fill   null for none
     * @param stroke null for none
     */
    record Outline(Shape shape, Paint fill, Paint stroke, BasicStroke pen, Composite composite) {
    }

    /** Looks for fonts where the rest of the drawing does. */
    private static final class Setter extends StrokingTextPainter {
        private final FontFamilyResolver fonts = new KernedFonts();

        @Override
        protected FontFamilyResolver getFontFamilyResolver() {
            return fonts;
        }
    }

    private Letters() {
    }

    static List<Outline> of(TextNode node) {
        AttributedCharacterIterator characters = node.getAttributedCharacterIterator();
        List<Outline> all = new ArrayList<>();
        if (characters == null) {
            return all;
        }
        List<?> runs = new Setter().getTextRuns(node, characters);
        decorations(runs, TextSpanLayout.DECORATION_UNDERLINE, all);
        decorations(runs, TextSpanLayout.DECORATION_OVERLINE, all);
        for (Object one : runs) {
            StrokingTextPainter.TextRun run = (StrokingTextPainter.TextRun) one;
            TextPaintInfo paint = paint(run);
            if (paint != null && paint.visible) {
                add(all, run.getLayout().getOutline(), paint.fillPaint, paint.strokePaint, paint.strokeStroke, paint.composite);
            }
        }
        decorations(runs, TextSpanLayout.DECORATION_STRIKETHROUGH, all);
        return all;
    }

    private static TextPaintInfo paint(StrokingTextPainter.TextRun run) {
        AttributedCharacterIterator characters = run.getACI();
        characters.first();
        return (TextPaintInfo) characters.getAttribute(StrokingTextPainter.PAINT_INFO);
    }

    private static void decorations(List<?> runs, int kind, List<Outline> all) {
        for (Object one : runs) {
            StrokingTextPainter.TextRun run = (StrokingTextPainter.TextRun) one;
            TextPaintInfo paint = paint(run);
            if (paint == null || !paint.visible) {
                continue;
            }
            switch (kind) {
                case TextSpanLayout.DECORATION_UNDERLINE -> decoration(all, run, kind, paint.underlinePaint, paint.underlineStrokePaint,
                        paint.underlineStroke, paint.composite);
                case TextSpanLayout.DECORATION_OVERLINE -> decoration(all, run, kind, paint.overlinePaint, paint.overlineStrokePaint, paint.overlineStroke,
                        paint.composite);
                default -> decoration(all, run, kind, paint.strikethroughPaint, paint.strikethroughStrokePaint, paint.strikethroughStroke,
                        paint.composite);
            }
        }
    }

    private static void decoration(List<Outline> all, StrokingTextPainter.TextRun run, int kind, Paint fill, Paint stroke, Stroke pen, Composite composite) {
        if (fill != null || stroke != null) {
            add(all, run.getLayout().getDecorationOutline(kind), fill, stroke, pen, composite);
        }
    }

    private static void add(List<Outline> all, Shape shape, Paint fill, Paint stroke, Stroke pen, Composite composite) {
        if (shape != null && (fill != null || stroke != null)) {
            all.add(new Outline(shape, fill, pen instanceof BasicStroke ? stroke : null, pen instanceof BasicStroke basic ? basic : null, composite));
        }
    }
}
