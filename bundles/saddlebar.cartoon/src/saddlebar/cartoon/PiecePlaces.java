package saddlebar.cartoon;

import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** Finds the piece at a place. */
final class PiecePlaces {
    private final List<Boundary> boundaries;
    private final STRtree tree = new STRtree();

    PiecePlaces(List<Boundary> boundaries) {
        this.boundaries = boundaries;
        for (int i = 0; i < boundaries.size(); i++) {
            Boundary boundary = boundaries.get(i);
            tree.insert(new Envelope(boundary.minX(), boundary.maxX(), boundary.minY(), boundary.maxY()), i);
        }
    }

    /** Index of the piece that holds the point, the lowest if it lies on an edge; -1 if none does. */
    int pieceAt(double x, double y) {
        int found = -1;
        for (Object item : tree.query(new Envelope(new Coordinate(x, y)))) {
            int piece = (Integer) item;
            if ((found < 0 || piece < found) && boundaries.get(piece).isInside(x, y)) {
                found = piece;
            }
        }
        return found;
    }
}
