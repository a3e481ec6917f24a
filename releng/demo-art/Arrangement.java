import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The faces between lines that cross and meet: where the lines of a cartoon close a region, there a piece of glass will be.
 *
 * <p>All crossings are found pair by pair; the lines are split there, ends that lead nowhere are dropped, and each face is walked by
 * taking the next line in turn at every node. Good for a few hundred lines.
 */
final class Arrangement {
    /** One face: its outline as x, y pairs, its area in mm2 and a place well inside. */
    record Face(double[][] outline, double areaMm2, double labelX, double labelY, double inradiusMm) {
        Path2D path() {
            Path2D path = new Path2D.Double();
            path.moveTo(outline[0][0], outline[0][1]);
            for (int i = 1; i < outline.length; i++) {
                path.lineTo(outline[i][0], outline[i][1]);
            }
            path.closePath();
            return path;
        }
    }

    /** Where line a is crossed by line b. */
    record Crossing(double x, double y, int segment, double share) {
    }

    private record Edge(int from, int to, List<double[]> points) {
    }

    private final List<double[]> nodes = new ArrayList<>();
    private final Map<Long, Integer> nodeAt = new HashMap<>();
    private final List<Edge> edges = new ArrayList<>();

    private Arrangement() {
    }

    /** Every crossing of line a with line b, in the order of a. Lines are sample points x, y. */
    static List<Crossing> crossings(double[][] a, double[][] b) {
        List<Crossing> found = new ArrayList<>();
        for (int i = 0; i + 1 < a.length; i++) {
            double x0 = Math.min(a[i][0], a[i + 1][0]);
            double x1 = Math.max(a[i][0], a[i + 1][0]);
            double y0 = Math.min(a[i][1], a[i + 1][1]);
            double y1 = Math.max(a[i][1], a[i + 1][1]);
            for (int j = 0; j + 1 < b.length; j++) {
                double[] p = b[j];
                double[] q = b[j + 1];
                if (p[0] < x0 && q[0] < x0 || p[0] > x1 && q[0] > x1 || p[1] < y0 && q[1] < y0 || p[1] > y1 && q[1] > y1) {
                    continue;
                }
                double dx = a[i + 1][0] - a[i][0];
                double dy = a[i + 1][1] - a[i][1];
                double ex = q[0] - p[0];
                double ey = q[1] - p[1];
                double cross = dx * ey - dy * ex;
                if (Math.abs(cross) < 1e-12) {
                    continue;
                }
                double t = ((p[0] - a[i][0]) * ey - (p[1] - a[i][1]) * ex) / cross;
                double s = ((p[0] - a[i][0]) * dy - (p[1] - a[i][1]) * dx) / cross;
                if (t >= 0 && t <= 1 && s >= 0 && s <= 1) {
                    found.add(new Crossing(a[i][0] + t * dx, a[i][1] + t * dy, i, t));
                }
            }
        }
        found.sort((u, v) -> Double.compare(u.segment() + u.share(), v.segment() + v.share()));
        return found;
    }

    static List<Face> faces(List<double[][]> lines) {
        Arrangement made = new Arrangement();
        for (int i = 0; i < lines.size(); i++) {
            made.split(lines, i);
        }
        made.dropLooseEnds();
        return made.walk();
    }

    private int node(double x, double y) {
        long kx = Math.round(x * 500);
        long ky = Math.round(y * 500);
        for (long dx = -1; dx <= 1; dx++) {
            for (long dy = -1; dy <= 1; dy++) {
                Integer known = nodeAt.get((kx + dx) * 4_000_003L + ky + dy);
                if (known != null) {
                    return known;
                }
            }
        }
        nodes.add(new double[] {x, y});
        nodeAt.put(kx * 4_000_003L + ky, nodes.size() - 1);
        return nodes.size() - 1;
    }

    private void split(List<double[][]> lines, int index) {
        double[][] line = lines.get(index);
        List<Crossing> cuts = new ArrayList<>();
        for (int j = 0; j < lines.size(); j++) {
            if (j != index) {
                cuts.addAll(crossings(line, lines.get(j)));
            }
        }
        int last = line.length - 1;
        cuts.add(new Crossing(line[0][0], line[0][1], 0, 0));
        cuts.add(new Crossing(line[last][0], line[last][1], last - 1, 1));
        cuts.sort((u, v) -> Double.compare(u.segment() + u.share(), v.segment() + v.share()));
        for (int k = 0; k + 1 < cuts.size(); k++) {
            Crossing a = cuts.get(k);
            Crossing b = cuts.get(k + 1);
            int from = node(a.x(), a.y());
            int to = node(b.x(), b.y());
            List<double[]> points = new ArrayList<>();
            points.add(nodes.get(from));
            for (int i = a.segment() + 1; i <= b.segment(); i++) {
                points.add(line[i]);
            }
            points.add(nodes.get(to));
            if (from != to || points.size() > 3) {
                edges.add(new Edge(from, to, points));
            }
        }
    }

