package saddlebar.cartoon;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;

import javax.imageio.ImageIO;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

import saddlebar.model.problem.PlaceMm;
import saddlebar.model.problem.Problem;

/** Draws a cartoon for a person to look at, into the folder named by the system property {@code cartoon.pictures}; else does nothing. */
final class Pictures {
    private static final int WIDTH_PX = 1400;

    private Pictures() {
    }

    static void draw(String name, Cartoon cartoon) {
        String folder = System.getProperty("cartoon.pictures");
        if (folder == null) {
            return;
        }
        double scale = Math.min(WIDTH_PX / cartoon.widthMm(), WIDTH_PX / cartoon.heightMm());
        var image = new BufferedImage((int) (cartoon.widthMm() * scale) + 80, (int) (cartoon.heightMm() * scale) + 80,
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(new Color(40, 40, 40));
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.translate(40, 40);
        double left = cartoon.panel().getEnvelopeInternal().getMinX();
        double top = cartoon.panel().getEnvelopeInternal().getMinY();
        g.scale(scale, scale);
        g.translate(-left, -top);
        for (CartoonPiece piece : cartoon.pieces()) {
            g.setColor(Color.getHSBColor(piece.number() * 0.381966f, 0.35f, 0.95f));
            g.fill(path(piece.glass()));
        }
        g.setStroke(new BasicStroke((float) (0.7 / scale)));
        g.setColor(Color.RED);
        cartoon.pieces().forEach(piece -> g.draw(path(piece.face())));
        for (CartoonPiece piece : cartoon.pieces()) {
            g.setColor(new Color(0, 0, 0, 40));
            double r = piece.inradiusMm();
            g.draw(new Ellipse2D.Double(piece.label().xMm() - r, piece.label().yMm() - r, 2 * r, 2 * r));
            g.setColor(Color.BLACK);
            float size = (float) Math.max(4 / scale, piece.numberHeightMm(12));
            g.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 1).deriveFont(size));
            String number = Integer.toString(piece.number());
            g.drawString(number, (float) (piece.label().xMm() - size * 0.28 * number.length()), (float) (piece.label().yMm() + size * 0.35));
        }
        for (Problem problem : cartoon.problems()) {
            problem.at().ifPresent(at -> mark(g, at, problem, scale));
        }
        g.dispose();
        try {
            ImageIO.write(image, "png", new File(folder, name + ".png"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void mark(Graphics2D g, PlaceMm at, Problem problem, double scale) {
        g.setColor(switch (problem.severity()) {
            case ERROR -> Color.RED;
            case WARNING -> new Color(200, 60, 200);
            case NOTE -> Color.BLUE;
        });
        double r = 6 / scale;
        g.setStroke(new BasicStroke((float) (2 / scale)));
        g.draw(new Ellipse2D.Double(at.xMm() - r, at.yMm() - r, 2 * r, 2 * r));
        g.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 1).deriveFont((float) (12 / scale)));
        g.drawString(problem.code(), (float) (at.xMm() + 1.3 * r), (float) at.yMm());
    }

    private static Path2D path(Geometry geometry) {
        var path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            if (geometry.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                add(path, polygon.getExteriorRing());
                for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
                    add(path, polygon.getInteriorRingN(hole));
                }
            }
        }
        return path;
    }

    private static void add(Path2D path, LineString ring) {
        Coordinate[] points = ring.getCoordinates();
        path.moveTo(points[0].x, points[0].y);
        for (int i = 1; i < points.length; i++) {
            path.lineTo(points[i].x, points[i].y);
        }
        path.closePath();
    }
}
