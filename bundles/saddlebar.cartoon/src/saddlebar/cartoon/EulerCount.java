package saddlebar.cartoon;

/** Counts vertices, edges and connected parts of the net that the sides of faces make; see {@link Euler}. */
final class EulerCount {
    /** A vertex with two sides is no vertex of the count where the second goes on within this of the first: straight but for the grid. */
    private static final double STRAIGHT_MM = 0.002;

    private final Sides sides;
    private final int[] parent;
    private final int[] degree;
    private final int[][] ends;

    private EulerCount(Sides sides) {
        this.sides = sides;
        this.parent = new int[sides.vertexCount()];
        this.degree = new int[sides.vertexCount()];
        this.ends = new int[2][sides.vertexCount()];
        for (int vertex = 0; vertex < parent.length; vertex++) {
            parent[vertex] = vertex;
        }
    }

    /**
     * @param faces number of faces, the outer one too, as found by closing the net
     */
    static Euler of(Sides sides, int faces) {
        var count = new EulerCount(sides);
        for (int side = 0; side < sides.sideCount(); side++) {
            count.add(sides.from(side), sides.to(side));
            count.add(sides.to(side), sides.from(side));
            count.parent[count.root(sides.from(side))] = count.root(sides.to(side));
        }
        return count.result(faces);
    }

    private void add(int vertex, int other) {
        if (degree[vertex] < 2) {
            ends[degree[vertex]][vertex] = other;
        }
        degree[vertex]++;
    }

    private Euler result(int faces) {
        int[] corners = new int[parent.length];
        int passed = 0;
        for (int vertex = 0; vertex < parent.length; vertex++) {
            if (degree[vertex] == 2 && goesStraight(vertex)) {
                passed++;
            } else {
                corners[root(vertex)]++;
            }
        }
        int components = 0;
        for (int vertex = 0; vertex < parent.length; vertex++) {
            if (parent[vertex] == vertex) {
                components++;
                if (corners[vertex] == 0) {
                    passed--; // a ring without corners keeps one vertex: an edge needs one
                }
            }
        }
        return new Euler(sides.vertexCount() - passed, sides.sideCount() - passed, faces, components);
    }

    private boolean goesStraight(int vertex) {
        int a = ends[0][vertex];
        int b = ends[1][vertex];
        double ux = sides.x(b) - sides.x(a);
        double uy = sides.y(b) - sides.y(a);
        double vx = sides.x(vertex) - sides.x(a);
        double vy = sides.y(vertex) - sides.y(a);
        double along = (ux * vx + uy * vy) / (ux * ux + uy * uy);
        return along > 0 && along < 1 && Math.abs(ux * vy - uy * vx) <= STRAIGHT_MM * Math.hypot(ux, uy);
    }

    private int root(int vertex) {
        int at = vertex;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }
}
