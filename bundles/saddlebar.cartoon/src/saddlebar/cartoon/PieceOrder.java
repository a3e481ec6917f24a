package saddlebar.cartoon;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToIntFunction;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

import saddlebar.model.problem.PlaceMm;

/** The order in which faces take their numbers; see {@link Numbering}. Ties fall by place, so that the order is the same on every run. */
public final class PieceOrder {
    private PieceOrder() {
    }

    /**
     * Indices of the faces in the order asked for.
     *
     * @param labels where the number of each face stands
     */
    public static int[] of(Numbering numbering, List<Polygon> faces, List<PlaceMm> labels) {
        Integer[] order = new Integer[faces.size()];
        Arrays.setAll(order, i -> i);
        Comparator<Integer> byY = Comparator.comparingDouble(i -> labels.get(i).yMm());
        Comparator<Integer> byX = Comparator.comparingDouble(i -> labels.get(i).xMm());
        Comparator<Integer> wanted = switch (numbering) {
            case READING_ORDER -> Comparator.<Integer>comparingInt(row(faces, labels, true)).thenComparing(byX).thenComparing(byY);
            case COLUMN_ORDER -> Comparator.<Integer>comparingInt(row(faces, labels, false)).thenComparing(byY).thenComparing(byX);
            case LARGEST_FIRST -> Comparator.<Integer>comparingDouble(i -> -faces.get(i).getArea()).thenComparing(byY).thenComparing(byX);
        };
        Arrays.sort(order, wanted);
        return Arrays.stream(order).mapToInt(Integer::intValue).toArray();
    }

    private static ToIntFunction<Integer> row(List<Polygon> faces, List<PlaceMm> labels, boolean down) {
        double[] extents = new double[faces.size()];
        double least = Double.MAX_VALUE;
        for (int i = 0; i < extents.length; i++) {
            Envelope box = faces.get(i).getEnvelopeInternal();
            extents[i] = down ? box.getHeight() : box.getWidth();
            least = Math.min(least, down ? box.getMinY() : box.getMinX());
        }
        Arrays.sort(extents);
        double median = extents.length % 2 == 1
                ? extents[extents.length / 2]
                : (extents[extents.length / 2 - 1] + extents[extents.length / 2]) / 2;
        double start = least;
        return i -> (int) Math.floor(((down ? labels.get(i).yMm() : labels.get(i).xMm()) - start) / median);
    }
}
