package saddlebar.stencil.sheet;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;

import saddlebar.model.units.Units;

/** Filled outlines and lines of text in mm, y down, in the order they are laid down; shown as px or on a page of a PDF. */
public final class PlanDrawing {
    private record Filled(Path2D outline, Color colour) {
    }

    private record Line(String text, double xMm, double yMm, double emMm, Color colour) {
    }

    private static final double PT_PER_MM = Units.PT_PER_INCH / Units.MM_PER_INCH;

    private final SheetFont font;
    private final List<Object> items = new ArrayList<>();

    public PlanDrawing(SheetFont font) {
        this.font = font;
    }

    public void fill(Path2D outlineMm, Color colour) {
        items.add(new Filled(outlineMm, colour));
    }

    public void fill(RectMm box, Color colour) {
        fill(MarkShapes.box(box.xMm(), box.yMm(), box.widthMm(), box.heightMm()), colour);
    }

    /** The four sides of a box as lines that lie inside it. */
    public void frame(RectMm box, double strokeMm, Color colour) {
        Path2D sides = MarkShapes.box(box.xMm(), box.yMm(), box.widthMm(), strokeMm);
        sides.append(MarkShapes.box(box.xMm(), box.bottomMm() - strokeMm, box.widthMm(), strokeMm), false);
        sides.append(MarkShapes.box(box.xMm(), box.yMm(), strokeMm, box.heightMm()), false);
        sides.append(MarkShapes.box(box.rightMm() - strokeMm, box.yMm(), strokeMm, box.heightMm()), false);
        fill(sides, colour);
    }

    public void text(String text, double xMm, double yMm, double emMm, Color colour) {
        items.add(new Line(text, xMm, yMm, emMm, colour));
    }

    /** Text in lines no wider than this, broken at spaces; gives where the next base line would be. */
    public double paragraph(String text, double xMm, double yMm, double emMm, double mostMm, Color colour) throws IOException {
        double lineMm = yMm;
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            String longer = line.length() == 0 ? word : line + " " + word;
            if (line.length() > 0 && font.widthMm(longer, emMm) > mostMm) {
                text(line.toString(), xMm, lineMm, emMm, colour);
                lineMm += 1.25 * emMm;
                line.setLength(0);
                line.append(word);
            } else {
                line.setLength(0);
                line.append(longer);
            }
        }
        text(line.toString(), xMm, lineMm, emMm, colour);
        return lineMm + 1.25 * emMm;
    }

    /** Draws on a picture whose top left is the origin. */
    public void drawOn(BufferedImage image, double dpi) throws IOException {
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            graphics.transform(AffineTransform.getScaleInstance(dpi / Units.MM_PER_INCH, dpi / Units.MM_PER_INCH));
            for (Object item : items) {
                if (item instanceof Filled filled) {
                    graphics.setColor(filled.colour);
                    graphics.fill(filled.outline);
                } else if (item instanceof Line line) {
                    graphics.setColor(line.colour);
                    graphics.fill(font.outline(line.text, line.xMm, line.yMm, line.emMm));
                }
            }
        } finally {
            graphics.dispose();
        }
    }

    /** Draws on a page of a PDF; texts stay texts. */
    public void drawOn(PDPageContentStream page, PDFont pdfFont, double pageHeightMm) throws IOException {
        for (Object item : items) {
            if (item instanceof Filled filled) {
                page.setNonStrokingColor(filled.colour);
                outline(page, filled.outline, pageHeightMm);
                page.fill();
            } else if (item instanceof Line line) {
                page.setNonStrokingColor(line.colour);
                page.beginText();
                page.setFont(pdfFont, (float) (line.emMm * PT_PER_MM));
                page.newLineAtOffset((float) (line.xMm * PT_PER_MM), (float) ((pageHeightMm - line.yMm) * PT_PER_MM));
                page.showText(font.shown(line.text));
                page.endText();
            }
        }
    }

    private static void outline(PDPageContentStream page, Path2D outline, double pageHeightMm) throws IOException {
        float[] to = new float[6];
        PathIterator path = outline.getPathIterator(new AffineTransform(PT_PER_MM, 0, 0, -PT_PER_MM, 0, pageHeightMm * PT_PER_MM));
        for (; !path.isDone(); path.next()) {
            switch (path.currentSegment(to)) {
                case PathIterator.SEG_MOVETO -> page.moveTo(to[0], to[1]);
                case PathIterator.SEG_LINETO -> page.lineTo(to[0], to[1]);
                case PathIterator.SEG_QUADTO -> throw new IllegalStateException("letters are shown as text here, all else has no quadratic curve");
                case PathIterator.SEG_CUBICTO -> page.curveTo(to[0], to[1], to[2], to[3], to[4], to[5]);
                default -> page.closePath();
            }
        }
    }
}
