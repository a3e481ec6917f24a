package saddlebar.trace.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

import org.junit.jupiter.api.Test;

class FisherExactTest {
    /** Fisher, The Design of Experiments, 1935, ch. 2: the lady and the tea; 17 of 70 and 1 of 70. */
    @Test
    void theLadyAndTheTea() {
        assertEquals(17 / 70.0, FisherExact.moreThanChance(new TwoByTwo(3, 1, 1, 3)), 1e-14);
        assertEquals(34 / 70.0, FisherExact.twoSided(new TwoByTwo(3, 1, 1, 3)), 1e-14);
        assertEquals(1 / 70.0, FisherExact.moreThanChance(new TwoByTwo(4, 0, 0, 4)), 1e-15);
    }

    /** Twins of convicts, Fisher 1962; the values R's fisher.test gives in its own example. */
    @Test
    void convictedTwins() {
        TwoByTwo twins = new TwoByTwo(10, 3, 2, 15);
        assertEquals(0.000465181, FisherExact.moreThanChance(twins), 1e-9);
        assertEquals(0.000536724, FisherExact.twoSided(twins), 1e-9);
    }

    /** Computed apart from this code, with whole numbers. */
    @Test
    void aScreenThatFlaws() {
        assertEquals(6.2244e-5, FisherExact.moreThanChance(new TwoByTwo(7, 2, 2, 29)), 1e-9);
    }

    @Test
    void anEmptyMarginSaysNothing() {
        assertEquals(1, FisherExact.moreThanChance(new TwoByTwo(0, 5, 0, 9)), 1e-12);
        assertEquals(1, FisherExact.twoSided(new TwoByTwo(0, 0, 4, 9)), 1e-12);
        assertEquals(1, FisherExact.moreThanChance(new TwoByTwo(0, 0, 0, 0)), 1e-12);
    }

    @Property(tries = 300)
    void asWithWholeNumbers(@ForAll @LongRange(max = 60) long a, @ForAll @LongRange(max = 60) long b, @ForAll @LongRange(max = 60) long c,
            @ForAll @LongRange(max = 60) long d) {
        TwoByTwo table = new TwoByTwo(a, b, c, d);
        BigInteger sum = BigInteger.ZERO;
        for (long k = a; k <= Math.min(table.exposed(), table.bad()); k++) {
            sum = sum.add(choose(table.bad(), k).multiply(choose(table.total() - table.bad(), table.exposed() - k)));
        }
        double exact = new BigDecimal(sum).divide(new BigDecimal(choose(table.total(), table.exposed())), MathContext.DECIMAL64).doubleValue();
        assertEquals(exact, FisherExact.moreThanChance(table), 1e-12 + exact * 1e-11);
    }

    @Test
    void largeCountsKeepTheirDigits() {
        // a million units: log-factorials of 2e7 in size must not cost more than nine digits
        double p = FisherExact.moreThanChance(new TwoByTwo(60, 940, 40_000, 959_000));
        assertTrue(p > 1e-6 && p < 1e-2, "p = " + p);
        double z = (60 - 40.06) / Math.sqrt(40.06 * (1 - 0.04006));
        assertEquals(Tail.normal(z), p, 0.003);
    }

    private static BigInteger choose(long n, long k) {
        if (k < 0 || k > n) {
            return BigInteger.ZERO;
        }
        BigInteger ways = BigInteger.ONE;
        for (long i = 1; i <= k; i++) {
            ways = ways.multiply(BigInteger.valueOf(n - k + i)).divide(BigInteger.valueOf(i));
        }
        return ways;
    }
}
