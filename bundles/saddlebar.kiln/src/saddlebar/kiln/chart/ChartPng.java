package saddlebar.kiln.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;

import javax.imageio.ImageIO;

import saddlebar.model.units.Require;

/** A chart as a picture in PNG. Needs no display. */
public final class ChartPng {
    private static final float MITRE = 10;

    private ChartPng() {
    }

    /** @param pxPerPt 0.5 to 8; 2 is sharp on paper of A5 */
    public static byte[] bytes(ChartDrawing drawing, double pxPerPt) throws IOException {
        Require.within("pxPerPt", pxPerPt, 0.5, 8);
        BufferedImage image = new BufferedImage((int) Math.ceil(drawing.widthPt() * pxPerPt), (int) Math.ceil(drawing.heightPt() * pxPerPt),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            graphics.scale(pxPerPt, pxPerPt);
            drawing.marks().forEach(mark -> draw(graphics, mark));
        } finally {
            graphics.dispose();
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return bytes.toByteArray();
    }

    private static void draw(Graphics2D graphics, Mark mark) {
        if (mark instanceof Mark.Box box) {
            Rectangle2D area = new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height());
            graphics.setColor(new Color(box.fill().rgb()));
            graphics.fill(area);
            take(graphics, box.outline());
            graphics.draw(area);
        } else if (mark instanceof Mark.Rule rule) {
            take(graphics, rule.ink());
            graphics.draw(new Line2D.Double(rule.x1(), rule.y1(), rule.x2(), rule.y2()));
        } else if (mark instanceof Mark.Curve curve) {
            take(graphics, curve.ink());
            Path2D path = new Path2D.Double();
            double[] xy = curve.xy();
            path.moveTo(xy[0], xy[1]);
            for (int i = 2; i < xy.length; i += 2) {
                path.lineTo(xy[i], xy[i + 1]);
            }
            graphics.draw(path);
        } else if (mark instanceof Mark.Words words) {
            words(graphics, words);
        }
    }

    private static void take(Graphics2D graphics, Ink ink) {
        graphics.setColor(new Color(ink.rgb()));
        float[] dash = ink.dash();
        graphics.setStroke(new BasicStroke((float) ink.widthPt(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, MITRE, dash.length == 0 ? null : dash, 0));
    }

    private static void words(Graphics2D graphics, Mark.Words words) {
        AffineTransform before = graphics.getTransform();
        graphics.setColor(new Color(Ink.TEXT.rgb()));
        graphics.setFont(new Font(Font.SANS_SERIF, words.bold() ? Font.BOLD : Font.PLAIN, 1).deriveFont((float) words.sizePt()));
        double width = graphics.getFontMetrics().getStringBounds(words.text(), graphics).getWidth();
        double back = switch (words.anchor()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        graphics.translate(words.x(), words.y());
        if (words.upwards()) {
            graphics.rotate(-Math.PI / 2);
        }
        graphics.drawString(words.text(), (float) -back, 0);
        graphics.setTransform(before);
    }
}
