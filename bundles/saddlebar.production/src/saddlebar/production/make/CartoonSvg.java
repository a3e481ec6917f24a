package saddlebar.production.make;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

import saddlebar.cartoon.Relief;
import saddlebar.model.art.DrawnLine;
import saddlebar.model.file.PendingFile;
import saddlebar.model.problem.PlaceMm;
import saddlebar.model.problem.Problem;

/**
 * The cut glass of a panel as a drawing at true size (SVG 1.1, one user unit a mm): outlines as cut, numbers at their labels, problems as rings.
 * For looking, for a plotter, and for laying under the work. Same pieces, same bytes.
 */
public final class CartoonSvg {
    private static final double BORDER_MM = 5;
    private static final double MOST_NUMBER_MM = 8;
    private static final double LEAST_NUMBER_MM = 1.6;

    private CartoonSvg() {
    }

    /** A piece as drawn: its number, its glass, and the middle and radius of the largest circle in it. */
    public record Shape(int number, Polygon glass, PlaceMm label, double inradiusMm) {
    }

    /** @param reliefs proposals against deep inside curves, drawn as broken lines */
    public static void write(Path target, String title, List<Shape> pieces, List<Problem> problems, List<Relief> reliefs) throws IOException {
        try (PendingFile pending = PendingFile.beside(target)) {
            pending.out().write(text(title, pieces, problems, reliefs).getBytes(StandardCharsets.UTF_8));
            pending.commit();
        }
    }

    static String text(String title, List<Shape> pieces, List<Problem> problems, List<Relief> reliefs) {
        Envelope box = new Envelope();
        pieces.forEach(piece -> box.expandToInclude(piece.glass().getEnvelopeInternal()));
        if (box.isNull()) {
            box.init(0, 1, 0, 1);
        }
        box.expandBy(BORDER_MM);
        StringBuilder svg = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        svg.append(String.format(Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\" viewBox=\"%s %s %s %s\">\n<title>%s</title>\n", mm(box.getWidth()),
                mm(box.getHeight()), mm(box.getMinX()), mm(box.getMinY()), mm(box.getWidth()), mm(box.getHeight()), escaped(title)));
        svg.append("<g id=\"pieces\" fill=\"none\" stroke=\"#000\" stroke-width=\"0.25\">\n");
        for (Shape piece : pieces) {
            svg.append("<path id=\"piece-").append(piece.number()).append("\" fill-rule=\"evenodd\" d=\"").append(path(piece.glass())).append("\"/>\n");
        }
        svg.append("</g>\n");
        if (!reliefs.isEmpty()) {
            svg.append("<g id=\"relief-cuts\" fill=\"none\" stroke=\"#0072b2\" stroke-width=\"0.25\" stroke-dasharray=\"2 1\">\n");
            for (Relief relief : reliefs) {
                relief.lines().forEach(line -> svg.append("<path d=\"").append(path(line)).append("\"><title>").append(escaped(relief.message()))
                        .append("</title></path>\n"));
            }
            svg.append("</g>\n");
        }
        svg.append("<g id=\"numbers\" font-family=\"sans-serif\" text-anchor=\"middle\" fill=\"#000\">\n");
        for (Shape piece : pieces) {
            double height = Math.max(LEAST_NUMBER_MM, Math.min(0.6 * piece.inradiusMm(), MOST_NUMBER_MM));
            svg.append(String.format(Locale.ROOT, "<text x=\"%s\" y=\"%s\" font-size=\"%s\">%d</text>\n", mm(piece.label().xMm()),
                    mm(piece.label().yMm() + 0.36 * height), mm(height), piece.number()));
        }
        svg.append("</g>\n");
        if (problems.stream().anyMatch(problem -> problem.at().isPresent())) {
            svg.append("<g id=\"problems\" fill=\"none\" stroke=\"#d55e00\" stroke-width=\"0.5\">\n");
            for (Problem problem : problems) {
                problem.at().ifPresent(at -> svg.append(String.format(Locale.ROOT, "<circle cx=\"%s\" cy=\"%s\" r=\"3\"><title>%s: %s</title></circle>\n",
                        mm(at.xMm()), mm(at.yMm()), problem.code(), escaped(problem.message()))));
            }
            svg.append("</g>\n");
        }
        return svg.append("</svg>\n").toString();
    }

    private static String path(Polygon polygon) {
        StringBuilder path = new StringBuilder();
        if (!polygon.isEmpty()) {
            append(path, polygon.getExteriorRing());
            for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
                append(path, polygon.getInteriorRingN(hole));
            }
        }
        return path.toString();
    }

    private static String path(DrawnLine line) {
        StringBuilder path = new StringBuilder();
        for (int i = 0; i < line.points(); i++) {
            path.append(i == 0 ? "M" : " ").append(mm(line.x(i))).append(' ').append(mm(line.y(i)));
        }
        return path.toString();
    }

    private static void append(StringBuilder path, LinearRing ring) {
        CoordinateSequence points = ring.getCoordinateSequence();
        for (int i = 0; i < points.size() - 1; i++) {
            path.append(i == 0 ? "M" : " ").append(mm(points.getX(i))).append(' ').append(mm(points.getY(i)));
        }
        path.append("Z");
    }

    /** A thousandth of a mm is finer than any cutter. */
    private static String mm(double value) {
        String text = String.format(Locale.ROOT, "%.3f", value + 0.0);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "").replaceAll("^-0$", "0") : text;
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
    }
}
