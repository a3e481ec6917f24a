package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.locationtech.jts.geom.Coordinate;

/** The join of each side of the net: that of the pieces it parts, else of the line it is drawn by, else the panel's. */
final class SideJoins {
    private final Join usual;
    private final Join[] bySide;

    /**
     * @param edges   the net from which the faces were closed
     * @param numbers of the faces by index; asked for only where pieces are named
     */
    static SideJoins of(CartoonSettings settings, List<CutNet.Edge> edges, Sides sides, int[] numbers) {
        if (settings.localJoins().isEmpty()) {
            return new SideJoins(settings.join(), null);
        }
        Join[] bySide = new Join[sides.sideCount()];
        for (CutNet.Edge edge : edges) {
            for (LocalJoin local : settings.localJoins()) {
                if (!local.namesPieces() && isDrawnBy(edge, local)) {
                    Coordinate[] points = edge.line().getCoordinates();
                    for (int i = 1; i < points.length; i++) {
                        int side = sides.side(points[i - 1], points[i]);
                        if (side >= 0) {
                            bySide[side] = local.join();
                        }
                    }
                }
            }
        }
        for (int side = 0; side < bySide.length; side++) {
            if (sides.isInner(side)) {
                for (LocalJoin local : settings.localJoins()) {
                    if (local.namesPieces() && local.joins(numbers[sides.first(side)], numbers[sides.second(side)])) {
                        bySide[side] = local.join();
                    }
                }
            }
        }
        return new SideJoins(settings.join(), bySide);
    }

    private SideJoins(Join usual, Join[] bySide) {
        this.usual = usual;
        this.bySide = bySide;
    }

    private static boolean isDrawnBy(CutNet.Edge edge, LocalJoin local) {
        for (int source : edge.sources()) {
            if (local.isOfLine(source)) {
                return true;
            }
        }
        return false;
    }

    Join of(int side) {
        return bySide == null || bySide[side] == null ? usual : bySide[side];
    }

    /** Lengths of inner joints by join, in the order in which they are met. */
    List<JoinLength> lengths(Sides sides) {
        Map<Join, Double> lengths = new LinkedHashMap<>();
        for (int side = 0; side < sides.sideCount(); side++) {
            if (sides.isInner(side)) {
                lengths.merge(of(side), sides.length(side), Double::sum);
            }
        }
        List<JoinLength> all = new ArrayList<>();
        lengths.forEach((join, length) -> all.add(new JoinLength(join, length)));
        return all;
    }
}
