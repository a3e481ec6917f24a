package saddlebar.cartoon;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToIntFunction;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/** The order in which faces take their numbers; see {@link Numbering}. Ties fall by place, so that the order is the same on every run. */
final class PieceOrder {
    private PieceOrder() {
    }

    /** Indices of the faces in the order asked for. */
    static int[] of(Numbering numbering, List<Polygon> faces, List<InscribedCircle> circles) {
        Integer[] order = new Integer[faces.size()];
        Arrays.setAll(order, i -> i);
        Comparator<Integer> byY = Comparator.comparingDouble(i -> circles.get(i).yMm());
        Comparator<Integer> byX = Comparator.comparingDouble(i -> circles.get(i).xMm());
        Comparator<Integer> wanted = switch (numbering) {
            case READING_ORDER -> Comparator.<Integer>comparingInt(row(faces, circles, true)).thenComparing(byX).thenComparing(byY);
            case COLUMN_ORDER -> Comparator.<Integer>comparingInt(row(faces, circles, false)).thenComparing(byY).thenComparing(byX);
            case LARGEST_FIRST -> Comparator.<Integer>comparingDouble(i -> -faces.get(i).getArea()).thenComparing(byY).thenComparing(byX);
        };
        Arrays.sort(order, wanted);
        return Arrays.stream(order).mapToInt(Integer::intValue).toArray();
    }

    private static ToIntFunction<Integer> row(List<Polygon> faces, List<InscribedCircle> circles, boolean down) {
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
        return i -> (int) Math.floor(((down ? circles.get(i).yMm() : circles.get(i).xMm()) - start) / median);
    }
}
