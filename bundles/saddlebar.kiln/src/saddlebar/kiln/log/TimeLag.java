package saddlebar.kiln.log;

import saddlebar.kiln.schedule.HeatCurve;

/** How much later one curve lies than another: the shift at which their cross-correlation (Pearson's, over the time they share) is highest. */
final class TimeLag {
    private static final int SAMPLES = 1500;

    private TimeLag() {
    }

    /** Seconds by which {@code later} lies behind {@code earlier}; looked for within half the length of the longer one. */
    static double seconds(HeatCurve earlier, HeatCurve later) {
        double span = Math.max(earlier.endS() - earlier.startS(), later.endS() - later.startS());
        if (span <= 0) {
            return 0;
        }
        double step = span / SAMPLES;
        double[] a = sampled(earlier, step);
        double[] b = sampled(later, step);
        int most = SAMPLES / 2;
        int best = 0;
        double highest = Double.NEGATIVE_INFINITY;
        for (int shift = -most; shift <= most; shift++) {
            double r = correlation(a, b, shift);
            if (r > highest + 1e-12 || r > highest - 1e-12 && Math.abs(shift) < Math.abs(best)) {
                highest = Math.max(r, highest);
                best = shift;
            }
        }
        double left = correlation(a, b, best - 1);
        double right = correlation(a, b, best + 1);
        double bend = left - 2 * highest + right;
        double fine = bend < 0 ? Math.max(-0.5, Math.min(0.5, 0.5 * (left - right) / bend)) : 0;
        return (best + fine) * step + later.startS() - earlier.startS();
    }

    private static double[] sampled(HeatCurve curve, double step) {
        int n = (int) Math.floor((curve.endS() - curve.startS()) / step) + 1;
        double[] values = new double[n];
        for (int i = 0; i < n; i++) {
            values[i] = curve.at(curve.startS() + i * step);
        }
        return values;
    }

    /** Of a[i] and b[i + shift], over the indices that both have; -1 if they share less than half. */
    private static double correlation(double[] a, double[] b, int shift) {
        int from = Math.max(0, -shift);
        int to = Math.min(a.length, b.length - shift);
        int n = to - from;
        if (n < Math.min(a.length, b.length) / 2 || n < 3) {
            return -1;
        }
        double sumA = 0;
        double sumB = 0;
        double sumAa = 0;
        double sumBb = 0;
        double sumAb = 0;
        for (int i = from; i < to; i++) {
            double x = a[i];
            double y = b[i + shift];
            sumA += x;
            sumB += y;
            sumAa += x * x;
            sumBb += y * y;
            sumAb += x * y;
        }
        double spread = Math.sqrt((sumAa - sumA * sumA / n) * (sumBb - sumB * sumB / n));
        return spread == 0 ? -1 : (sumAb - sumA * sumB / n) / spread;
    }
}
