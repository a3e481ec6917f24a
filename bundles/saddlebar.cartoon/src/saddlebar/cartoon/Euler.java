package saddlebar.cartoon;

/**
 * The count that proves a net of faces whole: v - e + f = 1 + c for every plane graph (Euler's formula). v and e are counted from the
 * sides of the pieces, c by joining sides that meet, f from the faces, each without knowledge of the others, so that a lost face or a
 * crossing without a node shows. A vertex at which one line goes straight on is not counted, neither are its two edges as two.
 *
 * @param v vertices
 * @param e edges
 * @param f faces, the outer one too
 * @param c connected parts of the net
 */
public record Euler(int v, int e, int f, int c) {
    /** Whether the count comes out. */
    public boolean holds() {
        return v - e + f == 1 + c;
    }
}
