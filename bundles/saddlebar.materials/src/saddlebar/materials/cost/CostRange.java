package saddlebar.materials.cost;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * What the sum may come to: every source drawn from its triangle, all lines of one source together since they err together, sources apart. Low and high are
 * the values that one run in ten falls below or above; likely is the middle one. The same seed gives the same range.
 */
public record CostRange(double low, double likely, double high, int runs, long seed) {
    private static final double TENTH = 0.1;

    public static CostRange of(List<ReckonedLine> lines, int runs, long seed) {
        if (runs < 10 || runs > 10_000_000) {
            throw new IllegalArgumentException("runs must be 10 to 10000000 but is " + runs);
        }
        TreeMap<String, TreeMap<Double, double[]>> bySource = new TreeMap<>(); // source -> low factor and high factor -> {low, high, amount}
        for (ReckonedLine line : lines) {
            double key = line.spread().low() * 1000 + line.spread().high();
            bySource.computeIfAbsent(line.source(), source -> new TreeMap<>()).computeIfAbsent(key,
                    spread -> new double[] {line.spread().low(), line.spread().high(), 0})[2] += line.amount().doubleValue();
        }
        SplittableRandom random = new SplittableRandom(seed);
        double[] sums = new double[runs];
        for (int run = 0; run < runs; run++) {
            for (TreeMap<Double, double[]> source : bySource.values()) {
                double drawn = random.nextDouble();
                for (double[] part : source.values()) {
                    sums[run] += part[2] * new Spread(part[0], part[1]).factor(drawn);
                }
            }
        }
        Arrays.sort(sums);
        return new CostRange(sums[(int) (TENTH * runs)], sums[runs / 2], sums[(int) ((1 - TENTH) * runs)], runs, seed);
    }

    /** As a range of prices, where so much is asked for each unit of cost. */
    public CostRange times(double factor) {
        return new CostRange(low * factor, likely * factor, high * factor, runs, seed);
    }
}
