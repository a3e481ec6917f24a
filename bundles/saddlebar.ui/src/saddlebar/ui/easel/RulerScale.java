package saddlebar.ui.easel;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import saddlebar.model.units.Units;

/**
 * Where the ticks of a ruler stand and what is written on them. Millimetres go in steps of 1, 2, 5 and their tens; inches in halves down to
 * sixteenths and in 1, 2, 5 and their tens above one.
 */
public final class RulerScale {
    /** In which unit a ruler is divided. */
    public enum Unit {
        MM(1), INCH(Units.MM_PER_INCH);

        private final double mm;

        Unit(double mm) {
            this.mm = mm;
        }
    }

    /**
     * One tick.
     *
     * @param atMm  its place
     * @param label what is written on it; empty for the ticks between
     * @param share how long it is, 0 to 1 of the ruler's width
     */
    public record Tick(double atMm, String label, double share) {
    }

    private static final double[] INCH_STEPS = {1 / 16.0, 1 / 8.0, 1 / 4.0, 1 / 2.0, 1};

    private final Unit unit;
    private final double step;
    private final int parts;

    private RulerScale(Unit unit, double step, int parts) {
        this.unit = unit;
        this.step = step;
        this.parts = parts;
    }

    /** A ruler whose labels stand at least so many points apart. */
    public static RulerScale of(Unit unit, double ptPerMm, double leastLabelPt) {
        double least = leastLabelPt / ptPerMm / unit.mm;
        if (unit == Unit.INCH) {
            for (double step : INCH_STEPS) {
                if (step >= least) {
                    return new RulerScale(unit, step, step == 1 ? 8 : 4);
                }
            }
        }
        double ten = Math.pow(10, Math.floor(Math.log10(least) + 1e-12));
        for (int factor : new int[] {1, 2, 5}) {
            if (factor * ten >= least * (1 - 1e-12)) {
                return new RulerScale(unit, factor * ten, factor == 2 ? 4 : factor == 5 ? 5 : 10);
            }
        }
        return new RulerScale(unit, 10 * ten, 10);
    }

    /** Between two labels, in the ruler's unit. */
    public double step() {
        return step;
    }

    /** The ticks from one place to another, in order; those between labels are left out where they would crowd. */
    public List<Tick> ticks(double fromMm, double toMm, double ptPerMm) {
        double stepMm = step * unit.mm;
        int fine = stepMm / parts * ptPerMm >= 4 ? parts : parts % 2 == 0 && stepMm / 2 * ptPerMm >= 4 ? 2 : 1;
        double tickMm = stepMm / fine;
        List<Tick> ticks = new ArrayList<>();
        long first = (long) Math.ceil(fromMm / tickMm - 1e-9);
        long last = (long) Math.floor(toMm / tickMm + 1e-9);
        for (long i = first; i <= last; i++) {
            boolean labelled = Math.floorMod(i, (long) fine) == 0;
            boolean middle = fine % 2 == 0 && Math.floorMod(i, (long) fine) == fine / 2;
            ticks.add(new Tick(i * tickMm, labelled ? label(i / fine * step) : "", labelled ? 1 : middle ? 0.45 : 0.25));
        }
        return ticks;
    }

    private String label(double value) {
        if (value == Math.rint(value)) {
            return String.format(Locale.ROOT, "%d", (long) value);
        }
        if (unit == Unit.INCH && step < 1) {
            return fraction(value);
        }
        int decimals = (int) Math.max(1, Math.ceil(-Math.log10(step) - 1e-9));
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    private static String fraction(double inches) {
        long sixteenths = Math.round(Math.abs(inches) * 16);
        long whole = sixteenths / 16;
        long top = sixteenths % 16;
        long bottom = 16;
        while (top % 2 == 0) {
            top /= 2;
            bottom /= 2;
        }
        return (inches < 0 ? "-" : "") + (whole == 0 ? "" : whole + " ") + top + "/" + bottom;
    }
}
