package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Necks and long thin tails of a piece. At samples along the edge the circle that touches the edge there and reaches to the next edge is
 * found by shrinking (Ma, J., Bae, S. W., Choi, S., 3D medial axis point approximation using nearest neighbors and the normal field, Vis.
 * Comput. 28, 2012, in the plane): its centre lies on the medial axis, its diameter is the width there. Only circles below the limit are
 * looked for, so that a sample at a wide place costs one query.
 *
 * <p>A neck is a least width between two sides that face each other within {@value #FACING_DEG} degrees, with more width on either hand:
 * the local minimum of the medial axis. The corner of every piece is thin too and is none: width falls to nothing there. A thin stretch
 * that ends in corners is told only if it is longer than the tip of the sharpest corner allowed.
 *
 * <p>How exact: samples every third of the limit and in every inward corner every {@value #FAN_DEG} degrees; the width told is then made
 * exact by going to and fro between the two sides. Widths near the limit may be missed by 1 %.
 */
final class NarrowPlaces {
    private static final double FACING_DEG = 30;
    private static final double FAN_DEG = 10;
    private static final double PROMINENCE = 1.1;
    private static final int MOST_SHRINKS = 30;
    private static final int SAMPLES = 400;
    private static final int TRIED = 24;
    /** Share of the way across from which the nearest place is surely on the own side. */
    private static final double OWN_SIDE = 0.3;

    /** The middle of a narrow place. */
    record Narrow(double x, double y, double widthMm) {
    }

    /**
     * @param along  place on the ring
     * @param radius of the touching circle, the limit's half if it is not below
     * @param facing whether the two sides touched face each other
     */
    private record Sample(double along, double x, double y, double centreX, double centreY, double radius, boolean facing) {
    }

    private final Boundary boundary;
    private final double limitMm;
    private final double spacingMm;
    private final double tipMm;
    private final List<NeedlePoints.Needle> needles;
    private final List<Narrow> found = new ArrayList<>();

    private NarrowPlaces(Boundary boundary, double limitMm, double spacingMm, double needleDeg, List<NeedlePoints.Needle> needles) {
        this.boundary = boundary;
        this.limitMm = limitMm;
        this.spacingMm = spacingMm;
        this.needles = needles;
        // along one side from the tip of the sharpest corner allowed to where it is as wide as the limit, and a tenth more for curved sides
        this.tipMm = 1.1 * limitMm / 2 / Math.tan(Math.toRadians(Math.max(10, needleDeg) / 2));
    }

    /**
     * @param needleDeg corners above this are no needles
     * @param needles   needle points of the same boundary: what is thin because of them is not told again
     */
    static List<Narrow> of(Boundary boundary, double limitMm, double needleDeg, List<NeedlePoints.Needle> needles) {
        var places = new NarrowPlaces(boundary, limitMm, limitMm / 3, needleDeg, needles);
        for (RingPath ring : boundary.rings()) {
            places.look(ring);
        }
        return places.found;
    }

    /**
     * The least width of the whole piece: on the medial axis, where two sides face each other, sharp tips left out. Of the sample circles the
     * {@value #TRIED} least are made exact.
     *
     * @param widest    the largest circle inside: the answer where nothing is narrower
     * @param needleDeg corners below this are tips
     */
    static Narrow least(Boundary boundary, InscribedCircle widest, double needleDeg) {
        double limit = 2 * widest.radiusMm();
        double length = boundary.rings().stream().mapToDouble(RingPath::length).sum();
        var places = new NarrowPlaces(boundary, limit, Math.min(limit / 3, length / SAMPLES), needleDeg, NeedlePoints.of(boundary, needleDeg));
        List<Sample> facing = new ArrayList<>();
        boundary.rings().forEach(ring -> places.samples(ring).stream().filter(Sample::facing).filter(places::isThin).forEach(facing::add));
        facing.sort(Comparator.comparingDouble(Sample::radius));
        Narrow least = new Narrow(widest.xMm(), widest.yMm(), limit);
        int tried = 0;
        for (Sample sample : facing) {
            Narrow narrow = places.exact(sample);
            if (places.isInTip(narrow)) {
                continue;
            }
            least = narrow.widthMm < least.widthMm ? narrow : least;
            if (++tried == TRIED) {
                break;
            }
        }
        return least;
    }

    private void look(RingPath ring) {
        List<Sample> samples = samples(ring);
        int count = samples.size();
        int start = 0;
        while (start < count && isThin(samples.get(start))) {
            start++;
        }
        if (start == count) { // thin all round: one run
            judge(ring, samples);
            return;
        }
        var run = new ArrayList<Sample>();
        for (int i = 1; i <= count; i++) {
            Sample sample = samples.get((start + i) % count);
            if (isThin(sample)) {
                run.add(sample);
            } else if (!run.isEmpty()) {
                judge(ring, run);
                run = new ArrayList<>();
            }
        }
    }

    private boolean isThin(Sample sample) {
        return sample.radius < limitMm / 2 * 0.999;
    }

    private void judge(RingPath ring, List<Sample> run) {
        boolean neck = false;
        for (int i = 0; i < run.size(); i++) {
            if (run.get(i).facing && isNeck(run, i)) {
                tell(run.get(i));
                neck = true;
            }
        }
        double length = Math.abs(run.get(run.size() - 1).along - run.get(0).along);
        length = run.get(run.size() - 1).along < run.get(0).along ? ring.length() - length : length;
        if (!neck && length > 2 * tipMm) {
            run.stream().filter(Sample::facing).min((a, b) -> Double.compare(a.radius, b.radius)).ifPresent(this::tell);
        }
    }

    /** Least of its neighbourhood, with more width on both sides before there is less; the ends of a run count as wide. */
    private static boolean isNeck(List<Sample> run, int index) {
        double radius = run.get(index).radius;
        for (int step = -1; step <= 1; step += 2) {
            for (int i = index + step; i >= 0 && i < run.size(); i += step) {
                double other = run.get(i).radius;
                if (other < radius || other == radius && step < 0) {
                    return false; // of equal ones the first counts
                }
                if (other > PROMINENCE * radius) {
                    break;
                }
            }
        }
        return true;
    }

    private void tell(Sample sample) {
        Narrow narrow = exact(sample);
        if (isInTip(narrow)) {
            return;
        }
        for (int i = 0; i < found.size(); i++) {
            Narrow other = found.get(i);
            if (Math.hypot(other.x - narrow.x, other.y - narrow.y) < limitMm) { // the same place from its other side
                if (narrow.widthMm < other.widthMm) {
                    found.set(i, narrow);
                }
                return;
            }
        }
        found.add(narrow);
    }

    private boolean isInTip(Narrow narrow) {
        for (NeedlePoints.Needle needle : needles) {
            double reach = 1.2 * limitMm / 2 / Math.sin(Math.toRadians(Math.max(2, needle.angleDeg()) / 2));
            if (Math.hypot(needle.x() - narrow.x, needle.y() - narrow.y) < reach) {
                return true;
            }
        }
        return false;
    }

    /** To and fro between the two sides until the distance no longer falls; the sample's own circle if that leads elsewhere. */
    private Narrow exact(Sample sample) {
        double[] ends = {sample.x, sample.y, 2 * sample.centreX - sample.x, 2 * sample.centreY - sample.y};
        var touched = boundary.nearest(ends[2], ends[3], limitMm);
        var plain = new Narrow(sample.centreX, sample.centreY, 2 * sample.radius);
        if (touched.edge < 0) {
            return plain;
        }
        double[] a = {sample.x, sample.y};
        double[] b = {touched.x, touched.y};
        double width = Math.hypot(a[0] - b[0], a[1] - b[1]);
        for (int i = 0; i < MOST_SHRINKS; i++) {
            double before = width;
            width = nearer(a, b, width);
            width = nearer(b, a, width);
            if (width > before * (1 - 1e-7)) {
                break;
            }
        }
        return Math.abs(width - 2 * sample.radius) < 0.3 * sample.radius ? new Narrow((a[0] + b[0]) / 2, (a[1] + b[1]) / 2, width) : plain;
    }

    /** Moves one end to the place of its own side that is nearest to a point before the middle, if that shortens the way to the other end. */
    private double nearer(double[] end, double[] other, double width) {
        var nearest = boundary.nearest(end[0] + OWN_SIDE * (other[0] - end[0]), end[1] + OWN_SIDE * (other[1] - end[1]), limitMm);
        double next = nearest.edge < 0 ? width : Math.hypot(nearest.x - other[0], nearest.y - other[1]);
        if (next >= width) {
            return width;
        }
        end[0] = nearest.x;
        end[1] = nearest.y;
        return next;
    }

    // ---- samples and their circles

    private List<Sample> samples(RingPath ring) {
        List<Sample> samples = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            double dx = ring.x(i + 1) - ring.x(i);
            double dy = ring.y(i + 1) - ring.y(i);
            double length = Math.hypot(dx, dy);
            addCorner(samples, ring, i, dx / length, dy / length);
            int parts = (int) Math.ceil(length / spacingMm);
            for (int part = 0; part < parts; part++) {
                double t = (part + 0.5) / parts;
                samples.add(sample(ring.along(i) + t * length, ring.x(i) + t * dx, ring.y(i) + t * dy, -dy / length, dx / length));
            }
        }
        return samples;
    }

    /** At an inward corner the touching circles fan out between the two normals. */
    private void addCorner(List<Sample> samples, RingPath ring, int vertex, double ux, double uy) {
        double bx = ring.x(vertex) - ring.x(vertex - 1);
        double by = ring.y(vertex) - ring.y(vertex - 1);
        double turn = Math.atan2(bx * uy - by * ux, bx * ux + by * uy);
        if (turn >= 0) {
            return;
        }
        double first = Math.atan2(bx, -by); // normal of the edge before: its direction turned left
        int parts = Math.max(1, (int) Math.ceil(Math.toDegrees(-turn) / FAN_DEG));
        for (int part = parts == 1 ? 1 : 0; part <= (parts == 1 ? 1 : parts); part++) {
            double angle = first + turn * (parts == 1 ? 0.5 : (double) part / parts);
            samples.add(sample(ring.along(vertex), ring.x(vertex), ring.y(vertex), Math.cos(angle), Math.sin(angle)));
        }
    }

    private Sample sample(double along, double x, double y, double nx, double ny) {
        double radius = limitMm / 2;
        double touchX = 0;
        double touchY = 0;
        boolean touched = false;
        for (int i = 0; i < MOST_SHRINKS; i++) {
            var nearest = boundary.nearest(x + radius * nx, y + radius * ny, radius * (1 - 1e-6));
            if (nearest.edge < 0) {
                break;
            }
            double qx = nearest.x - x;
            double qy = nearest.y - y;
            double ahead = qx * nx + qy * ny;
            double next = (qx * qx + qy * qy) / (2 * ahead);
            if (!(ahead > 0) || !(next < radius * (1 - 1e-9))) {
                break; // the sample's own edge, in the arithmetic of a double
            }
            radius = next;
            touchX = nearest.x;
            touchY = nearest.y;
            touched = true;
        }
        double cx = x + radius * nx;
        double cy = y + radius * ny;
        boolean facing = false;
        if (touched && radius > 0) {
            double cosine = ((x - cx) * (touchX - cx) + (y - cy) * (touchY - cy)) / (radius * radius);
            facing = cosine <= -Math.cos(Math.toRadians(FACING_DEG));
        }
        return new Sample(along, x, y, cx, cy, radius, facing);
    }
}
