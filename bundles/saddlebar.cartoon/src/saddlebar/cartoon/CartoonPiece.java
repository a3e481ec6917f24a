package saddlebar.cartoon;

import java.util.List;
import java.util.Objects;

import org.locationtech.jts.geom.Polygon;

import saddlebar.model.problem.PlaceMm;

/**
 * One piece of glass. The two polygons must not be changed by whoever gets them: copy them first.
 *
 * @param number      its number on the cartoon, from 1
 * @param face        the closed region as drawn, edge to edge with its neighbours; holes where other pieces lie inside it
 * @param glass       what is cut: the face less half the gap at inner edges and the allowance at outer edges; empty if nothing is left
 *                    (the largest part where the gap splits it, with a problem that says so)
 * @param areaMm2     area of the face
 * @param netAreaMm2  area of the glass
 * @param perimeterMm length of all edges of the face, holes too: what foil has to cover
 * @param label       centre of the largest circle inside the face: where its number stands
 * @param inradiusMm  radius of that circle
 * @param neighbours  numbers of the pieces that share a joint with this one, ascending
 * @param problems    codes of the problems that lie in this piece, sorted, each once
 */
public record CartoonPiece(int number, Polygon face, Polygon glass, double areaMm2, double netAreaMm2, double perimeterMm, PlaceMm label,
        double inradiusMm, List<Integer> neighbours, List<String> problems) {
    public CartoonPiece {
        Objects.requireNonNull(face, "face");
        Objects.requireNonNull(glass, "glass");
        Objects.requireNonNull(label, "label");
        neighbours = List.copyOf(neighbours);
        problems = List.copyOf(problems);
    }

    /** Height of its number: 0.6 of the inradius, at most what is set. */
    public double numberHeightMm(double mostMm) {
        return Math.min(0.6 * inradiusMm, mostMm);
    }

    /** Whether the number does not fit and stands outside with a leader: inradius below 2 mm. */
    public boolean numberStandsOutside() {
        return inradiusMm < 2;
    }
}
