import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.util.Random;

/** Things that recur in the windows: leaves, plumage, reeds, ripples. Chance comes from a seed that the caller names. */
final class Motif {
    private static final double FINE_MM = 0.3;

    private Motif() {
    }

    /** A leaf along its midrib: both edges, veins, and a shadow on its second half. */
    static void leaf(Sheet sheet, Layer trace, Layer matt, double halfWidthMm, double ink, double shade, double... midrib) {
        Curve rib = Curve.through(midrib);
        Curve one = beside(rib, halfWidthMm, 1);
        Curve two = beside(rib, halfWidthMm, -1);
        Path2D lower = two.path();
        lower.append(rib.reversed().path(), true);
        lower.closePath();
        Path2D upper = one.path();
        upper.append(rib.reversed().path(), true);
        upper.closePath();
        double[] mid = rib.at(0.5);
        double reach = halfWidthMm * 1.15;
        matt.linear(lower, mid[0], mid[1], mid[0] + mid[3] * reach, mid[1] - mid[2] * reach, 0, shade, 1, shade * 0.25);
        matt.linear(upper, mid[0], mid[1], mid[0] - mid[3] * reach, mid[1] + mid[2] * reach, 0, shade * 0.05, 1, shade * 0.45);
        trace.stroke(Brush.w(ink * 0.5, ink * 0.9, FINE_MM), one);
        trace.stroke(Brush.w(ink * 0.5, ink * 1.5, FINE_MM), two);
        trace.stroke(Brush.w(ink * 1.6, ink, FINE_MM), rib);
        int veins = (int) Math.max(3, rib.length() / 9);
        Patch a = new Patch(rib, one);
        Patch b = new Patch(rib, two);
        for (int i = 1; i < veins; i++) {
            double u = (double) i / veins;
            trace.stroke(Brush.w(ink * 0.6, FINE_MM * 0.8), a.line(u * 0.9, 0, u * 0.9 + 0.07, 0.4, u * 0.9 + 0.11, 0.8));
            trace.stroke(Brush.w(ink * 0.6, FINE_MM * 0.8), b.line(u * 0.9, 0, u * 0.9 + 0.07, 0.4, u * 0.9 + 0.11, 0.8));
        }
    }

    /** The edge of a leaf on one side of its midrib: full a third of the way up, pointed at both ends. */
    static Curve beside(Curve rib, double halfWidthMm, int side) {
        double[] shares = {0, 0.06, 0.16, 0.3, 0.45, 0.6, 0.75, 0.88, 1};
        double[] full = {0, 0.38, 0.75, 0.98, 1, 0.86, 0.6, 0.3, 0};
        double[][] p = rib.along(shares);
        double[] out = new double[2 * shares.length];
        for (int i = 0; i < shares.length; i++) {
            out[2 * i] = p[i][0] - side * p[i][3] * halfWidthMm * full[i];
            out[2 * i + 1] = p[i][1] + side * p[i][2] * halfWidthMm * full[i];
        }
        return Curve.through(out);
    }

    static Path2D leafShape(Curve rib, double halfWidthMm) {
        Path2D path = beside(rib, halfWidthMm, 1).path();
        path.append(beside(rib, halfWidthMm, -1).reversed().path(), true);
        path.closePath();
        return path;
    }

    /** Rows of overlapping feather tips between u0 and u1, whose tips point along u. */
    static void scallops(Layer trace, Patch field, double u0, double u1, int rows, double v0, double v1, int across, double ink) {
        double step = (u1 - u0) / rows;
        for (int row = 0; row < rows; row++) {
            double u = u0 + row * step;
            double shift = row % 2 == 0 ? 0 : 0.5;
            for (int k = 0; k < across; k++) {
                double a = v0 + (v1 - v0) * (k + shift) / across;
                double b = v0 + (v1 - v0) * (k + 1 + shift) / across;
                if (b > v1 + 1e-9) {
                    continue;
                }
                double m = (a + b) / 2;
                double w = b - a;
                trace.stroke(Brush.w(FINE_MM * 0.8, ink, FINE_MM * 0.8), field.line(u, a + w * 0.03, u + step * 0.75, a + w * 0.2, u + step * 1.05, m,
                        u + step * 0.75, b - w * 0.2, u, b - w * 0.03));
                trace.stroke(Brush.w(FINE_MM, ink * 0.55, FINE_MM * 0.7), field.line(u + step * 0.3, m, u + step * 0.62, m, u + step * 0.88, m));
            }
        }
    }

