package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * Finds whether a revised drawing was moved as a whole on its page. A displacement is held against the pieces: one agrees if a new piece of its
 * area lies where the displacement would bring it. Staying put is taken if half of the pieces agree; else the displacement, among those of the
 * outer box and of pieces with an area of their own, with which the most agree, if that is most of the pieces. O(n).
 */
record DrawingShift(double xMm, double yMm) {
    static final DrawingShift NONE = new DrawingShift(0, 0);
    private static final double SAME_PLACE_MM = 0.1;
    private static final double SAME_AREA = 0.002;
    private static final double MOST = 0.6;
    private static final int MOST_TRIED = 12;

    /** A piece as its middle and its area. */
    private record Mark(double x, double y, double area) {
        static Mark of(Polygon face) {
            Coordinate middle = face.getCentroid().getCoordinate();
            return new Mark(middle.x, middle.y, face.getArea());
        }

        boolean sameArea(Mark other) {
            return Math.abs(area - other.area) <= SAME_AREA * area;
        }
    }

    private record Cell(long x, long y) {
        static Cell of(double x, double y) {
            return new Cell(Math.round(x / SAME_PLACE_MM), Math.round(y / SAME_PLACE_MM));
        }
    }

    static DrawingShift of(List<NumberedFace> before, List<Polygon> faces) {
        if (before.size() < 2 || faces.size() < 2) {
            return NONE; // one piece may as well be another one
        }
        List<Mark> old = before.stream().map(piece -> Mark.of(piece.face())).toList();
        List<Mark> now = faces.stream().map(Mark::of).toList();
        Map<Cell, List<Mark>> places = new HashMap<>();
        now.forEach(mark -> places.computeIfAbsent(Cell.of(mark.x, mark.y), cell -> new ArrayList<>()).add(mark));
        int staying = agreeing(old, places, NONE);
        if (2 * staying >= old.size()) {
            return NONE;
        }
        DrawingShift best = NONE;
        int most = Math.max((int) Math.ceil(MOST * old.size()), 2 * staying + 1) - 1;
        for (DrawingShift tried : candidates(before, faces, old, now)) {
            int agreeing = agreeing(old, places, tried);
            if (agreeing > most) {
                most = agreeing;
                best = tried;
            }
        }
        return best;
    }

    private static Set<DrawingShift> candidates(List<NumberedFace> before, List<Polygon> faces, List<Mark> old, List<Mark> now) {
        Set<DrawingShift> candidates = new LinkedHashSet<>();
        Envelope was = new Envelope();
        before.forEach(piece -> was.expandToInclude(piece.face().getEnvelopeInternal()));
        Envelope is = new Envelope();
        faces.forEach(face -> is.expandToInclude(face.getEnvelopeInternal()));
        candidates.add(new DrawingShift(is.getMinX() - was.getMinX(), is.getMinY() - was.getMinY()));
        candidates.add(new DrawingShift(is.getMaxX() - was.getMaxX(), is.getMaxY() - was.getMaxY()));
        for (int i = 0; i < old.size() && candidates.size() < MOST_TRIED; i++) {
            Mark mark = old.get(i);
            List<Mark> alike = now.stream().filter(mark::sameArea).limit(2).toList();
            if (alike.size() == 1 && old.stream().filter(mark::sameArea).limit(2).count() == 1) {
                candidates.add(new DrawingShift(alike.get(0).x - mark.x, alike.get(0).y - mark.y));
            }
        }
        return candidates;
    }

    private static int agreeing(List<Mark> old, Map<Cell, List<Mark>> places, DrawingShift shift) {
        int agreeing = 0;
        for (Mark mark : old) {
            Cell home = Cell.of(mark.x + shift.xMm, mark.y + shift.yMm);
            boolean there = false;
            for (long dx = -1; dx <= 1 && !there; dx++) {
                for (long dy = -1; dy <= 1 && !there; dy++) {
                    there = places.getOrDefault(new Cell(home.x + dx, home.y + dy), List.of()).stream().anyMatch(mark::sameArea);
                }
            }
            agreeing += there ? 1 : 0;
        }
        return agreeing;
    }

    Polygon moved(Polygon face) {
        return moved(face, xMm, yMm);
    }

    static Polygon moved(Polygon face, double byXMm, double byYMm) {
        if (byXMm == 0 && byYMm == 0) {
            return face;
        }
        Polygon moved = (Polygon) face.copy();
        moved.apply((Coordinate point) -> {
            point.x += byXMm;
            point.y += byYMm;
        });
        moved.geometryChanged();
        return moved;
    }
}
