package saddlebar.kiln.plate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import saddlebar.kiln.glass.Glass;
import saddlebar.kiln.glass.HeatCapacity;

class SlabStackTest {
    private static final Glass CONSTANT = Glass.floatGlass().withHeat(HeatCapacity.constant(720));
    private static final double KAPPA = 1.0 / (2500 * 720);

    private static SlabStack plate(double mm, int nodes, Face bottom) {
        return new SlabStack(List.of(Slab.of(CONSTANT, mm, nodes, 0)), Face.HELD, bottom, 20);
    }

    @Test
    void diffusivityOfTheStandard() {
        assertEquals(5.556e-7, CONSTANT.diffusivityM2PerS(), 1e-10); // EN 572-1
    }

    /** Steady ramp: R a^2/(2 kappa) with both faces heated, R h^2/(2 kappa) with one; Carslaw and Jaeger 1959, 3.4 (from memory). */
    @Test
    void lagInASteadyRamp() {
        double[][] expected = {{3, 0.056, 0.225}, {6, 0.225, 0.900}, {10, 0.625, 2.500}};
        for (double[] row : expected) {
            SlabStack both = plate(row[0], 9, Face.HELD);
            SlabStack one = plate(row[0], 9, Face.INSULATED);
            double now = 20;
            for (int i = 0; i < 1500; i++) {
                double next = now + 100.0 / 3600;
                both.advance(1, now, next);
                one.advance(1, now, next);
                now = next;
            }
            assertEquals(row[1], both.temperatureC(0) - both.temperatureC(4), 0.01 * row[1] + 0.0005, row[0] + " mm, both faces");
            assertEquals(row[2], one.temperatureC(0) - one.temperatureC(8), 0.01 * row[2] + 0.0005, row[0] + " mm, one face");
        }
    }

    /**
     * Excess of the centre after a step of both faces, by the series 4/pi sum (-1)^n/(2n+1) exp(-(2n+1)^2 pi^2 Fo/4) (Carslaw and Jaeger 1959,
     * 3.3; from memory).
     */
    private static double series(double fo) {
        double sum = 0;
        for (int n = 0; n < 60; n++) {
            double odd = 2 * n + 1;
            sum += (n % 2 == 0 ? 1 : -1) / odd * Math.exp(-odd * odd * Math.PI * Math.PI * fo / 4);
        }
        return 4 / Math.PI * sum;
    }

    @Test
    void stepChangeAgainstTheSeries() {
        double[][] published = {{0.1, 0.94931}, {0.2, 0.77231}, {0.5, 0.37078}, {1, 0.10798}};
        double a = 0.005;
        for (double[] row : published) {
            assertEquals(row[1], series(row[0]), 0.000006, "the series itself");
            SlabStack stack = plate(10, 41, Face.HELD);
            double seconds = row[0] * a * a / KAPPA;
            int steps = 400;
            for (int i = 0; i < steps; i++) {
                stack.advance(seconds / steps, 120, 120);
            }
            double excess = (120 - stack.temperatureC(20)) / 100;
            assertEquals(row[1], excess, 0.01 * row[1], "Fo " + row[0]);
        }
    }

    /** A sine over the thickness decays as exp(-kappa (pi/h)^2 t) and keeps its shape: error against it as steps and distances are halved. */
    @Test
    void orderOfTheSchemeIsTwoInTimeAndTwoInSpace() {
        double[] inTime = new double[3];
        for (int i = 0; i < 3; i++) {
            inTime[i] = sineError(201, 4 << i, 1.0, discreteRate(201));
        }
        assertEquals(2, Math.log(inTime[0] / inTime[1]) / Math.log(2), 0.15, "time, first halving");
        assertEquals(2, Math.log(inTime[1] / inTime[2]) / Math.log(2), 0.15, "time, second halving");
        double[] inSpace = new double[3];
        for (int i = 0; i < 3; i++) {
            inSpace[i] = sineError((4 << i) + 1, 4000, 1.0, KAPPA * Math.pow(Math.PI / 0.01, 2));
        }
        assertEquals(2, Math.log(inSpace[0] / inSpace[1]) / Math.log(2), 0.15, "space, first halving");
        assertEquals(2, Math.log(inSpace[1] / inSpace[2]) / Math.log(2), 0.15, "space, second halving");
    }

    /** Decay of the sine on a grid, so that the error in time alone is seen: 4 kappa/dz^2 sin^2(pi/(2(n-1))). */
    private static double discreteRate(int nodes) {
        double dz = 0.01 / (nodes - 1);
        double sine = Math.sin(Math.PI / (2 * (nodes - 1)));
        return 4 * KAPPA / (dz * dz) * sine * sine;
    }

    private static double sineError(int nodes, int steps, double halfLives, double rate) {
        SlabStack stack = plate(10, nodes, Face.HELD);
        for (int i = 0; i < nodes; i++) {
            stack.set(i, 500 + 100 * Math.sin(Math.PI * i / (nodes - 1)));
        }
        double seconds = halfLives / rate;
        for (int i = 0; i < steps; i++) {
            stack.advance(seconds / steps, 500, 500);
        }
        return Math.abs(stack.temperatureC(nodes / 2) - 500 - 100 * Math.exp(-rate * seconds));
    }

    @Property(tries = 60)
    void heatIsKept(@ForAll @DoubleRange(min = 1, max = 30) double mm, @ForAll @DoubleRange(min = 0.5, max = 60) double stepS,
            @ForAll @DoubleRange(min = 20, max = 900) double kilnC, @ForAll @DoubleRange(min = 20, max = 900) double startC) {
        Slab glass = Slab.of(Glass.floatGlass(), mm, 9, 150);
        Slab shelf = new Slab(0.015, 7, 1.3, 2000, HeatCapacity.constant(900), 0);
        SlabStack stack = new SlabStack(List.of(glass, shelf), new Face(8, 0.87), new Face(8, 0.85), startC);
        double before = stack.contentJPerM2(0, stack.nodes());
        double in = 0;
        double turnover = 0;
        for (int i = 0; i < 100; i++) {
            stack.advance(stepS, startC + (kilnC - startC) * i / 100, startC + (kilnC - startC) * (i + 1) / 100);
            in += stack.topJPerM2() + stack.bottomJPerM2();
            turnover += Math.abs(stack.topJPerM2()) + Math.abs(stack.bottomJPerM2());
        }
        assertEquals(stack.contentJPerM2(0, stack.nodes()) - before, in, 1e-5 * turnover + 1);
    }

    @Property(tries = 60)
    void staysBetweenTheKilnAndItsBeginning(@ForAll @DoubleRange(min = 20, max = 900) double kilnC,
            @ForAll @DoubleRange(min = 20, max = 900) double startC,
            @ForAll @DoubleRange(min = 5, max = 60) double stepS) {
        SlabStack stack = new SlabStack(List.of(Slab.of(Glass.floatGlass(), 6, 9, 0)), new Face(8, 0.87), Face.INSULATED, startC);
        for (int i = 0; i < 50; i++) {
            stack.advance(stepS, kilnC, kilnC);
            for (int node = 0; node < 9; node++) {
                assertTrue(stack.temperatureC(node) >= Math.min(kilnC, startC) - 0.01 * Math.abs(kilnC - startC) - 1e-6
                        && stack.temperatureC(node) <= Math.max(kilnC, startC) + 0.01 * Math.abs(kilnC - startC) + 1e-6, "node " + node);
            }
        }
    }
}
