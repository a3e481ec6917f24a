package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Pieces that were taken from one place of the drawing to another, not turned and not changed: known again by their shape, the nearest first. */
final class MovedPieces {
    /** Outlines that were written anew differ in the last digit; a shape that was altered differs by more. */
    private static final double SAME = 0.001;
    private static final double OVERLAID = 0.995;

    private final List<NumberedFace> olds;
    private final List<Polygon> faces;

    private record Match(int old, int face, double distance) {
    }

    MovedPieces(List<NumberedFace> olds, List<Polygon> faces) {
        this.olds = olds;
        this.faces = faces;
    }

    /**
     * @param kept  number of each face, 0 where none; filled in for faces that were moved
     * @param taken numbers that are kept already; those of moved pieces are added
     * @return numbers of moved pieces, ascending
     */
    List<Integer> claim(int[] kept, Set<Integer> taken) {
        List<Match> matches = new ArrayList<>();
        for (int old = 0; old < olds.size(); old++) {
            if (!taken.contains(olds.get(old).number())) {
                for (int face = 0; face < kept.length; face++) {
                    if (kept[face] == 0 && sameShape(olds.get(old).face(), faces.get(face))) {
                        matches.add(new Match(old, face, middle(olds.get(old).face()).distance(middle(faces.get(face)))));
                    }
                }
            }
        }
        matches.sort(Comparator.comparingDouble(Match::distance).thenComparingInt(Match::old).thenComparingInt(Match::face));
        List<Integer> moved = new ArrayList<>();
        for (Match match : matches) {
            int number = olds.get(match.old).number();
            if (kept[match.face] == 0 && taken.add(number)) {
                kept[match.face] = number;
                moved.add(number);
            }
        }
        Collections.sort(moved);
        return moved;
    }

    private static Coordinate middle(Polygon face) {
        return face.getCentroid().getCoordinate();
    }

    private static boolean sameShape(Polygon one, Polygon other) {
        double area = one.getArea();
        if (Math.abs(area - other.getArea()) > SAME * area || Math.abs(one.getLength() - other.getLength()) > SAME * one.getLength()) {
            return false;
        }
        Coordinate from = middle(one);
        Coordinate to = middle(other);
        Polygon laid = DrawingShift.moved(one, to.x - from.x, to.y - from.y);
        return OverlayNGRobust.overlay(laid, other, OverlayNG.INTERSECTION).getArea() > OVERLAID * area;
    }
}
