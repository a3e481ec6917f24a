package saddlebar.kiln.plate;

import java.util.Arrays;
import java.util.List;

import saddlebar.kiln.glass.HeatCapacity;

/**
 * Heat through flat layers that lie on each other, from the top face down: one-dimensional conduction by finite volumes, radiation and convection on
 * both outer faces. All per m2. Belongs to one thread.
 * <p>Space: volumes around evenly spaced nodes, second order. Time: the two-stage, stiffly stable SDIRK method of order 2 with gamma = 1 - 1/sqrt 2
 * (Alexander, R. (1977). Diagonally implicit Runge-Kutta methods for stiff O.D.E.'s. SIAM J. Numer. Anal. 14, 1006-1021), which
 * neither rings nor needs small steps where a kiln's rate changes at once. What is stepped is the heat content, not the temperature, so heat is kept
 * to the tolerance of
 * Newton's method even though specific heat varies. Each stage costs a tridiagonal solution or two.
 */
public final class SlabStack {
    private static final double GAMMA = 1 - Math.sqrt(0.5);
    private static final double KELVIN = 273.15;
    private static final double CLOSE_ENOUGH_K = 1e-4; // of the last change; what then is left is of the order of its square
    private static final int MOST_ROUNDS = 40;

    private final int n;
    private final double[] massKgPerM2;
    private final HeatCapacity[] heat;
    private final double[] conductance;
    private final Face top;
    private final Face bottom;
    private final double[] temperatureC;
    private final double[] content;
    private final double[] stage;
    private final double[] start;
    private final double[] upper;
    private final double[] right;
    private double topJPerM2;
    private double bottomJPerM2;

    /**
     * @param slabs  from the top down, at least one
     * @param startC temperature of all of it at the beginning
     */
    public SlabStack(List<Slab> slabs, Face top, Face bottom, double startC) {
        this.n = slabs.stream().mapToInt(Slab::nodes).sum();
        this.massKgPerM2 = new double[n];
        this.heat = new HeatCapacity[n];
        this.conductance = new double[n];
        this.top = top;
        this.bottom = bottom;
        int at = 0;
        for (Slab slab : slabs) {
            double dz = slab.thicknessM() / (slab.nodes() - 1);
            for (int i = 0; i < slab.nodes(); i++, at++) {
                boolean outer = i == 0 || i == slab.nodes() - 1;
                massKgPerM2[at] = slab.densityKgPerM3() * dz * (outer ? 0.5 : 1);
                heat[at] = slab.heat();
                conductance[at] = i == slab.nodes() - 1 ? slab.contactWPerM2K() : slab.conductivityWPerMK() / dz;
            }
        }
        conductance[n - 1] = 0;
        this.temperatureC = new double[n];
        Arrays.fill(temperatureC, startC);
        this.content = new double[n];
        for (int i = 0; i < n; i++) {
            content[i] = massKgPerM2[i] * heat[i].enthalpy(startC);
        }
        this.stage = new double[n];
        this.start = new double[n];
        this.upper = new double[n];
        this.right = new double[n];
    }

    public int nodes() {
        return n;
    }

    /** Temperature of a node in degC, 0 on the top face. */
    public double temperatureC(int node) {
        return temperatureC[node];
    }

    /** Sets one node's temperature before the first step, for checks that begin with a profile. */
    public void set(int node, double degC) {
        temperatureC[node] = degC;
        content[node] = massKgPerM2[node] * heat[node].enthalpy(degC);
    }

    /** Heat that went in through the top face in the last step, J/m2. */
    public double topJPerM2() {
        return topJPerM2;
    }

    /** Heat that went in through the bottom face in the last step, J/m2. */
    public double bottomJPerM2() {
        return bottomJPerM2;
    }

