package saddlebar.kiln.plate;

import java.util.Arrays;

import saddlebar.kiln.glass.Glass;
import saddlebar.model.units.Require;

/**
 * Stress through the thickness of a glass plate that is heated and cooled: thermal strain, elastic resistance, Maxwell's relaxation
 * d sigma/dt = rate - sigma / tau with tau = eta / G. Tension is positive. Belongs to one thread.
 * <p>Far from its edges the plate is free to grow (no net force), and free to bow (no net moment) or held flat. Each step is exact
 * for a viscosity and a rate that are constant in it. What freezes when it cools linearly through the strain point is the parabolic profile with 2/3 of
 * E alpha dT/(1 - nu) in compression on the faces and 1/3 in tension in the centre. Structural relaxation is not in it: Gardon and Narayanaswamy (1970)
 * found about 40 % of the lasting stress to be structural, so a lasting stress from here is divided by 0.6 before it is judged.
 */
public final class MaxwellPlate {
    /** Share of the lasting stress that gradients explain: Gardon and Narayanaswamy 1970. */
    public static final double GRADIENT_SHARE = 0.6;

    /** What the plate may do when one face is hotter. */
    public enum Hold {
        /** Small pieces: they bow by micrometres. */
        FREE,
        /** Held flat by its own weight or by what lies on it: the worse case. */
        FLAT
    }

    /** Beyond it no step of a firing relaxes anything. */
    private static final double STIFF_LOG_ETA = 19;

    private final Glass glass;
    private final Hold hold;
    private final int n;
    private final double[] place;
    private final double[] weight;
    private final double[] sigmaPa;
    private final double[] beforeC;
    private final double[] keep;
    private final double[] give;
    private final double secondMoment;

    /**
     * @param nodes  odd, at least 3: forces are summed by Simpson's rule, exact for a parabola
     * @param startC temperature of all of it at the beginning, without stress
     */
    public MaxwellPlate(Glass glass, int nodes, double startC, Hold hold) {
        if (nodes % 2 == 0) {
            throw new IllegalArgumentException("nodes must be odd but is " + nodes);
        }
        this.glass = glass;
        this.hold = hold;
        this.n = Require.within("nodes", nodes, 3, 1001);
        this.place = new double[n];
        this.weight = new double[n];
        double moment = 0;
        for (int i = 0; i < n; i++) {
            place[i] = 2.0 * i / (n - 1) - 1;
            weight[i] = (i == 0 || i == n - 1 ? 1 : i % 2 == 1 ? 4 : 2) / (3.0 * (n - 1));
            moment += weight[i] * place[i] * place[i];
        }
        this.secondMoment = moment;
        this.sigmaPa = new double[n];
        this.beforeC = new double[n];
        Arrays.fill(beforeC, startC);
        this.keep = new double[n];
        this.give = new double[n];
    }

    public int nodes() {
        return n;
    }

    /** Stress at a node in MPa, tension positive. */
    public double stressMpa(int node) {
        return sigmaPa[node] / 1e6;
    }

    /** Sets a stress, for checks that begin with one. */
    public void set(int node, double mpa) {
        sigmaPa[node] = mpa * 1e6;
    }

    public double mostTensionMpa() {
        return Arrays.stream(sigmaPa).max().orElseThrow() / 1e6;
    }

    public double mostCompressionMpa() {
        return -Arrays.stream(sigmaPa).min().orElseThrow() / 1e6;
    }

    /** One step to new temperatures, those of the first n nodes of the stack. */
    public void advance(double seconds, SlabStack stack) {
        for (int i = 0; i < n; i++) {
            keep[i] = stack.temperatureC(i);
        }
        advance(seconds, keep.clone());
    }

    /** One step to new temperatures, shape [nodes], top face first. */
    public void advance(double seconds, double[] nowC) {
        double e = glass.biaxialPa();
        double alpha = glass.expansionPerK();
        double relax = seconds * glass.shearPa();
        double sumGive = 0;
        double sumGiveZ = 0;
        double sumGiveZz = 0;
        double force = 0;
        double moment = 0;
        for (int i = 0; i < n; i++) {
            double middle = (nowC[i] + beforeC[i]) / 2;
            double logEta = glass.viscosity().logEta(middle);
            if (logEta > STIFF_LOG_ETA) {
                keep[i] = 1;
                give[i] = e;
            } else {
                double x = relax * glass.viscosity().fluidity(middle);
                keep[i] = Math.exp(-x);
                give[i] = e * (x < 1e-9 ? 1 : -Math.expm1(-x) / x);
            }
            double free = sigmaPa[i] * keep[i] - give[i] * alpha * (nowC[i] - beforeC[i]);
            sigmaPa[i] = free;
            force += weight[i] * free;
            moment += weight[i] * free * place[i];
            sumGive += weight[i] * give[i];
            sumGiveZ += weight[i] * give[i] * place[i];
            sumGiveZz += weight[i] * give[i] * place[i] * place[i];
        }
        double stretch;
        double bend;
        if (hold == Hold.FREE) {
            double determinant = sumGive * sumGiveZz - sumGiveZ * sumGiveZ;
            stretch = (-force * sumGiveZz + moment * sumGiveZ) / determinant;
            bend = (-moment * sumGive + force * sumGiveZ) / determinant;
        } else {
            stretch = -force / sumGive;
            bend = 0;
        }
        for (int i = 0; i < n; i++) {
            sigmaPa[i] += give[i] * (stretch + bend * place[i]);
            beforeC[i] = nowC[i];
        }
    }

    /** Stress that stays when all of the plate has reached one temperature, in MPa; nothing relaxes any more. */
    public double[] settledMpa() {
        double e = glass.biaxialPa();
        double alpha = glass.expansionPerK();
        double mean = 0;
        double tilt = 0;
        for (int i = 0; i < n; i++) {
            mean += weight[i] * beforeC[i];
            tilt += weight[i] * beforeC[i] * place[i];
        }
        double slope = hold == Hold.FREE ? tilt / secondMoment : 0;
        double[] settled = new double[n];
        for (int i = 0; i < n; i++) {
            settled[i] = (sigmaPa[i] + e * alpha * (beforeC[i] - mean - slope * place[i])) / 1e6;
        }
        return settled;
    }
}
