package saddlebar.cartoon.mend;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

import org.locationtech.jts.geom.Coordinate;

import saddlebar.model.art.DrawnLine;

/** A drawn line by the length along it; a closed one ends where it begins. */
final class Way {
    private final DrawnLine line;
    private final Coordinate[] points;
    private final double[] along;

    Way(DrawnLine line) {
        this.line = line;
        points = new Coordinate[line.closed() ? line.points() + 1 : line.points()];
        along = new double[points.length];
        for (int i = 0; i < points.length; i++) {
            int at = i % line.points();
            points[i] = new Coordinate(line.x(at), line.y(at));
            along[i] = i == 0 ? 0 : along[i - 1] + points[i].distance(points[i - 1]);
        }
    }

    double lengthMm() {
        return along[along.length - 1];
    }

    Coordinate at(double mm) {
        int found = Arrays.binarySearch(along, mm);
        if (found >= 0) {
            return points[found].copy();
        }
        int after = Math.max(1, Math.min(points.length - 1, -found - 1));
        return LineEnd.between(points[after - 1], points[after], (mm - along[after - 1]) / (along[after] - along[after - 1]));
    }

    /** Places to look at: every point, and between them at most a step apart. */
    double[] looks(double stepMm) {
        TreeSet<Double> places = new TreeSet<>();
        for (int i = 0; i < along.length; i++) {
            places.add(along[i]);
            if (i > 0) {
                int steps = (int) Math.ceil((along[i] - along[i - 1]) / stepMm);
                for (int step = 1; step < steps; step++) {
                    places.add(along[i - 1] + (along[i] - along[i - 1]) * step / steps);
                }
            }
        }
        return places.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** The stretch between two lengths, as an open line of the same element. */
    DrawnLine part(double fromMm, double toMm) {
        List<Coordinate> kept = new ArrayList<>();
        kept.add(at(fromMm));
        for (int i = 0; i < points.length; i++) {
            if (along[i] > fromMm + 1e-9 && along[i] < toMm - 1e-9) {
                kept.add(points[i]);
            }
        }
        kept.add(at(toMm));
        double[] xy = new double[2 * kept.size()];
        for (int i = 0; i < kept.size(); i++) {
            xy[2 * i] = kept.get(i).x;
            xy[2 * i + 1] = kept.get(i).y;
        }
        return new DrawnLine(line.element(), line.line(), xy, false);
    }
}
