package saddlebar.cartoon;

import java.util.Arrays;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * The straight sides of faces that lie edge to edge, each once with the faces to either hand. Faces of one noded net share their vertices
 * to the bit, so that a side is known by its two vertices. O(n) by hashing.
 */
final class Sides {
    /** No face: the outside of the panel. */
    static final int OUTSIDE = -1;

    private int vertices;
    private double[] x = new double[64];
    private double[] y = new double[64];
    private int[] vertexSlots = filled(256);
    private int sides;
    private int[] from = new int[64];
    private int[] to = new int[64];
    private int[] first = new int[64];
    private int[] second = new int[64];
    private int[] sideSlots = filled(256);

    Sides(List<Polygon> faces) {
        for (int face = 0; face < faces.size(); face++) {
            Polygon polygon = faces.get(face);
            add(polygon.getExteriorRing(), face);
            for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
                add(polygon.getInteriorRingN(hole), face);
            }
        }
    }

    int vertexCount() {
        return vertices;
    }

    int sideCount() {
        return sides;
    }

    double x(int vertex) {
        return x[vertex];
    }

    double y(int vertex) {
        return y[vertex];
    }

    int from(int side) {
        return from[side];
    }

    int to(int side) {
        return to[side];
    }

    /** One face of the side; never the outside. */
    int first(int side) {
        return first[side];
    }

    /** The other face of the side, or {@link #OUTSIDE}. */
    int second(int side) {
        return second[side];
    }

    boolean isInner(int side) {
        return second[side] != OUTSIDE;
    }

    /** The face beyond a side of {@code face}. */
    int beyond(int side, int face) {
        return first[side] == face ? second[side] : first[side];
    }

    double length(int side) {
        return Math.hypot(x[from[side]] - x[to[side]], y[from[side]] - y[to[side]]);
    }

    /** The side between two points, or -1 if no face has it. */
    int side(Coordinate a, Coordinate b) {
        int start = vertexSlots[vertexSlot(a.x, a.y)];
        int end = vertexSlots[vertexSlot(b.x, b.y)];
        return start < 0 || end < 0 ? -1 : sideSlots[sideSlot(Math.min(start, end), Math.max(start, end))];
    }

    private void add(LineString ring, int face) {
        Coordinate[] points = ring.getCoordinates();
        int before = vertex(points[0]);
        for (int i = 1; i < points.length; i++) {
            int next = vertex(points[i]);
            if (next != before) {
                add(Math.min(before, next), Math.max(before, next), face);
            }
            before = next;
        }
    }

    private void add(int a, int b, int face) {
        int slot = sideSlot(a, b);
        int side = sideSlots[slot];
        if (side >= 0) {
            second[side] = face;
            return;
        }
        if (sides == from.length) {
            from = Arrays.copyOf(from, 2 * sides);
            to = Arrays.copyOf(to, 2 * sides);
            first = Arrays.copyOf(first, 2 * sides);
            second = Arrays.copyOf(second, 2 * sides);
        }
        from[sides] = a;
        to[sides] = b;
        first[sides] = face;
        second[sides] = OUTSIDE;
        sideSlots[slot] = sides++;
        if (4 * sides > sideSlots.length) {
            sideSlots = filled(4 * sideSlots.length);
            for (int i = 0; i < sides; i++) {
                sideSlots[sideSlot(from[i], to[i])] = i;
            }
        }
    }

    private int vertex(Coordinate point) {
        int slot = vertexSlot(point.x, point.y);
        int known = vertexSlots[slot];
        if (known >= 0) {
            return known;
        }
        if (vertices == x.length) {
            x = Arrays.copyOf(x, 2 * vertices);
            y = Arrays.copyOf(y, 2 * vertices);
        }
        x[vertices] = point.x;
        y[vertices] = point.y;
        int vertex = vertices++;
        vertexSlots[slot] = vertex;
        if (4 * vertices > vertexSlots.length) {
            vertexSlots = filled(4 * vertexSlots.length);
            for (int i = 0; i < vertices; i++) {
                vertexSlots[vertexSlot(x[i], y[i])] = i;
            }
        }
        return vertex;
    }

    private int vertexSlot(double px, double py) {
        int mask = vertexSlots.length - 1;
        int slot = mixed(Double.doubleToLongBits(px + 0.0) * 31 + Double.doubleToLongBits(py + 0.0)) & mask;
        while (vertexSlots[slot] >= 0 && (x[vertexSlots[slot]] != px || y[vertexSlots[slot]] != py)) {
            slot = slot + 1 & mask;
        }
        return slot;
    }

    private int sideSlot(int a, int b) {
        int mask = sideSlots.length - 1;
        int slot = mixed((long) a << 32 | b) & mask;
        while (sideSlots[slot] >= 0 && (from[sideSlots[slot]] != a || to[sideSlots[slot]] != b)) {
            slot = slot + 1 & mask;
        }
        return slot;
    }

    /** Finalizer of the SplitMix64 generator: every bit of the key moves the slot. */
    private static int mixed(long key) {
        long z = (key ^ key >>> 30) * 0xbf58476d1ce4e5b9L;
        z = (z ^ z >>> 27) * 0x94d049bb133111ebL;
        return (int) (z ^ z >>> 31);
    }

    private static int[] filled(int length) {
        int[] slots = new int[length];
        Arrays.fill(slots, -1);
        return slots;
    }
}