    private void dropLooseEnds() {
        boolean dropped = true;
        while (dropped) {
            int[] degree = new int[nodes.size()];
            for (Edge e : edges) {
                degree[e.from]++;
                degree[e.to]++;
            }
            dropped = edges.removeIf(e -> degree[e.from] == 1 || degree[e.to] == 1);
        }
    }

    private List<Face> walk() {
        int n = edges.size();
        List<List<Integer>> out = new ArrayList<>();
        for (int i = 0; i < nodes.size(); i++) {
            out.add(new ArrayList<>());
        }
        double[] heading = new double[2 * n];
        for (int e = 0; e < n; e++) {
            List<double[]> p = edges.get(e).points;
            heading[2 * e] = heading(p.get(0), p.get(1));
            heading[2 * e + 1] = heading(p.get(p.size() - 1), p.get(p.size() - 2));
            out.get(edges.get(e).from).add(2 * e);
            out.get(edges.get(e).to).add(2 * e + 1);
        }
        int[] next = new int[2 * n];
        for (List<Integer> fan : out) {
            fan.sort((a, b) -> Double.compare(heading[a], heading[b]));
            for (int k = 0; k < fan.size(); k++) {
                next[fan.get(k) ^ 1] = fan.get((k + fan.size() - 1) % fan.size());
            }
        }
        boolean[] seen = new boolean[2 * n];
        List<Face> faces = new ArrayList<>();
        for (int h = 0; h < 2 * n; h++) {
            if (seen[h]) {
                continue;
            }
            List<double[]> outline = new ArrayList<>();
            for (int g = h; !seen[g]; g = next[g]) {
                seen[g] = true;
                List<double[]> p = edges.get(g / 2).points;
                for (int i = 0; i + 1 < p.size(); i++) {
                    outline.add(g % 2 == 0 ? p.get(i) : p.get(p.size() - 1 - i));
                }
            }
            double[][] ring = outline.toArray(double[][]::new);
            double area = area(ring);
            if (area > 1e-3) {
                double[] label = inside(ring);
                faces.add(new Face(ring, area, label[0], label[1], label[2]));
            }
        }
        return faces;
    }

    private static double heading(double[] a, double[] b) {
        return StrictMath.atan2(b[1] - a[1], b[0] - a[0]);
    }

    private static double area(double[][] ring) {
        double sum = 0;
        for (int i = 0; i < ring.length; i++) {
            double[] a = ring[i];
            double[] b = ring[(i + 1) % ring.length];
            sum += a[0] * b[1] - b[0] * a[1];
        }
        return sum / 2;
    }

    /** The middle of about the largest circle that fits, by a grid that is refined around its best place. */
    private static double[] inside(double[][] ring) {
        double x0 = Double.MAX_VALUE;
        double y0 = Double.MAX_VALUE;
        double x1 = -Double.MAX_VALUE;
        double y1 = -Double.MAX_VALUE;
        for (double[] p : ring) {
            x0 = Math.min(x0, p[0]);
            y0 = Math.min(y0, p[1]);
            x1 = Math.max(x1, p[0]);
            y1 = Math.max(y1, p[1]);
        }
        double[] best = {(x0 + x1) / 2, (y0 + y1) / 2, -Double.MAX_VALUE};
        double stepX = (x1 - x0) / 24;
        double stepY = (y1 - y0) / 24;
        for (int round = 0; round < 6; round++) {
            double cx = best[0];
            double cy = best[1];
            for (int i = -12; i <= 12; i++) {
                for (int j = -12; j <= 12; j++) {
                    double x = cx + i * stepX;
                    double y = cy + j * stepY;
                    double d = depth(ring, x, y);
                    if (d > best[2]) {
                        best = new double[] {x, y, d};
                    }
                }
            }
            stepX /= 5;
            stepY /= 5;
        }
        return best;
    }

    private static double depth(double[][] ring, double x, double y) {
        boolean in = false;
        double nearest = Double.MAX_VALUE;
        for (int i = 0, j = ring.length - 1; i < ring.length; j = i++) {
            double[] a = ring[i];
            double[] b = ring[j];
            if (a[1] > y != b[1] > y && x < (b[0] - a[0]) * (y - a[1]) / (b[1] - a[1]) + a[0]) {
                in = !in;
            }
            double dx = b[0] - a[0];
            double dy = b[1] - a[1];
            double l = dx * dx + dy * dy;
            double t = l == 0 ? 0 : Math.max(0, Math.min(1, ((x - a[0]) * dx + (y - a[1]) * dy) / l));
            double px = x - a[0] - t * dx;
            double py = y - a[1] - t * dy;
            nearest = Math.min(nearest, px * px + py * py);
        }
        return in ? StrictMath.sqrt(nearest) : -StrictMath.sqrt(nearest);
    }
}
