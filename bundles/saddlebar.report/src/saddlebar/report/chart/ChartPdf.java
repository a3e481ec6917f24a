package saddlebar.report.chart;

import java.io.IOException;
import java.nio.file.Path;

import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.util.Matrix;

import saddlebar.kiln.chart.ChartDrawing;
import saddlebar.kiln.chart.ChartSvg;
import saddlebar.kiln.chart.Ink;
import saddlebar.kiln.chart.Mark;
import saddlebar.model.file.Hashes;
import saddlebar.model.file.PendingFile;
import saddlebar.report.truesize.FreeFont;

/** A chart as vectors on one page of A4, lying. The same chart gives the same bytes. */
public final class ChartPdf {
    private static final float MARGIN_PT = 28;
    /** How far the heavier letters are drawn twice: the embedded font has one weight. */
    private static final double BOLD_PT = 0.35;

    private final PDPageContentStream content;
    private final PDType0Font font;
    private final double scale;
    private final double left;
    private final double top;

    private ChartPdf(PDPageContentStream content, PDType0Font font, double scale, double left, double top) {
        this.content = content;
        this.font = font;
        this.scale = scale;
        this.left = left;
        this.top = top;
    }

    /** @param software written into the file as its creator */
    public static void write(ChartDrawing drawing, String title, Path target, String software) throws IOException {
        PDRectangle paper = new PDRectangle(PDRectangle.A4.getHeight(), PDRectangle.A4.getWidth());
        try (PendingFile pending = PendingFile.beside(target); PDDocument document = new PDDocument()) {
            PDType0Font font = FreeFont.in(document);
            PDPage page = new PDPage(paper);
            document.addPage(page);
            double scale = Math.min((paper.getWidth() - 2 * MARGIN_PT) / drawing.widthPt(), (paper.getHeight() - 2 * MARGIN_PT) / drawing.heightPt());
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                ChartPdf chart = new ChartPdf(content, font, scale, (paper.getWidth() - scale * drawing.widthPt()) / 2,
                        (paper.getHeight() + scale * drawing.heightPt()) / 2);
                for (Mark mark : drawing.marks()) {
                    chart.draw(mark);
                }
            }
            document.getDocumentInformation().setTitle(title);
            document.getDocumentInformation().setCreator(software);
            String identity = title + "\n" + software + "\n" + ChartSvg.text(drawing);
            document.setDocumentId(Long.parseUnsignedLong(Hashes.sha256(identity).substring(0, 16), 16));
            document.save(pending.out(), CompressParameters.NO_COMPRESSION);
            pending.commit();
        }
    }

    private void draw(Mark mark) throws IOException {
        if (mark instanceof Mark.Box box) {
            colour(box.fill(), false);
            content.addRect(x(box.x()), y(box.y() + box.height()), (float) (box.width() * scale), (float) (box.height() * scale));
            content.fill();
            line(box.outline());
            content.addRect(x(box.x()), y(box.y() + box.height()), (float) (box.width() * scale), (float) (box.height() * scale));
            content.stroke();
        } else if (mark instanceof Mark.Rule rule) {
            line(rule.ink());
            content.moveTo(x(rule.x1()), y(rule.y1()));
            content.lineTo(x(rule.x2()), y(rule.y2()));
            content.stroke();
        } else if (mark instanceof Mark.Curve curve) {
            line(curve.ink());
            double[] xy = curve.xy();
            content.moveTo(x(xy[0]), y(xy[1]));
            for (int i = 2; i < xy.length; i += 2) {
                content.lineTo(x(xy[i]), y(xy[i + 1]));
            }
            content.stroke();
        } else if (mark instanceof Mark.Words words) {
            words(words);
        }
    }

    private void words(Mark.Words words) throws IOException {
        String text = FreeFont.shown(font, words.text());
        double em = words.sizePt() * scale;
        double width = font.getStringWidth(text) / 1000 * em;
        double back = switch (words.anchor()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        for (int pass = 0; pass < (words.bold() ? 2 : 1); pass++) {
            double along = pass * BOLD_PT - back;
            content.beginText();
            content.setNonStrokingColor(red(Ink.TEXT), green(Ink.TEXT), blue(Ink.TEXT));
            content.setFont(font, (float) em);
            content.setTextMatrix(words.upwards()
                    ? new Matrix(0, 1, -1, 0, x(words.x()), (float) (y(words.y()) + along))
                    : Matrix.getTranslateInstance((float) (x(words.x()) + along), y(words.y())));
            content.showText(text);
            content.endText();
        }
    }

    private void line(Ink ink) throws IOException {
        colour(ink, true);
        content.setLineWidth((float) (ink.widthPt() * scale));
        content.setLineJoinStyle(1);
        float[] dash = ink.dash();
        for (int i = 0; i < dash.length; i++) {
            dash[i] *= (float) scale;
        }
        content.setLineDashPattern(dash, 0);
    }

    private void colour(Ink ink, boolean stroke) throws IOException {
        if (stroke) {
            content.setStrokingColor(red(ink), green(ink), blue(ink));
        } else {
            content.setNonStrokingColor(red(ink), green(ink), blue(ink));
        }
    }

    private static float red(Ink ink) {
        return (ink.rgb() >> 16 & 255) / 255f;
    }

    private static float green(Ink ink) {
        return (ink.rgb() >> 8 & 255) / 255f;
    }

    private static float blue(Ink ink) {
        return (ink.rgb() & 255) / 255f;
    }

    private float x(double pt) {
        return (float) (left + pt * scale);
    }

    private float y(double pt) {
        return (float) (top - pt * scale);
    }
}
