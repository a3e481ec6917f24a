package saddlebar.stencil.tone;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Units;

/**
 * A tone curve that a person draws by control points: wanted coverage to screened coverage, through (0, 0) and (1, 1), smooth and never falling
 * ({@link MonotoneCubic}). To begin with, the way back of a measured {@link Calibration} can be taken as points.
 */
public final class DrawnCurve {
    private final List<Point> points;
    private final MonotoneCubic curve;

    /**
     * A control point.
     *
     * @param wanted   0 to 1
     * @param screened 0 to 1
     */
    public record Point(double wanted, double screened) {
        public Point {
            if (!(wanted >= 0 && wanted <= 1 && screened >= 0 && screened <= 1)) {
                throw new Refusal("curve", "the point " + Units.plain(wanted) + ", " + Units.plain(screened) + " lies outside the curve's square",
                        "keep both between 0 and 1");
            }
        }
    }

    private DrawnCurve(List<Point> points) {
        this.points = points;
        this.curve = new MonotoneCubic(points.stream().mapToDouble(Point::wanted).toArray(), points.stream().mapToDouble(Point::screened).toArray());
    }

    /**
     * In any order; the ends are added if they are missing.
     *
     * @throws Refusal if two points share a wanted coverage, or the curve would fall
     */
    public static DrawnCurve through(List<Point> points) {
        List<Point> sorted = new ArrayList<>(points);
        sorted.sort(Comparator.comparingDouble(Point::wanted));
        if (sorted.isEmpty() || sorted.get(0).wanted() > 0) {
            sorted.add(0, new Point(0, 0));
        }
        if (sorted.get(sorted.size() - 1).wanted() < 1) {
            sorted.add(new Point(1, 1));
        }
        for (int i = 1; i < sorted.size(); i++) {
            Point before = sorted.get(i - 1);
            Point here = sorted.get(i);
            if (here.wanted() == before.wanted()) {
                throw new Refusal("curve", "two points stand at " + Units.plain(here.wanted()), "remove one of them");
            }
            if (here.screened() < before.screened()) {
                throw new Refusal("curve", "it falls from " + Units.plain(before.screened()) + " at " + Units.plain(before.wanted()) + " to "
                        + Units.plain(here.screened()) + " at " + Units.plain(here.wanted()), "raise the later point or lower the earlier one");
            }
        }
        return new DrawnCurve(List.copyOf(sorted));
    }

    /**
     * From the words in which recipes keep it: points {@code wanted:screened} in shares, parted by blanks; no words, no curve.
     *
     * @throws Refusal if they cannot be read, or as {@link #through}
     */
    public static Optional<DrawnCurve> parse(String words) {
        if (words == null || words.isBlank()) {
            return Optional.empty();
        }
        List<Point> points = new ArrayList<>();
        for (String word : words.strip().split("\\s+")) {
            String[] pair = word.split(":", -1);
            try {
                if (pair.length != 2) {
                    throw new NumberFormatException(word);
                }
                points.add(new Point(Double.parseDouble(pair[0]), Double.parseDouble(pair[1])));
            } catch (NumberFormatException noPoint) {
                throw new Refusal("curve", "'" + word + "' is no point of a curve", "write wanted:screened in shares, such as 0.5:0.38", noPoint);
            }
        }
        return Optional.of(through(points));
    }

    /** The words that {@link #parse} reads, to 1/10000. */
    public String words() {
        return points.stream().map(point -> rounded(point.wanted()) + ":" + rounded(point.screened())).collect(Collectors.joining(" "));
    }

    private static String rounded(double share) {
        return Units.plain(Math.rint(share * 10_000) / 10_000);
    }

    /** The way back of a calibration at so many even steps, to be edited. */
    public static DrawnCurve of(Calibration calibration, int steps) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double wanted = (double) i / steps;
            points.add(new Point(wanted, calibration.toScreen(wanted)));
        }
        return through(points);
    }

    public double toScreen(double wanted) {
        return curve.at(wanted);
    }

    public List<Point> points() {
        return points;
    }

    /** As a calibration that screens what this curve says: its points turned about, so that tone tables can be made of it. */
    public Calibration asCalibration() {
        List<WedgeReading> readings = new ArrayList<>();
        int fine = 200;
        double last = -1;
        for (int i = 0; i <= fine; i++) {
            double wanted = (double) i / fine;
            double screened = i == 0 ? 0 : i == fine ? 1 : toScreen(wanted);
            if (screened > last && (screened < 1 || i == fine)) {
                readings.add(new WedgeReading(screened, wanted));
                last = screened;
            }
        }
        return Calibration.of(readings);
    }
}