    /** Shadow under each feather tip of {@link #scallops}: soft, dark at the root and light at the tip. */
    static void scallopShade(Layer matt, Patch field, double u0, double u1, int rows, double v0, double v1, int across, double density) {
        double step = (u1 - u0) / rows;
        for (int row = 0; row < rows; row++) {
            double u = u0 + row * step;
            double shift = row % 2 == 0 ? 0 : 0.5;
            for (int k = 0; k < across; k++) {
                double a = v0 + (v1 - v0) * (k + shift) / across;
                double b = v0 + (v1 - v0) * (k + 1 + shift) / across;
                if (b > v1 + 1e-9) {
                    continue;
                }
                double m = (a + b) / 2;
                double[] root = field.points(u + step * 0.1, m);
                double[] tip = field.points(u + step * 1.05, m);
                Curve edge = field.line(u, a, u + step * 0.75, a + (b - a) * 0.2, u + step * 1.05, m, u + step * 0.75, b - (b - a) * 0.2, u, b);
                matt.linear(edge.path(), root[0], root[1], tip[0], tip[1], 0, density, 0.7, density * 0.25, 1, 0);
            }
        }
    }

    /** Long feathers side by side: each a line along u from v at u0 to v at u1, with a few barbs. */
    static void quills(Layer trace, Patch field, double u0, double u1, double v0, double v1, int count, double ink, int barbs) {
        for (int i = 0; i <= count; i++) {
            double v = v0 + (v1 - v0) * i / count;
            trace.stroke(Brush.w(FINE_MM, ink, ink * 0.8, FINE_MM), field.run(u0, v, u1, v));
            if (i == count) {
                continue;
            }
            double w = (v1 - v0) / count;
            double mid = v + w * 0.42;
            trace.stroke(Brush.w(FINE_MM, ink * 0.5, FINE_MM), field.run(u0 + 0.04, mid, u1 - 0.03, mid));
            for (int b = 0; b < barbs; b++) {
                double u = u0 + (u1 - u0) * (0.12 + 0.8 * b / barbs);
                trace.stroke(Brush.w(FINE_MM, FINE_MM * 0.7), field.line(u, mid, u + (u1 - u0) * 0.055, mid + w * 0.38));
            }
        }
    }

    /** Short tapered dabs that follow u, scattered evenly over part of a field. */
    static void dabs(Layer trace, Patch field, double u0, double u1, double v0, double v1, int columns, int rows, double lengthU, double ink, long seed) {
        Random chance = new Random(seed);
        for (int c = 0; c < columns; c++) {
            for (int r = 0; r < rows; r++) {
                double u = u0 + (u1 - u0) * (c + (r % 2) * 0.5 + 0.3 * (chance.nextDouble() - 0.5)) / columns;
                double v = v0 + (v1 - v0) * (r + 0.5 + 0.4 * (chance.nextDouble() - 0.5)) / rows;
                double l = lengthU * (0.7 + 0.6 * chance.nextDouble());
                trace.stroke(Brush.w(FINE_MM, ink * (0.7 + 0.6 * chance.nextDouble()), FINE_MM * 0.8), field.run(u, v, Math.min(1, u + l), v));
            }
        }
    }

    /** Ripples: long swelling strokes across a field, thinner and closer towards v0. */
    static void ripples(Layer trace, Patch field, double u0, double u1, double v0, double v1, int rows, int perRow, double ink, long seed) {
        Random chance = new Random(seed);
        for (int r = 0; r < rows; r++) {
            double depth = (r + 0.5) / rows;
            double v = v0 + (v1 - v0) * depth;
            for (int k = 0; k < perRow; k++) {
                double length = (u1 - u0) / perRow * (0.2 + 0.75 * StrictMath.sqrt(chance.nextDouble()));
                double u = u0 + (u1 - u0) * (k + chance.nextDouble() * 0.5) / perRow;
                double lift = (v1 - v0) / rows * (0.06 + 0.26 * chance.nextDouble()) * (chance.nextBoolean() ? 1 : -1);
                double wide = ink * (0.5 + 0.6 * depth) * (0.7 + 0.5 * chance.nextDouble());
                trace.stroke(Brush.w(FINE_MM * 0.8, wide, wide * 0.5, FINE_MM * 0.8), field.line(u, v, u + length * 0.3, v + lift, u + length * 0.65,
                        v - lift * 0.7, u + length, v + lift * 0.3));
            }
        }
    }

