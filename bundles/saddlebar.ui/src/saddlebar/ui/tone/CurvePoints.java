package saddlebar.ui.tone;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

import saddlebar.model.problem.Refusal;
import saddlebar.stencil.tone.Calibration;
import saddlebar.stencil.tone.DrawnCurve;
import saddlebar.stencil.tone.DrawnCurve.Point;

/** The points of a drawn curve while they are edited: never falling, the ends at 0 and 1 always there. */
public final class CurvePoints {
    private static final double NEAREST = 0.01;
    private static final int STEPS = 4;

    private final List<Point> points;

    private CurvePoints(List<Point> points) {
        this.points = List.copyOf(points);
    }

    /** Those of a recipe's words; a straight line if it has none or they cannot be read. */
    public static CurvePoints of(String words) {
        try {
            return new CurvePoints(DrawnCurve.parse(words).map(DrawnCurve::points).orElse(List.of(new Point(0, 0), new Point(1, 1))));
        } catch (Refusal e) {
            return of("");
        }
    }

    /** What a calibration would screen, at even steps. */
    public static CurvePoints of(Calibration calibration) {
        return new CurvePoints(DrawnCurve.of(calibration, STEPS).points());
    }

    public List<Point> points() {
        return points;
    }

    /** As the recipe keeps it; empty for a straight line. */
    public String words() {
        boolean straight = points.stream().allMatch(point -> Math.abs(point.wanted() - point.screened()) < 5e-5);
        return straight ? "" : DrawnCurve.through(points).words();
    }

    /** In per cent, as people type them. */
    public String typed() {
        return words().isEmpty()
                ? ""
                : points.stream().map(point -> percent(point.wanted()) + ":" + percent(point.screened())).collect(Collectors.joining("  "));
    }

    /**
     * From what was typed in per cent.
     *
     * @throws Refusal if it is no curve
     */
    public static CurvePoints typed(String text) {
        StringBuilder shares = new StringBuilder();
        for (String word : text.strip().replace(',', '.').split("\\s+")) {
            String[] pair = word.split(":", -1);
            try {
                shares.append(Double.parseDouble(pair[0]) / 100).append(':').append(pair.length == 2 ? Double.parseDouble(pair[1]) / 100 : Double.NaN)
                        .append(' ');
            } catch (NumberFormatException e) {
                shares.append(word).append(' ');
            }
        }
        return text.isBlank() ? of("") : new CurvePoints(DrawnCurve.parse(shares.toString()).orElseThrow().points());
    }

    private static String percent(double share) {
        double value = Math.rint(share * 1000) / 10;
        return value == Math.rint(value) ? String.valueOf((long) value) : String.format(Locale.ROOT, "%.1f", value);
    }

    /** The point within reach of a place, if any. */
    public Optional<Integer> near(double wanted, double screened, double reach) {
        int best = -1;
        double least = reach;
        for (int i = 0; i < points.size(); i++) {
            double away = Math.hypot(points.get(i).wanted() - wanted, points.get(i).screened() - screened);
            if (away <= least) {
                best = i;
                least = away;
            }
        }
        return best < 0 ? Optional.empty() : Optional.of(best);
    }

    /** One point elsewhere, as far as its neighbours let it go; the ends stay at 0 and 1. */
    public CurvePoints moved(int index, double wanted, double screened) {
        Point before = index == 0 ? new Point(0, 0) : points.get(index - 1);
        Point after = index == points.size() - 1 ? new Point(1, 1) : points.get(index + 1);
        double x = index == 0 ? 0 : index == points.size() - 1 ? 1 : within(wanted, before.wanted() + NEAREST, after.wanted() - NEAREST);
        double y = within(screened, index == 0 ? 0 : before.screened(), index == points.size() - 1 ? 1 : after.screened());
        List<Point> moved = new ArrayList<>(points);
        moved.set(index, new Point(x, y));
        return new CurvePoints(moved);
    }

    /** One point more, where the curve passes, or at the place given as far as its neighbours let it. */
    public CurvePoints added(double wanted, double screened) {
        int index = 0;
        while (index < points.size() && points.get(index).wanted() < wanted) {
            index++;
        }
        boolean room = index > 0 && index < points.size() && wanted - points.get(index - 1).wanted() > NEAREST && points.get(index).wanted() - wanted > NEAREST;
        if (!room) {
            return this;
        }
        List<Point> more = new ArrayList<>(points);
        more.add(index, new Point(wanted, within(screened, points.get(index - 1).screened(), points.get(index).screened())));
        return new CurvePoints(more);
    }

    /** Without one point; the ends stay. */
    public CurvePoints removed(int index) {
        if (index <= 0 || index >= points.size() - 1) {
            return this;
        }
        List<Point> fewer = new ArrayList<>(points);
        fewer.remove(index);
        return new CurvePoints(fewer);
    }

    private static double within(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }
}
