package saddlebar.production.light;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

import saddlebar.model.problem.PlaceMm;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.production.light.EaselLook.Overlay;

/** Writes numbers on the glass and marks problems. Both keep their size on the screen whatever the scale; severity is told by shape and colour. */
final class MarkPainter {
    /** Half the width of a problem's mark, in points. */
    static final double MARK_PT = 7;
    private static final double LEAST_TEXT_PT = 7.5;
    private static final double MOST_TEXT_PT = 15;
    private static final int INK = 0x101214;
    /** Colours that the colour-blind tell apart. Source: Okabe, M., Ito, K. (2008). Color Universal Design. */
    private static final int VERMILION = 0xD55E00;
    private static final int YELLOW = 0xF0E442;
    private static final int SKY_BLUE = 0x56B4E9;

    private final EaselScene scene;
    private final EaselLook look;
    private final GlassTones tones;

    MarkPainter(EaselScene scene, EaselLook look, GlassTones tones) {
        this.scene = scene;
        this.look = look;
        this.tones = tones;
    }

    void paint(Graphics2D pen, RectMm part, double pxPerMm, double pxPerPt) {
        RectMm near = part.grownBy(3 * MOST_TEXT_PT * pxPerPt / pxPerMm);
        if (look.shows(Overlay.STATES)) {
            for (ScenePiece piece : scene.pieces()) {
                if (piece.contour().bounds().touches(part)) {
                    AffineTransform toPx = new AffineTransform(pxPerMm, 0, 0, pxPerMm, -part.leftMm() * pxPerMm, -part.topMm() * pxPerMm);
                    StateHatch.lay(pen, toPx.createTransformedShape(piece.contour().path()), scene.state(piece), -part.leftMm() * pxPerMm,
                            -part.topMm() * pxPerMm, pxPerPt);
                }
            }
        }
        if (look.shows(Overlay.STRONGER)) {
            for (ScenePiece piece : scene.pieces()) {
                if (near.holds(piece.labelXMm(), piece.labelYMm()) && tones.of(piece.glass(look.colourway())).outOfGamut()) {
                    stronger(pen, (piece.labelXMm() - part.leftMm()) * pxPerMm, (piece.labelYMm() - part.topMm()) * pxPerMm,
                            Math.min(MARK_PT * pxPerPt, 0.9 * piece.labelRadiusMm() * pxPerMm));
                }
            }
        }
        if (look.shows(Overlay.NUMBERS)) {
            for (ScenePiece piece : scene.pieces()) {
                if (near.holds(piece.labelXMm(), piece.labelYMm())) {
                    write(pen, piece, part, pxPerMm, pxPerPt);
                }
            }
        }
        if (look.shows(Overlay.PROBLEMS)) {
            scene.hints().forEach(hint -> lay(pen, hint, part, pxPerMm, pxPerPt));
            for (int i = scene.problems().size() - 1; i >= 0; i--) { // worst last, on top
                Problem problem = scene.problems().get(i);
                if (problem.at().isPresent()) {
                    PlaceMm place = problem.at().get();
                    if (near.holds(place.xMm(), place.yMm())) {
                        mark(pen, problem.severity(), (place.xMm() - part.leftMm()) * pxPerMm, (place.yMm() - part.topMm()) * pxPerMm, pxPerPt);
                    }
                }
            }
        }
    }

