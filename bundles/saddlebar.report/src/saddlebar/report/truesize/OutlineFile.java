package saddlebar.report.truesize;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

import saddlebar.model.file.Hashes;
import saddlebar.model.file.PendingFile;
import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Require;

/**
 * Outlines for a machine that cuts: a plotter for patterns, a waterjet for glass. One closed path a piece (its holes with it), named by the piece's number,
 * true mm, a hairline without fill and nothing else. The outlines are those of the glass as cut, so the allowance for foil or heart is off already;
 * a cutter that takes away a width of its own (kerf) is led outside by half of it. SVG 1.1 with one user unit a mm, and PDF (ISO 32000-1) with an
 * optional content group a piece, so that a drawing program shows each by name. Same pieces, same bytes.
 */
public final class OutlineFile {
    /** Widest kerf, mm. */
    public static final double MOST_KERF_MM = 5;
    private static final double HAIR_MM = 0.1;
    private static final double BORDER_MM = 5;
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private record Named(String name, List<double[]> rings) {
    }

    private final String title;
    private final double widthMm;
    private final double heightMm;
    private final List<Named> paths;

    /** Moved so that the drawing begins a border from the page's left top; holes by the even-odd rule. */
    private OutlineFile(String title, List<Named> found) {
        double[] box = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (Named path : found) {
            for (double[] ring : path.rings()) {
                for (int i = 0; i < ring.length; i += 2) {
                    box[0] = Math.min(box[0], ring[i]);
                    box[1] = Math.min(box[1], ring[i + 1]);
                    box[2] = Math.max(box[2], ring[i]);
                    box[3] = Math.max(box[3], ring[i + 1]);
                }
            }
        }
        this.title = title;
        this.widthMm = box[2] - box[0] + 2 * BORDER_MM;
        this.heightMm = box[3] - box[1] + 2 * BORDER_MM;
        this.paths = found.stream().map(path -> new Named(path.name(),
                path.rings().stream().map(ring -> CutlineDrawing.moved(ring, BORDER_MM - box[0], BORDER_MM - box[1])).toList())).toList();
    }

    /**
     * @param pieces as cut, in the places they have in the panel or on a sheet
     * @param kerfMm width that the cutter takes away, 0 to {@value #MOST_KERF_MM}
     * @throws Refusal if there is no piece
     */
    public static OutlineFile of(String title, List<PatternPiece> pieces, double kerfMm) {
        Require.within("kerfMm", kerfMm, 0, MOST_KERF_MM);
        Set<String> names = new HashSet<>();
        List<Named> paths = new ArrayList<>();
        for (PatternPiece piece : pieces) {
            if (!piece.outline().isEmpty()) {
                String name = piece.label();
                for (int again = 2; !names.add(name); again++) {
                    name = piece.label() + " (" + again + ")";
                }
                paths.add(new Named(name, kerfMm == 0 ? piece.rings() : widened(piece, kerfMm / 2)));
            }
        }
        if (paths.isEmpty()) {
            throw new Refusal(title, "it has no pieces yet", "make its pieces first");
        }
        return new OutlineFile(title, paths);
    }

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }

    private static List<double[]> widened(PatternPiece piece, double byMm) {
        List<double[]> rings = piece.rings();
        LinearRing[] holes = new LinearRing[rings.size() - 1];
        for (int i = 1; i < rings.size(); i++) {
            holes[i - 1] = ring(rings.get(i));
        }
        Polygon glass = GEOMETRY.createPolygon(ring(rings.get(0)), holes);
        Geometry wide = BufferOp.bufferOp(glass, byMm, new BufferParameters(16, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 3));
        if (!(wide instanceof Polygon polygon)) {
            throw new IllegalStateException("piece " + piece.label() + " falls apart when it is widened by " + byMm + " mm");
        }
        List<double[]> found = new ArrayList<>();
        found.add(xy(polygon.getExteriorRing()));
        for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
            found.add(xy(polygon.getInteriorRingN(hole)));
        }
        return found;
    }

    private static LinearRing ring(double[] xy) {
        Coordinate[] points = new Coordinate[xy.length / 2 + 1];
        for (int i = 0; i < points.length - 1; i++) {
            points[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
        }
        points[points.length - 1] = points[0].copy();
        return GEOMETRY.createLinearRing(points);
    }

    private static double[] xy(LinearRing ring) {
        double[] xy = new double[2 * (ring.getNumPoints() - 1)];
        for (int i = 0; i < xy.length / 2; i++) {
            xy[2 * i] = ring.getCoordinateN(i).getX();
            xy[2 * i + 1] = ring.getCoordinateN(i).getY();
        }
        return xy;
    }

    /** SVG 1.1: the width and height of the page in mm, one user unit a mm. */
    public String svg() {
        StringBuilder svg = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        svg.append(
                String.format(Locale.ROOT, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$.4fmm\" height=\"%2$.4fmm\" viewBox=\"0 0 %1$.4f %2$.4f\">\n",
                        widthMm, heightMm));
        svg.append("<title>").append(escaped(title)).append("</title>\n<g fill=\"none\" stroke=\"#000\" stroke-width=\"").append(HAIR_MM).append("\">\n");
        for (Named path : paths) {
            svg.append("<path id=\"piece-").append(path.name().replaceAll("[^A-Za-z0-9._-]+", "-")).append("\" d=\"");
            for (double[] ring : path.rings()) {
                for (int i = 0; i < ring.length; i += 2) {
                    svg.append(String.format(Locale.ROOT, "%s%.4f %.4f", i == 0 ? "M" : "L", ring[i], ring[i + 1]));
                }
                svg.append('Z');
            }
            svg.append("\"><title>").append(escaped(path.name())).append("</title></path>\n");
        }
        return svg.append("</g>\n</svg>\n").toString();
    }

    public void writeSvg(Path target) throws IOException {
        try (PendingFile pending = PendingFile.beside(target)) {
            pending.out().write(svg().getBytes(StandardCharsets.UTF_8));
            pending.commit();
        }
    }

    public void writePdf(Path target, String software) throws IOException {
        try (PendingFile pending = PendingFile.beside(target); PDDocument document = new PDDocument()) {
            double userUnit = TrueSizePdf.userUnit(widthMm, heightMm);
            PDPage page = TrueSizePdf.sized(document, widthMm, heightMm, userUnit);
            PDOptionalContentProperties groups = new PDOptionalContentProperties();
            document.getDocumentCatalog().setOCProperties(groups);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                PageInk ink = new PageInk(content, null, 0, heightMm, 1, userUnit);
                for (Named path : paths) {
                    PDOptionalContentGroup group = new PDOptionalContentGroup(path.name());
                    groups.addGroup(group);
                    content.beginMarkedContent(COSName.OC, group);
                    ink.draw(Ink.Line.full(path.rings(), true, HAIR_MM, 0));
                    content.endMarkedContent();
                }
            }
            document.getDocumentInformation().setTitle(title);
            document.getDocumentInformation().setCreator(software);
            document.setDocumentId(Long.parseUnsignedLong(Hashes.sha256(software + svg()).substring(0, 16), 16));
            document.save(pending.out(), CompressParameters.NO_COMPRESSION);
            pending.commit();
        }
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
