package saddlebar.kiln.log;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

import saddlebar.kiln.log.EnergyModel.Reading;

class LinearFitTest {
    /** Certified values: NIST Statistical Reference Datasets, Longley (J. Am. Stat. Assoc. 62, 1967): hard, since its columns nearly depend on each other. */
    private static final double[][] LONGLEY = {{60323, 83.0, 234289, 2356, 1590, 107608, 1947}, {61122, 88.5, 259426, 2325, 1456, 108632, 1948},
            {60171, 88.2, 258054, 3682, 1616, 109773, 1949}, {61187, 89.5, 284599, 3351, 1650, 110929, 1950},
            {63221, 96.2, 328975, 2099, 3099, 112075, 1951},
            {63639, 98.1, 346999, 1932, 3594, 113270, 1952}, {64989, 99.0, 365385, 1870, 3547, 115094, 1953},
            {63761, 100.0, 363112, 3578, 3350, 116219, 1954},
            {66019, 101.2, 397469, 2904, 3048, 117388, 1955}, {67857, 104.6, 419180, 2822, 2857, 118734, 1956},
            {68169, 108.4, 442769, 2936, 2798, 120445, 1957},
            {66513, 110.8, 444546, 4681, 2637, 121950, 1958}, {68655, 112.6, 482704, 3813, 2552, 123366, 1959},
            {69564, 114.2, 502601, 3931, 2514, 125368, 1960},
            {69331, 115.7, 518173, 4806, 2572, 127852, 1961}, {70551, 116.9, 554894, 4007, 2827, 130081, 1962}};

    @Test
    void certifiedValues() {
        double[][] x = new double[16][6];
        double[] y = new double[16];
        for (int i = 0; i < 16; i++) {
            y[i] = LONGLEY[i][0];
            System.arraycopy(LONGLEY[i], 1, x[i], 0, 6);
        }
        LinearFit fit = LinearFit.of(x, y);
        double[] beta = {-3482258.63459582, 15.0618722713733, -0.0358191792925910, -2.02022980381683, -1.03322686717359, -0.0511041056535807,
                1829.15146461355};
        double[] errors = {890420.383607373, 84.9149257747669, 0.0334910077722432, 0.488399681651699, 0.214274163161675, 0.226073200069370,
                455.478499142212};
        for (int i = 0; i < 7; i++) {
            assertEquals(1, fit.coefficients()[i] / beta[i], 1e-7, "coefficient " + i);
            assertEquals(1, fit.standardErrors()[i] / errors[i], 1e-7, "standard error " + i);
        }
        assertEquals(304.854073561965, fit.residualSd(), 1e-5);
        assertEquals(0.995479004577296, fit.rSquared(), 1e-10);
    }

    @Test
    void exactLinesAndFaults() {
        LinearFit line = LinearFit.of(new double[][] {{0}, {1}, {2}}, new double[] {1, 3, 5});
        assertArrayEquals(new double[] {1, 2}, line.coefficients(), 1e-12);
        assertEquals(7, line.at(3), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> LinearFit.of(new double[][] {{1}}, new double[] {1}));
        assertThrows(IllegalArgumentException.class, () -> LinearFit.of(new double[][] {{2}, {2}, {2}}, new double[] {1, 2, 3}));
    }

    /** A kiln that takes 2 + 0.015 peak + 0.4 hours kWh, read with an error of 0.2: found again from a dozen firings. */
    @Test
    void energyOfAKilnIsLearnt() {
        Random chance = new Random(7);
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            double peak = 560 + 20 * (i % 7);
            double hours = 9 + i % 5;
            readings.add(new Reading(peak, hours, 2 + 0.015 * peak + 0.4 * hours + 0.2 * chance.nextGaussian()));
        }
        EnergyModel model = EnergyModel.of(readings).orElseThrow();
        assertEquals(2 + 0.015 * 650 + 0.4 * 12, model.kWh(650, 12), 0.5);
        assertTrue(EnergyModel.of(readings.subList(0, 4)).isEmpty(), "from five records on");
        List<Reading> alike = List.of(new Reading(650, 12, 14), new Reading(650, 12, 15), new Reading(650, 12, 14), new Reading(650, 12, 14),
                new Reading(650, 12, 15));
        assertTrue(EnergyModel.of(alike).isEmpty());
        List<Reading> together = List.of(new Reading(600, 12, 14), new Reading(650, 13, 15), new Reading(700, 14, 16), new Reading(600, 12, 14),
                new Reading(650, 13, 15));
        assertEquals(16, EnergyModel.of(together).orElseThrow().kWh(700, 14), 1e-6);
    }

    @Test
    void driftIsToldWhenItIsClear() {
        List<KilnDrift.Seen> rising = new ArrayList<>();
        List<KilnDrift.Seen> steady = new ArrayList<>();
        double[] noise = {1.2, -0.8, 0.4, -1.4, 0.9, -0.2, 0.6, -0.9};
        for (int i = 0; i < 8; i++) {
            rising.add(new KilnDrift.Seen(20 * i, 1.5 * 20 * i / 30 + noise[i]));
            steady.add(new KilnDrift.Seen(20 * i, noise[i]));
        }
        KilnDrift drift = KilnDrift.of(rising).orElseThrow();
        assertEquals(1.5, drift.kPerMonth(), 0.4);
        assertTrue(drift.clear());
        assertTrue(drift.caution("small kiln").orElseThrow().message().contains("hotter than told"));
        assertTrue(KilnDrift.of(steady).orElseThrow().caution("small kiln").isEmpty());
        assertTrue(KilnDrift.of(rising.subList(0, 3)).isEmpty());
        assertTrue(KilnDrift.of(List.of(rising.get(0), rising.get(0), rising.get(0), rising.get(0))).isEmpty());
    }
}