    /** A reed's plume around the end of its stem: drooping strokes on both sides, with a soft body of shade and stain. */
    static void plume(Layer trace, Layer matt, Layer stain, Curve axis, double halfWidthMm, double ink, long seed) {
        Random chance = new Random(seed);
        Path2D body = leafShape(axis, halfWidthMm);
        double[] mid = axis.at(0.5);
        if (stain != null) {
            stain.linear(body, mid[0] + mid[3] * halfWidthMm, mid[1] - mid[2] * halfWidthMm, mid[0] - mid[3] * halfWidthMm,
                    mid[1] + mid[2] * halfWidthMm, 0, 0.25, 0.5, 0.85, 1, 0.3);
        }
        matt.linear(body, mid[0] + mid[3] * halfWidthMm, mid[1] - mid[2] * halfWidthMm, mid[0] - mid[3] * halfWidthMm, mid[1] + mid[2] * halfWidthMm, 0,
                0.3, 0.6, 0.08, 1, 0.02);
        int n = (int) (axis.length() / 3.2);
        for (int i = 0; i < n; i++) {
            double t = (double) i / n;
            double[] p = axis.at(t);
            double full = halfWidthMm * StrictMath.sin(StrictMath.PI * Math.min(1, 0.12 + 0.88 * t)) * (0.75 + 0.5 * chance.nextDouble());
            int side = i % 2 == 0 ? 1 : -1;
            double run = halfWidthMm * (0.9 + 0.7 * chance.nextDouble());
            double nx = -p[3] * side;
            double ny = p[2] * side;
            trace.stroke(Brush.w(ink * 0.45, ink, FINE_MM), p[0], p[1], p[0] + p[2] * run * 0.5 + nx * full * 0.45, p[1] + p[3] * run * 0.5 + ny * full * 0.45,
                    p[0] + p[2] * run * 0.85 + nx * full, p[1] + p[3] * run * 0.85 + ny * full);
        }
        trace.stroke(Brush.w(ink * 1.3, ink, FINE_MM), axis);
    }

    /** An eye: dark with a lit spot, ringed. */
    static void eye(Layer trace, double cx, double cy, double r) {
        Area dark = new Area(Curve.circle(cx, cy, r).path());
        dark.subtract(new Area(Curve.circle(cx - r * 0.32, cy - r * 0.36, r * 0.3).path()));
        trace.solid(dark);
        trace.stroke(Brush.w(FINE_MM, r * 0.22, FINE_MM), Curve.arc(cx, cy, r * 1.5, -200, 20));
        trace.stroke(Brush.w(FINE_MM, r * 0.12, FINE_MM), Curve.arc(cx, cy, r * 1.55, 40, 140));
    }

    /** Fine parallel strokes laid beside a line, as an engraver turns a form; they leave the line at the slant given. */
    static void hatch(Layer trace, Curve line, double from, double to, int count, double lengthMm, double slantDeg, double ink, long seed) {
        Random chance = new Random(seed);
        double c = StrictMath.cos(StrictMath.toRadians(slantDeg));
        double s = StrictMath.sin(StrictMath.toRadians(slantDeg));
        for (int i = 0; i < count; i++) {
            double[] p = line.at(from + (to - from) * (i + 0.3 * chance.nextDouble()) / count);
            double swell = StrictMath.sin(StrictMath.PI * (i + 0.5) / count);
            double l = lengthMm * (0.45 + 0.55 * swell) * (0.8 + 0.4 * chance.nextDouble());
            double dx = p[2] * c - p[3] * s;
            double dy = p[2] * s + p[3] * c;
            double bend = l * 0.12;
            trace.stroke(Brush.w(ink, ink * 0.7, FINE_MM * 0.8), p[0], p[1], p[0] + dx * l * 0.5 - dy * bend, p[1] + dy * l * 0.5 + dx * bend,
                    p[0] + dx * l, p[1] + dy * l);
        }
    }

