package saddlebar.stencil.tone;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.problem.Severity;
import saddlebar.model.units.Require;

/**
 * What a studio's print makes of a screened coverage, from a measured step wedge, and the way back: p: [0, 1] -> [0, 1] rising through the
 * readings ({@link MonotoneCubic}), and c = p^-1 by bisection to 1e-9. Bare is 0 and solid is 1 by definition. Readings that fall where they
 * should rise are first pooled with their neighbours to equal means (isotonic regression, pool adjacent violators), and the user is told.
 */
public final class Calibration {
    private static final int LEAST_STEPS = 5;
    private static final double END_SLACK = 0.05;
    private static final double INVERSE_EXACT = 1e-9;
    /** Beyond this the usual model of gain, a + 4 g a (1 - a), would fall again. */
    private static final double MOST_GAIN = 0.25;

    private final MonotoneCubic printed;
    private final List<WedgeReading> readings;
    private final List<Problem> problems;

    private Calibration(List<WedgeReading> readings, List<Problem> problems) {
        this.readings = readings;
        this.problems = problems;
        this.printed = new MonotoneCubic(readings.stream().mapToDouble(WedgeReading::nominal).toArray(),
                readings.stream().mapToDouble(WedgeReading::effective).toArray());
    }

    /** @throws Refusal with fewer than 5 steps, without bare or solid, or with a step twice */
    public static Calibration of(List<WedgeReading> wedge) {
        List<WedgeReading> sorted = new ArrayList<>(wedge);
        sorted.sort(Comparator.comparingDouble(WedgeReading::nominal));
        int steps = sorted.size();
        if (steps < LEAST_STEPS) {
            throw new Refusal("wedge", "a calibration from " + steps + " steps would be a guess", "measure at least " + LEAST_STEPS);
        }
        if (sorted.get(0).nominal() != 0 || sorted.get(steps - 1).nominal() != 1) {
            throw new Refusal("wedge", "the bare glass (0) or the solid (1) is missing", "measure both and add them");
        }
        for (int i = 1; i < steps; i++) {
            if (sorted.get(i).nominal() == sorted.get(i - 1).nominal()) {
                throw new Refusal("wedge", "the step " + sorted.get(i).nominal() + " stands twice", "keep one, or their mean");
            }
        }
        if (Math.abs(sorted.get(0).effective()) > END_SLACK || Math.abs(sorted.get(steps - 1).effective() - 1) > END_SLACK) {
            throw new Refusal("wedge", String.format(Locale.ROOT, "bare glass reads %.3f and the solid %.3f instead of 0 and 1",
                    sorted.get(0).effective(), sorted.get(steps - 1).effective()), "measure them anew");
        }
        List<Problem> problems = new ArrayList<>();
        return new Calibration(pooled(sorted, problems), problems);
    }

    /**
     * Before anything is measured: gain 4 g a (1 - a), which is g at the middle. Common practice, no source.
     *
     * @param gainAt50 g, 0 to 0.25
     */
    public static Calibration modelled(double gainAt50) {
        Require.within("gainAt50", gainAt50, 0, MOST_GAIN);
        List<WedgeReading> readings = new ArrayList<>();
        for (int percent = 0; percent <= 100; percent += 5) {
            double a = percent / 100.0;
            readings.add(new WedgeReading(a, a + 4 * gainAt50 * a * (1 - a)));
        }
        return new Calibration(readings, List.of());
    }

    /** Pools adjacent violators; ends pinned to 0 and 1, what lies between kept within them. */
    private static List<WedgeReading> pooled(List<WedgeReading> sorted, List<Problem> problems) {
        int n = sorted.size();
        double[] mean = new double[n];
        int[] size = new int[n];
        int blocks = 0;
        for (int i = 0; i < n; i++) {
            mean[blocks] = i == 0 ? 0 : i == n - 1 ? 1 : Math.max(0, Math.min(1, sorted.get(i).effective()));
            size[blocks++] = 1;
            while (blocks > 1 && mean[blocks - 1] < mean[blocks - 2]) {
                int both = size[blocks - 2] + size[blocks - 1];
                mean[blocks - 2] = (mean[blocks - 2] * size[blocks - 2] + mean[blocks - 1] * size[blocks - 1]) / both;
                size[blocks - 2] = both;
                blocks--;
            }
        }
        List<WedgeReading> result = new ArrayList<>();
        for (int block = 0; block < blocks; block++) {
            int first = result.size();
            for (int i = 0; i < size[block]; i++) {
                result.add(new WedgeReading(sorted.get(first + i).nominal(), mean[block]));
            }
            if (size[block] > 1) {
                problems.add(Problem.of("wedge-falls", Severity.WARNING, "wedge", String.format(Locale.ROOT,
                        "The readings from %.0f to %.0f %% do not rise; their mean, %.1f %%, is used. Measure or print these steps again.",
                        100 * sorted.get(first).nominal(), 100 * sorted.get(first + size[block] - 1).nominal(), 100 * mean[block])));
            }
        }
        return result;
    }

    /** What the print shows of a screened coverage. */
    public double printed(double screened) {
        return printed.at(screened);
    }

    /** What to screen so that the print shows the wanted coverage; where several would do, the least; a solid stays solid. */
    public double toScreen(double wanted) {
        if (wanted <= 0 || wanted >= 1) {
            return wanted <= 0 ? 0 : 1;
        }
        double least = 0;
        double most = 1;
        while (most - least > INVERSE_EXACT) {
            double middle = (least + most) / 2;
            if (printed.at(middle) < wanted) {
                least = middle;
            } else {
                most = middle;
            }
        }
        return (least + most) / 2;
    }

    /** Dot gain at the middle: what 50 % prints as, less 50 %. */
    public double gainAt50() {
        return printed(0.5) - 0.5;
    }

    /** The readings in use, rising. */
    public List<WedgeReading> readings() {
        return List.copyOf(readings);
    }

    /** What was mended. */
    public List<Problem> problems() {
        return List.copyOf(problems);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Calibration that && that.readings.equals(readings);
    }

    @Override
    public int hashCode() {
        return readings.hashCode();
    }
}
