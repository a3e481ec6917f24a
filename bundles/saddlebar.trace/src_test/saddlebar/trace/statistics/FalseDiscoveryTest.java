package saddlebar.trace.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

import org.junit.jupiter.api.Test;

class FalseDiscoveryTest {
    /** The example of Benjamini and Hochberg 1995, section 3.2: four of fifteen are rejected at 0.05, Bonferroni's way three. */
    @Test
    void theExampleOfThePaper() {
        double[] p = {.0001, .0004, .0019, .0095, .0201, .0278, .0298, .0344, .0459, .3240, .4262, .5719, .6528, .7590, 1.0};
        double[] adjusted = FalseDiscovery.adjust(p);
        assertEquals(4, Arrays.stream(adjusted).filter(q -> q <= 0.05).count());
        assertArrayEquals(new double[] {.0015, .003, .0095, .035625, .0603, .063857}, Arrays.copyOf(adjusted, 6), 1e-6);
        assertEquals(3, Arrays.stream(p).filter(q -> q <= 0.05 / 15).count());
    }

    @Property(tries = 200)
    void neverBelowNeverOutOfOrder(@ForAll @Size(min = 1, max = 40) double[] given) {
        double[] p = Arrays.stream(given).map(x -> Double.isFinite(x) ? Math.abs(x) / (1 + Math.abs(x)) : 1).toArray();
        double[] adjusted = FalseDiscovery.adjust(p);
        for (int i = 0; i < p.length; i++) {
            assertEquals(true, adjusted[i] >= p[i] && adjusted[i] <= 1);
            for (int j = 0; j < p.length; j++) {
                assertEquals(true, p[i] > p[j] || adjusted[i] <= adjusted[j]);
            }
        }
    }

    @Property(tries = 50)
    void oneTestStaysAsItIs(@ForAll @DoubleRange(min = 0, max = 1) double p) {
        assertEquals(p, FalseDiscovery.adjust(new double[] {p})[0]);
    }

    @Test
    void whatIsNoChanceIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> FalseDiscovery.adjust(new double[] {0.1, Double.NaN}));
    }
}