    /** A soft shadow along a line: many thin breaths of paint, each narrower than the last. */
    static void softEdge(Layer matt, Curve line, double widthMm, double density) {
        int steps = (int) Math.max(8, Math.min(18, widthMm / 3));
        for (int i = 1; i <= steps; i++) {
            double wide = widthMm * i / steps;
            matt.flat(Brush.wash(line, wide * 0.1, wide * 0.9, wide, wide * 0.9, wide * 0.1), density / steps);
        }
    }

    /** Long combed strokes that run with a field, each row set off against the last. */
    static void combed(Layer trace, Patch field, double u0, double u1, double v0, double v1, int rows, int perRow, double ink, long seed) {
        Random chance = new Random(seed);
        for (int r = 0; r < rows; r++) {
            double v = v0 + (v1 - v0) * (r + 0.5 + 0.5 * (chance.nextDouble() - 0.5)) / rows;
            for (int k = 0; k < perRow; k++) {
                double gap = (u1 - u0) / perRow;
                double u = u0 + gap * (k + (r % 2) * 0.4 + 0.35 * chance.nextDouble());
                double length = gap * (0.35 + 0.55 * chance.nextDouble());
                double drift = (v1 - v0) / rows * 0.5 * (chance.nextDouble() - 0.5);
                double end = Math.min(u1, u + length);
                if (end - u > gap * 0.15) {
                    trace.stroke(Brush.w(FINE_MM * 0.8, ink * (0.6 + 0.7 * chance.nextDouble()), FINE_MM * 0.8), field.line(u, v, u + (end - u) * 0.35,
                            v + drift * 0.2, u + (end - u) * 0.7, v + drift, end, v + drift * 1.1));
                }
            }
        }
    }

    /** Grains of sand: small round marks, thinning out towards v1. */
    static void grains(Layer trace, Patch field, double u0, double u1, double v0, double v1, int count, double sizeMm, long seed) {
        Random chance = new Random(seed);
        for (int i = 0; i < count; i++) {
            double t = chance.nextDouble();
            double[] p = field.points(u0 + (u1 - u0) * chance.nextDouble(), v0 + (v1 - v0) * t * t);
            double r = sizeMm * (0.5 + 0.6 * chance.nextDouble());
            trace.solid(Curve.loop(p[0] - r * 1.3, p[1], p[0], p[1] - r * 0.7, p[0] + r * 1.2, p[1] + r * 0.2, p[0] + r * 0.1, p[1] + r * 0.7).path());
        }
    }

    /** A blade of reed or grass: both edges, a rib and a breath of shade. */
    static void blade(Layer trace, Layer matt, double wideMm, double ink, double density, double... points) {
        Curve line = Curve.through(points);
        Area edge = new Area(Brush.stroke(line, wideMm, wideMm * 0.95, wideMm * 0.7, 0.4));
        matt.flat(edge, density);
        edge.subtract(new Area(Brush.stroke(line.moved(-ink * 0.25, 0), Math.max(0.1, wideMm - 2 * ink), Math.max(0.1, wideMm * 0.95 - 2 * ink), Math.max(0.1, wideMm * 0.7 - 1.6 * ink), 0.05)));
        trace.solid(edge);
        trace.stroke(Brush.w(ink * 0.8, ink * 0.6, FINE_MM), line);
    }

    /** Paint left along the edges of each piece and wiped away in its middle, as a badger brush leaves it. */
    static void vignette(Sheet sheet, Layer matt, double density, java.util.function.Predicate<Arrangement.Face> which) {
        for (Arrangement.Face face : sheet.faces(sheet.cartoon.lines())) {
            if (which.test(face)) {
                java.awt.geom.Rectangle2D box = face.path().getBounds2D();
                double rx = box.getWidth() * 0.62;
                double ry = box.getHeight() * 0.62;
                matt.radial(Sheet.thinned(face, 0.2).path(), face.labelX() * 0.5 + box.getCenterX() * 0.5, face.labelY() * 0.5 + box.getCenterY() * 0.5 - box.getHeight() * 0.08,
                        rx, ry, 0, 0.35, 0, 0.75, density * 0.45, 1, density);
            }
        }
    }

    static Path2D closed(Curve... runs) {
        Path2D path = runs[0].path();
        for (int i = 1; i < runs.length; i++) {
            path.append(runs[i].path(), true);
        }
        path.closePath();
        return path;
    }

    static Shape rectangle(double x, double y, double width, double height) {
        return new java.awt.geom.Rectangle2D.Double(x, y, width, height);
    }
}
