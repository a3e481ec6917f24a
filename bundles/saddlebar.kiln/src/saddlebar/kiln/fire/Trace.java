package saddlebar.kiln.fire;

import java.util.Arrays;

import saddlebar.kiln.schedule.HeatCurve;

/** What a simulated firing went through, one value a step: written by the simulation, read by all others. */
public final class Trace {
    /** What was followed. */
    public enum Quantity {
        KILN_C, TOP_C, CORE_C, BOTTOM_C, LAG_K, SURFACE_MPA, CENTRE_MPA, TENSION_MPA, POWER_W
    }

    private double[] timeS = new double[4096];
    private final double[][] values = new double[Quantity.values().length][4096];
    private int size;

    Trace() {
    }

    void add(double seconds, double... row) {
        if (size == timeS.length) {
            timeS = Arrays.copyOf(timeS, 2 * size);
            for (int q = 0; q < values.length; q++) {
                values[q] = Arrays.copyOf(values[q], 2 * size);
            }
        }
        timeS[size] = seconds;
        for (int q = 0; q < row.length; q++) {
            values[q][size] = row[q];
        }
        size++;
    }

    public int size() {
        return size;
    }

    public double timeS(int i) {
        return timeS[i];
    }

    public double value(Quantity quantity, int i) {
        return values[quantity.ordinal()][i];
    }

    public double most(Quantity quantity) {
        return Arrays.stream(values[quantity.ordinal()], 0, size).max().orElseThrow();
    }

    public HeatCurve curve(Quantity quantity) {
        return HeatCurve.of(Arrays.copyOf(timeS, size), Arrays.copyOf(values[quantity.ordinal()], size));
    }

    /** Largest value of a quantity from one time to another. */
    public double most(Quantity quantity, double fromS, double toS) {
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < size; i++) {
            if (timeS[i] >= fromS && timeS[i] <= toS) {
                most = Math.max(most, values[quantity.ordinal()][i]);
            }
        }
        return most;
    }
}
