package saddlebar.trace.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

import org.junit.jupiter.api.Test;

class RankAndTrendTest {
    /** Permeability of a membrane, Hollander and Wolfe, Nonparametric Statistical Methods; R's wilcox.test prints W = 35 and 0.1272 one-sided (from memory). */
    @Test
    void permeability() {
        RankTest test = RankTest.of(new double[] {0.80, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46},
                new double[] {1.15, 0.88, 0.90, 0.74, 1.21});
        assertEquals(35, test.u());
        assertTrue(test.exact());
        assertEquals(2 * 0.1272, test.p(), 1e-4);
        assertEquals(0.7, test.higher(), 1e-12);
    }

    /** All orders of the ranks, gone through one by one. */
    @Property(tries = 60)
    void exactAsByCountingAllOrders(@ForAll @IntRange(min = 1, max = 5) int m, @ForAll @IntRange(min = 1, max = 6) int n,
            @ForAll @LongRange(max = 1 << 30) long seed) {
        int total = m + n;
        int pick = (int) Math.floorMod(seed, 1L << total);
        while (Integer.bitCount(pick) != m) {
            pick = (pick + 1) % (1 << total);
        }
        double[] bad = values(pick, total, true);
        double[] good = values(pick, total, false);
        RankTest test = RankTest.of(bad, good);
        double far = Math.abs(test.u() - m * n / 2.0);
        int orders = 0;
        int asFar = 0;
        for (int other = 0; other < 1 << total; other++) {
            if (Integer.bitCount(other) == m) {
                orders++;
                double u = RankTest.of(values(other, total, true), values(other, total, false)).u();
                asFar += Math.abs(u - m * n / 2.0) >= far - 1e-9 ? 1 : 0;
            }
        }
        assertEquals((double) asFar / orders, test.p(), 1e-12);
    }

    private static double[] values(int pick, int total, boolean in) {
        double[] all = new double[total];
        int size = 0;
        for (int i = 0; i < total; i++) {
            if ((pick >> i & 1) == 1 == in) {
                all[size++] = i;
            }
        }
        return Arrays.copyOf(all, size);
    }

    @Test
    void tiesAndManyValuesGoByTheNormalDistribution() {
        double[] bad = new double[200];
        double[] good = new double[200];
        for (int i = 0; i < 200; i++) {
            bad[i] = i % 10;
            good[i] = i % 10;
        }
        RankTest same = RankTest.of(bad, good);
        assertEquals(0.5, same.higher(), 1e-12);
        assertEquals(1, same.p(), 1e-12);
        for (int i = 0; i < 200; i++) {
            bad[i] += 2;
        }
        assertTrue(RankTest.of(bad, good).p() < 1e-6);
        assertEquals(1, RankTest.of(new double[] {3, 3}, new double[] {3, 3, 3}).p());
        assertThrows(IllegalArgumentException.class, () -> RankTest.of(new double[] {Double.NaN}, new double[] {1}));
    }

    /** Mothers' drinking and malformation of infants, Agresti, Categorical Data Analysis: scores 0, 0.5, 1.5, 4, 7; M^2 = 6.57, P = 0.010 (from memory). */
    @Test
    void drinkingMothers() {
        long[] bad = {48, 38, 5, 1, 1};
        long[] absent = {17066, 14464, 788, 126, 37};
        long[] n = new long[5];
        Arrays.setAll(n, i -> bad[i] + absent[i]);
        TrendTest trend = TrendTest.of(new double[] {0, 0.5, 1.5, 4, 7}, bad, n);
        assertEquals(6.57, trend.z() * trend.z(), 0.005);
        assertEquals(0.010, trend.p(), 0.0005);
        assertTrue(trend.slope() > 0);
    }

    @Test
    void noTrendWhereNothingVaries() {
        assertEquals(1, TrendTest.of(new double[] {1, 1}, new long[] {2, 3}, new long[] {9, 9}).p());
        assertEquals(1, TrendTest.of(new double[] {1, 2}, new long[] {0, 0}, new long[] {9, 9}).p());
    }

    /** Percentiles of chi-square in the tables of any textbook. */
    @Test
    void tails() {
        assertEquals(0.05, Tail.chiSquare(3.841459, 1), 1e-7);
        assertEquals(0.05, Tail.chiSquare(11.070498, 5), 1e-8);
        assertEquals(0.01, Tail.chiSquare(23.209251, 10), 1e-8);
        assertEquals(0.025, Tail.normal(1.959963984540054), 1e-12);
        assertEquals(0.975, Tail.normal(-1.959963984540054), 1e-12);
    }
}
