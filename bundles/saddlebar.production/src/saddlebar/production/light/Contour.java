package saddlebar.production.light;

import java.awt.geom.Path2D;
import java.util.List;

import saddlebar.model.units.Require;

/**
 * A closed shape in mm: one ring, and more rings where it has holes (even-odd). Immutable.
 */
public final class Contour {
    private final List<double[]> rings;
    private final RectMm bounds;
    private final Path2D path;

    private Contour(List<double[]> rings) {
        this.rings = rings;
        this.path = pathOf(rings);
        this.bounds = boundsOf(rings.get(0));
    }

    /**
     * @param rings each x0, y0, x1, y1, … in mm, at least three points, not closed again; the first is the outside
     */
    public static Contour of(List<double[]> rings) {
        if (rings.isEmpty()) {
            throw new IllegalArgumentException("a contour needs at least one ring");
        }
        for (double[] ring : rings) {
            if (ring.length < 6 || ring.length % 2 != 0) {
                throw new IllegalArgumentException("a ring needs at least three points but has " + ring.length + " numbers");
            }
            for (double value : ring) {
                Require.finite("ring", value);
            }
        }
        return new Contour(rings.stream().map(double[]::clone).toList());
    }

    public static Contour of(double... ring) {
        return of(List.of(ring));
    }

    public static Contour of(RectMm rect) {
        return of(rect.leftMm(), rect.topMm(), rect.rightMm(), rect.topMm(), rect.rightMm(), rect.bottomMm(), rect.leftMm(), rect.bottomMm());
    }

    public RectMm bounds() {
        return bounds;
    }

    public int ringCount() {
        return rings.size();
    }

    /** A copy of one ring. */
    public double[] ring(int index) {
        return rings.get(index).clone();
    }

    public boolean holds(double xMm, double yMm) {
        return bounds.holds(xMm, yMm) && path.contains(xMm, yMm);
    }

    /** Area in mm2: outside less holes (shoelace formula). */
    public double areaMm2() {
        double area = Math.abs(signedArea(rings.get(0)));
        for (double[] hole : rings.subList(1, rings.size())) {
            area -= Math.abs(signedArea(hole));
        }
        return area;
    }

    /** For painters, who do not change it. */
    public Path2D path() {
        return path;
    }

    private static double signedArea(double[] ring) {
        double twice = 0;
        for (int i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
            twice += ring[j] * ring[i + 1] - ring[i] * ring[j + 1];
        }
        return twice / 2;
    }

    private static Path2D pathOf(List<double[]> rings) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        for (double[] ring : rings) {
            path.moveTo(ring[0], ring[1]);
            for (int i = 2; i < ring.length; i += 2) {
                path.lineTo(ring[i], ring[i + 1]);
            }
            path.closePath();
        }
        return path;
    }

    private static RectMm boundsOf(double[] ring) {
        double left = ring[0];
        double right = ring[0];
        double top = ring[1];
        double bottom = ring[1];
        for (int i = 2; i < ring.length; i += 2) {
            left = Math.min(left, ring[i]);
            right = Math.max(right, ring[i]);
            top = Math.min(top, ring[i + 1]);
            bottom = Math.max(bottom, ring[i + 1]);
        }
        return new RectMm(left, top, right - left, bottom - top);
    }
}
