package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.locationtech.jts.triangulate.VoronoiDiagramBuilder;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.Problem;
import saddlebar.model.work.Work;

/** Cutlines for tests: shapes by hand, flattened to 0.01 mm as artwork is, and drawings of any size from a seed. */
final class Drawings {
    static final double FLATNESS_MM = 0.01;
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private Drawings() {
    }

    static DrawnLine line(String id, double... xy) {
        return new DrawnLine(id, 0, xy, false);
    }

    static DrawnLine closed(String id, double... xy) {
        return new DrawnLine(id, 0, xy, true);
    }

    static DrawnLine rectangle(String id, double x, double y, double width, double height) {
        return closed(id, x, y, x + width, y, x + width, y + height, x, y + height);
    }

    /** Arc by angles in degrees, as many steps as the flatness asks for, both ends exact. */
    static double[] arc(double cx, double cy, double rx, double ry, double fromDeg, double toDeg) {
        double step = 2 * Math.acos(1 - FLATNESS_MM / Math.max(rx, ry));
        int steps = (int) Math.max(2, Math.ceil(Math.toRadians(Math.abs(toDeg - fromDeg)) / step));
        double[] xy = new double[2 * steps + 2];
        for (int i = 0; i <= steps; i++) {
            double angle = Math.toRadians(fromDeg + (toDeg - fromDeg) * i / steps);
            xy[2 * i] = cx + rx * Math.cos(angle);
            xy[2 * i + 1] = cy + ry * Math.sin(angle);
        }
        return xy;
    }

    static DrawnLine circle(String id, double cx, double cy, double radius) {
        return ellipse(id, cx, cy, radius, radius);
    }

    static DrawnLine ellipse(String id, double cx, double cy, double rx, double ry) {
        double[] xy = arc(cx, cy, rx, ry, 0, 360);
        return new DrawnLine(id, 0, Arrays.copyOf(xy, xy.length - 2), true);
    }

    static double[] joined(double[]... parts) {
        return Arrays.stream(parts).flatMapToDouble(Arrays::stream).toArray();
    }

    /** A wave from (x0, y) to (x1, y), so finely stepped that its steps turn by less than 3 degrees. */
    static double[] wave(double x0, double x1, double y, double amplitude, double period) {
        int steps = (int) Math.ceil(Math.abs(x1 - x0) / period * 120);
        double[] xy = new double[2 * steps + 2];
        for (int i = 0; i <= steps; i++) {
            double x = x0 + (x1 - x0) * i / steps;
            xy[2 * i] = x;
            xy[2 * i + 1] = y + amplitude * Math.sin(2 * Math.PI * (x - x0) / period);
        }
        return xy;
    }

    static List<DrawnLine> ofWkt(String wkt) {
        Geometry geometry = read(wkt);
        List<DrawnLine> lines = new ArrayList<>();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            Geometry part = geometry.getGeometryN(i);
            if (part instanceof Polygon polygon) {
                lines.add(ofLine("p" + i, polygon.getExteriorRing()));
                for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
                    lines.add(ofLine("p" + i + "h" + hole, polygon.getInteriorRingN(hole)));
                }
            } else {
                lines.add(ofLine("l" + i, (LineString) part));
            }
        }
        return lines;
    }

    static DrawnLine ofLine(String id, LineString line) {
        Coordinate[] points = line.getCoordinates();
        double[] xy = new double[2 * points.length];
        for (int i = 0; i < points.length; i++) {
            xy[2 * i] = points[i].x;
            xy[2 * i + 1] = points[i].y;
        }
        return new DrawnLine(id, 0, xy, false);
    }

    static Geometry read(String wkt) {
        try {
            return new WKTReader().read(wkt);
        } catch (ParseException e) {
            throw new IllegalArgumentException(wkt, e);
        }
    }

    static Polygon polygon(String wkt) {
        return (Polygon) read(wkt);
    }

    static Cartoon make(DrawnLine... lines) {
        return make(List.of(lines));
    }

    static Cartoon make(List<DrawnLine> lines) {
        return CartoonMaker.make(lines, CartoonSettings.defaults(), Work.UNWATCHED);
    }

    static List<String> codes(Cartoon cartoon) {
        return cartoon.problems().stream().map(Problem::code).toList();
    }

    static List<Problem> problems(Cartoon cartoon, String code) {
        return cartoon.problems().stream().filter(problem -> problem.code().equals(code)).toList();
    }

    /**
     * A panel as a glazier would draw it: cells round jittered points, each joint a stroke of its own with a bend, in a frame.
     *
     * @param across cells across and down
     * @param steps  straight steps of a stroke
     */
    static List<DrawnLine> cells(int across, double width, double height, int steps, double bend, long seed) {
        var random = new Random(seed);
        List<Coordinate> sites = new ArrayList<>();
        for (int i = 0; i < across; i++) {
            for (int j = 0; j < across; j++) {
                sites.add(new Coordinate((i + 0.5 + 0.6 * (random.nextDouble() - 0.5)) * width / across,
                        (j + 0.5 + 0.6 * (random.nextDouble() - 0.5)) * height / across));
            }
        }
        var voronoi = new VoronoiDiagramBuilder();
        voronoi.setSites(sites);
        var box = new Envelope(0, width, 0, height);
        voronoi.setClipEnvelope(box);
        Geometry cells = voronoi.getDiagram(GEOMETRY);
        Geometry frame = GEOMETRY.toGeometry(box);
        var joints = new LinkedHashSet<List<Double>>();
        for (int i = 0; i < cells.getNumGeometries(); i++) {
            Coordinate[] ring = cells.getGeometryN(i).intersection(frame).norm().getCoordinates();
            for (int k = 0; k + 1 < ring.length; k++) {
                boolean ascending = ring[k].compareTo(ring[k + 1]) < 0;
                Coordinate a = ring[ascending ? k : k + 1];
                Coordinate b = ring[ascending ? k + 1 : k];
                joints.add(List.of(rounded(a.x), rounded(a.y), rounded(b.x), rounded(b.y)));
            }
        }
        List<DrawnLine> lines = new ArrayList<>();
        lines.add(rectangle("frame", 0, 0, width, height));
        for (List<Double> joint : joints) {
            var a = new Coordinate(joint.get(0), joint.get(1));
            var b = new Coordinate(joint.get(2), joint.get(3));
            if (!a.equals2D(b) && !onFrame(a, b, width, height)) {
                lines.add(new DrawnLine("s" + lines.size(), lines.size(), bent(a, b, steps, bend * (random.nextDouble() - 0.5)), false));
            }
        }
        return lines;
    }

    private static double rounded(double value) {
        return Math.round(value * 1e4) / 1e4;
    }

    private static boolean onFrame(Coordinate a, Coordinate b, double width, double height) {
        double eps = 1e-6;
        return Math.max(a.x, b.x) < eps || Math.max(a.y, b.y) < eps || Math.min(a.x, b.x) > width - eps || Math.min(a.y, b.y) > height - eps;
    }

    static double[] bent(Coordinate a, Coordinate b, int steps, double bend) {
        double[] xy = new double[2 * steps + 2];
        for (int i = 0; i <= steps; i++) {
            double t = (double) i / steps;
            double aside = 4 * t * (1 - t) * bend;
            xy[2 * i] = a.x + t * (b.x - a.x) - aside * (b.y - a.y);
            xy[2 * i + 1] = a.y + t * (b.y - a.y) + aside * (b.x - a.x);
        }
        return xy;
    }
}