    /** Broken, and dark under light, so that it is seen on any glass: what is proposed is not there yet. */
    private static void lay(Graphics2D pen, SceneHint hint, RectMm part, double pxPerMm, double pxPerPt) {
        float dash = (float) (5 * pxPerPt);
        for (double[] line : hint.lines()) {
            Path2D path = new Path2D.Double();
            for (int i = 0; i + 1 < line.length; i += 2) {
                double x = (line[i] - part.leftMm()) * pxPerMm;
                double y = (line[i + 1] - part.topMm()) * pxPerMm;
                if (i == 0) {
                    path.moveTo(x, y);
                } else {
                    path.lineTo(x, y);
                }
            }
            pen.setColor(new Color(INK));
            pen.setStroke(new BasicStroke((float) (3.2 * pxPerPt), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            pen.draw(path);
            pen.setColor(new Color(hint.kind() == SceneHint.Kind.MEND ? YELLOW : SKY_BLUE));
            pen.setStroke(new BasicStroke((float) (1.6 * pxPerPt), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {dash, dash}, 0));
            pen.draw(path);
        }
    }

    private void write(Graphics2D pen, ScenePiece piece, RectMm part, double pxPerMm, double pxPerPt) {
        double roomPx = piece.labelRadiusMm() * pxPerMm;
        double textPx = Math.min(MOST_TEXT_PT * pxPerPt, 1.1 * roomPx * 2 / Math.max(1.6, piece.number().length()));
        if (textPx < LEAST_TEXT_PT * pxPerPt) {
            return; // would not be read
        }
        Font font = new Font(Font.SANS_SERIF, Font.BOLD, 1).deriveFont((float) textPx);
        var glyphs = font.createGlyphVector(pen.getFontRenderContext(), piece.number());
        Rectangle2D ink = glyphs.getVisualBounds();
        double x = (piece.labelXMm() - part.leftMm()) * pxPerMm - ink.getCenterX();
        double y = (piece.labelYMm() - part.topMm()) * pxPerMm - ink.getCenterY();
        Shape text = glyphs.getOutline((float) x, (float) y);
        boolean onLight = lightAt(piece) > 0.18;
        pen.setColor(onLight ? new Color(255, 255, 255, 150) : new Color(0, 0, 0, 150));
        pen.setStroke(new BasicStroke((float) (2.4 * pxPerPt), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        pen.draw(text);
        pen.setColor(onLight ? new Color(INK) : Color.WHITE);
        pen.fill(text);
    }

    /** Light that comes through about a piece's number, 0 to 1: its glass, less what the layers take on the mean there. */
    private double lightAt(ScenePiece piece) {
        double light = ScreenLight.luminance(piece.glass(look.colourway()).rgb());
        int[] covered = new int[1];
        for (SceneLayer layer : scene.layers()) {
            if (look.showsLayer(layer.id())) {
                Coverage coverage = layer.coverage();
                coverage.sampleRow(coverage.levelFor(Math.max(piece.labelRadiusMm(), 0.1)), piece.labelXMm(), 1, piece.labelYMm(), covered, 1);
                light *= layer.paint().through(1, covered[0] / 255.0); // green carries most of what the eye takes for light
            }
        }
        return light;
    }

    /** A ring with a plus in it: there is more colour than is shown. */
    private static void stronger(Graphics2D pen, double xPx, double yPx, double r) {
        Path2D sign = new Path2D.Double(new Ellipse2D.Double(xPx - r, yPx - r, 2 * r, 2 * r));
        sign.append(new Line2D.Double(xPx - r / 2, yPx, xPx + r / 2, yPx), false);
        sign.append(new Line2D.Double(xPx, yPx - r / 2, xPx, yPx + r / 2), false);
        pen.setColor(new Color(INK));
        pen.setStroke(new BasicStroke((float) (r / 2), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        pen.draw(sign);
        pen.setColor(Color.WHITE);
        pen.setStroke(new BasicStroke((float) (r / 5), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        pen.draw(sign);
    }

    private static void mark(Graphics2D pen, Severity severity, double xPx, double yPx, double pxPerPt) {
        double r = MARK_PT * pxPerPt;
        Shape shape = switch (severity) {
            case ERROR -> polygon(xPx, yPx, 0, -r, r, 0, 0, r, -r, 0);
            case WARNING -> polygon(xPx, yPx, 0, -r, r, 0.8 * r, -r, 0.8 * r);
            case NOTE -> new Ellipse2D.Double(xPx - 0.8 * r, yPx - 0.8 * r, 1.6 * r, 1.6 * r);
        };
        pen.setStroke(new BasicStroke((float) (3 * pxPerPt), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        pen.setColor(new Color(INK));
        pen.draw(shape);
        pen.setColor(new Color(switch (severity) {
            case ERROR -> VERMILION;
            case WARNING -> YELLOW;
            case NOTE -> SKY_BLUE;
        }));
        pen.fill(shape);
        pen.setColor(new Color(INK));
        pen.setStroke(new BasicStroke((float) (1.6 * pxPerPt), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        pen.draw(new Line2D.Double(xPx, yPx - 0.35 * r, xPx, yPx + 0.1 * r));
        pen.draw(new Line2D.Double(xPx, yPx + 0.45 * r, xPx, yPx + 0.45 * r));
    }

    private static Path2D polygon(double xPx, double yPx, double... offsets) {
        Path2D path = new Path2D.Double();
        path.moveTo(xPx + offsets[0], yPx + offsets[1]);
        for (int i = 2; i < offsets.length; i += 2) {
            path.lineTo(xPx + offsets[i], yPx + offsets[i + 1]);
        }
        path.closePath();
        return path;
    }
}
