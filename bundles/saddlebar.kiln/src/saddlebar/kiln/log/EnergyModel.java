package saddlebar.kiln.log;

import java.util.List;
import java.util.Optional;

import saddlebar.model.units.Require;

/** What a kiln's firings cost in kWh, learnt from its own records: kWh on peak and hours, by least squares, from five records on. */
public final class EnergyModel {
    public static final int LEAST_RECORDS = 5;

    private final LinearFit fit;
    private final boolean peakOnly;

    private EnergyModel(LinearFit fit, boolean peakOnly) {
        this.fit = fit;
        this.peakOnly = peakOnly;
    }

    /** One firing with its meter's reading. */
    public record Reading(double peakC, double hours, double kWh) {
        public Reading {
            Require.within("peakC", peakC, 20, 1400);
            Require.within("hours", hours, 0, 2000);
            Require.within("kWh", kWh, 0, 1e6);
        }
    }

    /** Empty with fewer than five records, or where all peaks are alike and all hours too. */
    public static Optional<EnergyModel> of(List<Reading> readings) {
        if (readings.size() < LEAST_RECORDS) {
            return Optional.empty();
        }
        double[] kWh = readings.stream().mapToDouble(Reading::kWh).toArray();
        try {
            return Optional.of(new EnergyModel(
                    LinearFit.of(readings.stream().map(r -> new double[] {r.peakC(), r.hours()}).toArray(double[][]::new), kWh), false));
        } catch (IllegalArgumentException dependent) { // peak and hours always change together, or not at all
            try {
                return Optional
                        .of(new EnergyModel(LinearFit.of(readings.stream().map(r -> new double[] {r.peakC()}).toArray(double[][]::new), kWh), true));
            } catch (IllegalArgumentException alike) {
                return Optional.empty();
            }
        }
    }

    public double kWh(double peakC, double hours) {
        return Math.max(0, peakOnly ? fit.at(peakC) : fit.at(peakC, hours));
    }

    public LinearFit fit() {
        return fit;
    }
}
