import java.util.ArrayList;
import java.util.List;

/**
 * The lines where glass is cut. A line is drawn a little too long or a little too short, as by hand, and {@link #lines} mends its
 * ends: an end that lies on another end takes its place exactly; an end that runs past the line it was meant to meet is cut there; an end
 * that stops short is carried on straight until it meets one.
 */
final class Cartoon {
    private static final double SAME_END_MM = 0.8;
    private static final double LONGEST_TRIM_MM = 16;
    private static final double LONGEST_REACH_MM = 14;
    /** A mended end runs this far past its line, so that rounding never opens a piece. */
    private static final double PAST_MM = 0.15;

    private final Curve panel;
    private final List<Curve> drawn = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();

    Cartoon(Curve panel) {
        this.panel = panel;
        drawn.add(panel);
    }

    Curve cut(double... points) {
        return cut(Curve.through(points));
    }

    Curve cut(Curve line) {
        drawn.add(line);
        return line;
    }

    List<String> faults() {
        return faults;
    }

    /** The panel first, then all lines with their ends mended. */
    List<Curve> lines() {
        List<double[][]> samples = new ArrayList<>();
        for (Curve line : drawn) {
            samples.add(line.samples());
        }
        List<Curve> mended = new ArrayList<>();
        mended.add(panel);
        for (int i = 1; i < drawn.size(); i++) {
            Curve line = drawn.get(i);
            if (!line.closed()) {
                line = mendEnd(line, i, samples);
                line = mendEnd(line.reversed(), i, samples).reversed();
            }
            mended.add(line);
        }
        return mended;
    }

    private Curve mendEnd(Curve line, int index, List<double[][]> samples) {
        double[] end = line.end();
        for (int j = 0; j < drawn.size(); j++) {
            if (drawn.get(j).closed()) {
                continue;
            }
            for (double[] other : List.of(drawn.get(j).start(), drawn.get(j).end())) {
                boolean self = j == index;
                if (!self && StrictMath.hypot(other[0] - end[0], other[1] - end[1]) < SAME_END_MM) {
                    // of several ends the first drawn keeps its place
                    return j < index ? line.withEnds(line.start(), other) : line;
                }
            }
        }
        double[][] own = line.samples();
        double[] behind = new double[own.length];
        for (int i = own.length - 2; i >= 0; i--) {
            behind[i] = behind[i + 1] + StrictMath.hypot(own[i + 1][0] - own[i][0], own[i + 1][1] - own[i][1]);
        }
        double best = Double.MAX_VALUE;
        double place = -1;
        for (int j = 0; j < samples.size(); j++) {
            if (j == index) {
                continue;
            }
            for (Arrangement.Crossing c : Arrangement.crossings(own, samples.get(j))) {
                double past = behind[c.segment()] + (behind[c.segment() + 1] - behind[c.segment()]) * c.share();
                if (past < best && past < LONGEST_TRIM_MM) {
                    best = past;
                    place = placeAt(own, behind, Math.max(0, past - PAST_MM));
                }
            }
        }
        if (place >= 0) {
            return line.part(0, place);
        }
        return reach(line, index, samples, own);
    }

    private static double placeAt(double[][] own, double[] behind, double past) {
        int i = own.length - 2;
        while (i > 0 && behind[i] < past) {
            i--;
        }
        double share = (behind[i] - past) / (behind[i] - behind[i + 1]);
        double from = own[i][2];
        double to = own[i + 1][2];
        return from + (to - from) * share;
    }

    private Curve reach(Curve line, int index, List<double[][]> samples, double[][] own) {
        double[] end = own[own.length - 1];
        double[] before = own[Math.max(0, own.length - 3)];
        double dx = end[0] - before[0];
        double dy = end[1] - before[1];
        double d = StrictMath.hypot(dx, dy);
        double[][] ray = {end, {end[0] + dx / d * LONGEST_REACH_MM, end[1] + dy / d * LONGEST_REACH_MM}};
        double best = 2;
        for (int j = 0; j < samples.size(); j++) {
            if (j == index) {
                continue;
            }
            for (Arrangement.Crossing c : Arrangement.crossings(ray, samples.get(j))) {
                best = Math.min(best, c.share());
            }
        }
        if (best > 1) {
            faults.add(String.format(java.util.Locale.ROOT, "line %d ends in the open at %.1f, %.1f", index, end[0], end[1]));
            return line;
        }
        double reach = best * LONGEST_REACH_MM + PAST_MM;
        return line.extendedTo(end[0] + dx / d * reach, end[1] + dy / d * reach);
    }
}