    /** Heat content above 20 degC, J/m2, of the nodes from one to another (exclusive). */
    public double contentJPerM2(int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += massKgPerM2[i] * heat[i].enthalpy(temperatureC[i]);
        }
        return sum;
    }

    /** One step in which the kiln goes linearly from one temperature to another. */
    public void advance(double seconds, double kilnFromC, double kilnToC) {
        double g = GAMMA * seconds;
        System.arraycopy(content, 0, start, 0, n);
        double airFirst = kilnFromC + (kilnToC - kilnFromC) * GAMMA;
        solve(g, airFirst);
        double topFirst = flux(top, airFirst, temperatureC[0]);
        double bottomFirst = flux(bottom, airFirst, temperatureC[n - 1]);
        double carry = (1 - GAMMA) / GAMMA;
        for (int i = 0; i < n; i++) { // start + (1 - gamma) dt F1, where gamma dt F1 = H1 - start
            double before = content[i];
            start[i] = before + carry * (stage[i] - before);
        }
        solve(g, kilnToC);
        System.arraycopy(stage, 0, content, 0, n);
        topJPerM2 = seconds * ((1 - GAMMA) * topFirst + GAMMA * flux(top, kilnToC, temperatureC[0]));
        bottomJPerM2 = seconds * ((1 - GAMMA) * bottomFirst + GAMMA * flux(bottom, kilnToC, temperatureC[n - 1]));
    }

    private static double flux(Face face, double airC, double surfaceC) {
        double a = airC + KELVIN;
        double s = surfaceC + KELVIN;
        double a2 = a * a;
        double s2 = s * s;
        return face.convectionWPerM2K() * (airC - surfaceC) + face.emissivity() * Face.STEFAN_BOLTZMANN * (a2 * a2 - s2 * s2);
    }

    private static double slope(Face face, double surfaceC) {
        double s = surfaceC + KELVIN;
        return face.convectionWPerM2K() + 4 * face.emissivity() * Face.STEFAN_BOLTZMANN * s * s * s;
    }

    /** Finds temperatures with H(T) = start + g F(T); leaves H in stage. Newton; the old temperatures are the first guess. */
    private void solve(double g, double airC) {
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double largest = newton(g, airC);
            if (largest < CLOSE_ENOUGH_K) {
                break;
            }
            if (round == MOST_ROUNDS - 1) {
                throw new IllegalStateException("heat conduction did not converge, last change " + largest + " K");
            }
        }
        for (int i = 0; i < n; i++) {
            stage[i] = massKgPerM2[i] * heat[i].enthalpy(temperatureC[i]);
        }
    }

    private double newton(double g, double airC) {
        double belowBefore = 0;
        for (int i = 0; i < n; i++) {
            double t = temperatureC[i];
            double below = g * conductance[i];
            double flow = belowBefore * (i > 0 ? temperatureC[i - 1] - t : 0) + below * (i < n - 1 ? temperatureC[i + 1] - t : 0);
            double diagonal = massKgPerM2[i] * heat[i].at(t) + belowBefore + below;
            if (i == 0) {
                flow += g * flux(top, airC, t);
                diagonal += g * slope(top, t);
            }
            if (i == n - 1) {
                flow += g * flux(bottom, airC, t);
                diagonal += g * slope(bottom, t);
            }
            double rest = start[i] + flow - massKgPerM2[i] * heat[i].enthalpy(t);
            // forward sweep of the tridiagonal system, whose off-diagonals are -belowBefore and -below
            double pivot = i == 0 ? diagonal : diagonal - belowBefore * upper[i - 1];
            right[i] = (rest + (i == 0 ? 0 : belowBefore * right[i - 1])) / pivot;
            upper[i] = below / pivot;
            belowBefore = below;
        }
        double largest = 0;
        double change = 0;
        for (int i = n - 1; i >= 0; i--) {
            change = right[i] + upper[i] * change;
            temperatureC[i] += change;
            largest = Math.max(largest, Math.abs(change));
        }
        return largest;
    }
}
