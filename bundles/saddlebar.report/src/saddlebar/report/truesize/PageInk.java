package saddlebar.report.truesize;

import java.io.IOException;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.util.Matrix;

import saddlebar.model.units.Units;

/** Puts ink on one page: mm of the drawing, y down, to points of the page, y up. */
final class PageInk {
    static final double PT_PER_MM = Units.PT_PER_INCH / Units.MM_PER_INCH;
    /** Height of a capital of the font in em: 1409 of 2048 units (its OS/2 table). */
    static final double CAPITAL_EM = 1409 / 2048.0;

    private final PDPageContentStream content;
    private final PDFont font;
    private final double leftMm;
    private final double topMm;
    private final double unit;

    /**
     * @param leftMm where x = 0 of the drawing lies, from the page's left
     * @param topMm  where y = 0 of the drawing lies, from the page's bottom
     * @param scale  1 for true size
     * @param userUnit points of 1/72 inch a unit of the page
     */
    PageInk(PDPageContentStream content, PDFont font, double leftMm, double topMm, double scale, double userUnit) {
        this.content = content;
        this.font = font;
        this.unit = PT_PER_MM * scale / userUnit;
        this.leftMm = leftMm * PT_PER_MM / userUnit;
        this.topMm = topMm * PT_PER_MM / userUnit;
    }

    void draw(Ink ink) throws IOException {
        if (ink instanceof Ink.Line line) {
            line(line);
        } else if (ink instanceof Ink.Area area) {
            colour(area.rgb(), false);
            path(area.rings(), true);
            content.fillEvenOdd();
        } else if (ink instanceof Ink.Words words) {
            words(words);
        } else {
            throw new IllegalArgumentException("a picture is drawn with what the document holds of it");
        }
    }

    /** The picture where its ink says; {@code embedded} is the same picture as the document holds it, once for all pages. */
    void draw(Ink.Picture picture, PDImageXObject embedded) throws IOException {
        content.drawImage(embedded, x(picture.xMm()), y(picture.yMm() + picture.heightMm()), (float) (picture.widthMm() * unit),
                (float) (picture.heightMm() * unit));
    }

    private void line(Ink.Line line) throws IOException {
        colour(line.rgb(), true);
        content.setLineWidth((float) (line.widthMm() * unit));
        content.setLineCapStyle(1);
        content.setLineJoinStyle(1);
        float[] dash = new float[line.dashMm().length];
        for (int i = 0; i < dash.length; i++) {
            dash[i] = (float) (line.dashMm()[i] * unit);
        }
        content.setLineDashPattern(dash, 0);
        path(line.paths(), line.closed());
        content.stroke();
    }

    private void path(List<double[]> paths, boolean closed) throws IOException {
        for (double[] xy : paths) {
            for (int i = 0; i + 1 < xy.length; i += 2) {
                if (i == 0) {
                    content.moveTo(x(xy[i]), y(xy[i + 1]));
                } else {
                    content.lineTo(x(xy[i]), y(xy[i + 1]));
                }
            }
            if (closed) {
                content.closePath();
            }
        }
    }

    private void words(Ink.Words words) throws IOException {
        double em = words.capitalMm() / CAPITAL_EM * unit;
        double width = font.getStringWidth(words.text()) / 1000 * em;
        text(words.text(), x(words.xMm()) - width / 2, y(words.yMm()) - words.capitalMm() * unit / 2, em, words.rgb());
    }

    /** Words that begin at a place, their base line on it. */
    void textFrom(String text, double xMm, double yMm, double capitalMm, int rgb) throws IOException {
        text(text, x(xMm), y(yMm), capitalMm / CAPITAL_EM * unit, rgb);
    }

    double widthMm(String text, double capitalMm) throws IOException {
        return font.getStringWidth(text) / 1000 * capitalMm / CAPITAL_EM;
    }

    private void text(String text, double x, double y, double em, int rgb) throws IOException {
        content.beginText();
        content.setNonStrokingColor((rgb >> 16 & 255) / 255f, (rgb >> 8 & 255) / 255f, (rgb & 255) / 255f);
        content.setFont(font, (float) em);
        content.setTextMatrix(Matrix.getTranslateInstance((float) x, (float) y));
        content.showText(text);
        content.endText();
    }

    void clip(double xMm, double yMm, double widthMm, double heightMm) throws IOException {
        content.addRect(x(xMm), y(yMm + heightMm), (float) (widthMm * unit), (float) (heightMm * unit));
        content.clip();
    }

    private void colour(int rgb, boolean stroke) throws IOException {
        float red = (rgb >> 16 & 255) / 255f;
        float green = (rgb >> 8 & 255) / 255f;
        float blue = (rgb & 255) / 255f;
        if (stroke) {
            content.setStrokingColor(red, green, blue);
        } else {
            content.setNonStrokingColor(red, green, blue);
        }
    }

    private float x(double mm) {
        return (float) (leftMm + mm * unit);
    }

    private float y(double mm) {
        return (float) (topMm - mm * unit);
    }
}
