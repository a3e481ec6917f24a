package saddlebar.kiln.couple;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class ThermocoupleTest {
    /**
     * Reference tables of NIST Monograph 175, mV to three decimals. S, R, N: from memory of the same tables, confirmed by the functions to the
     * last digit.
     */
    @Test
    void valuesOfThePublishedTables() {
        double[][] k = {{25, 1.000}, {100, 4.096}, {300, 12.209}, {500, 20.644}, {560, 23.203}, {600, 24.905}, {650, 27.025}, {800, 33.275},
                {1000, 41.276}, {-20, -0.778}};
        double[][] s = {{100, 0.646}, {500, 4.233}, {1000, 9.587}, {1200, 11.951}};
        double[][] r = {{100, 0.647}, {500, 4.471}, {1000, 10.506}, {1200, 13.228}};
        double[][] n = {{100, 2.774}, {500, 16.748}, {1000, 36.256}, {1200, 43.846}};
        check(Thermocouple.K, k);
        check(Thermocouple.S, s);
        check(Thermocouple.R, r);
        check(Thermocouple.N, n);
    }

    private static void check(Thermocouple type, double[][] table) {
        for (double[] row : table) {
            assertEquals(row[1], type.mv(row[0]), 0.00051, "type " + type + " at " + row[0] + " degC");
            assertEquals(row[0], type.degC(row[1]), 0.1, "type " + type + " at " + row[1] + " mV");
        }
    }

    /** By the published inverse: 27.025 mV is 649.98 degC; 26.000 mV with the cold junction at 24 degC is 648.44, and not 24 more than 26.000 mV. */
    @Test
    void coldJunction() {
        assertEquals(649.98, Thermocouple.K.degC(27.025), 0.01);
        assertEquals(648.44, Thermocouple.K.degC(26.000, 24), 0.01);
        assertTrue(Math.abs(Thermocouple.K.degC(26.000) + 24 - 648.44) > 0.5);
    }

    /** The table of the inverses promises 0.05 K and less (0.06 for R and the negative range of K). */
    @Property(tries = 400)
    void thereAndBack(@ForAll Thermocouple type, @ForAll @DoubleRange(min = -20, max = 1290) double degC) {
        assertEquals(degC, type.degC(type.mv(degC)), 0.06);
    }

    @Property(tries = 200)
    void forceRisesWithTemperature(@ForAll Thermocouple type, @ForAll @DoubleRange(min = -20, max = 1290) double degC) {
        assertTrue(type.mv(degC + 1) > type.mv(degC));
    }

    @Test
    void theFunctionsOfNeighbouringRangesMeet() {
        for (Thermocouple type : Thermocouple.values()) {
            for (double at : new double[] {0, 1064.18}) {
                if (at < type.mostC()) {
                    assertEquals(type.mv(at - 1e-7), type.mv(at + 1e-7), 2e-5, "type " + type + " at " + at);
                }
            }
        }
    }

    @Test
    void beyondTheRange() {
        assertThrows(IllegalArgumentException.class, () -> Thermocouple.K.degC(60));
        assertThrows(IllegalArgumentException.class, () -> Thermocouple.K.mv(1400));
        assertFalse(Thermocouple.K.covers(54, 600));
        assertTrue(Thermocouple.K.covers(27, 24));
        assertEquals(Thermocouple.S, Thermocouple.of("s").orElseThrow());
        assertTrue(Thermocouple.of("X").isEmpty());
    }
}
