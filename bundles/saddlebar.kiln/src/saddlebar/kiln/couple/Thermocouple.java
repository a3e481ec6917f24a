package saddlebar.kiln.couple;

import java.util.Locale;
import java.util.Optional;

/**
 * Thermocouples of kilns on the scale ITS-90: reference functions E(t) and approximate inverses t(E), mV and degC, cold junction at 0 degC.
 * <p>Source: Burns, G. W. et al. (1993). NIST Monograph 175; coefficients as distributed with NIST Standard Reference Database 60, read in several
 * public transcriptions
 * that agree. The inverses are within 0.06 K of the reference functions (their table says 0.05 and less).
 */
public enum Thermocouple {
    /** Nickel-chromium against nickel-aluminium: most studio kilns. */
    K(new double[] {-50, 0, 1372}, new double[][] {
            {0, 0.394501280250e-01, 0.236223735980e-04, -0.328589067840e-06, -0.499048287770e-08, -0.675090591730e-10, -0.574103274280e-12,
                    -0.310888728940e-14,
                    -0.104516093650e-16, -0.198892668780e-19, -0.163226974860e-22},
            {-0.176004136860e-01, 0.389212049750e-01, 0.185587700320e-04, -0.994575928740e-07, 0.318409457190e-09, -0.560728448890e-12,
                    0.560750590590e-15,
                    -0.320207200030e-18, 0.971511471520e-22, -0.121047212750e-25}},
            new double[] {-1.9, 0, 20.644, 54.886}, new double[][] {
                    {0, 2.5173462e1, -1.1662878, -1.0833638, -8.9773540e-1, -3.7342377e-1, -8.6632643e-2, -1.0450598e-2, -5.1920577e-4},
                    {0, 2.508355e+01, 7.860106e-02, -2.503131e-01, 8.315270e-02, -1.228034e-02, 9.804036e-04, -4.413030e-05, 1.057734e-06,
                            -1.052755e-08},
                    {-1.318058e+02, 4.830222e+01, -1.646031e+00, 5.464731e-02, -9.650715e-04, 8.802193e-06, -3.110810e-08}}),
    /** Platinum-10 % rhodium against platinum. */
    S(new double[] {-50, 1064.18, 1664.5, 1768.1}, new double[][] {
            {0, 0.540313308631e-02, 0.125934289740e-04, -0.232477968689e-07, 0.322028823036e-10, -0.331465196389e-13, 0.255744251786e-16,
                    -0.125068871393e-19,
                    0.271443176145e-23},
            {0.132900444085e+01, 0.334509311344e-02, 0.654805192818e-05, -0.164856259209e-08, 0.129989605174e-13},
            {0.146628232636e+03, -0.258430516752e+00, 0.163693574641e-03, -0.330439046987e-07, -0.943223690612e-14}},
            new double[] {-0.235, 1.874, 11.950, 17.536, 18.693}, new double[][] {
                    {0, 1.84949460e+02, -8.00504062e+01, 1.02237430e+02, -1.52248592e+02, 1.88821343e+02, -1.59085941e+02, 8.23027880e+01,
                            -2.34181944e+01, 2.79786260e+00},
                    {1.291507177e+01, 1.466298863e+02, -1.534713402e+01, 3.145945973e+00, -4.163257839e-01, 3.187963771e-02, -1.291637500e-03,
                            2.183475087e-05,
                            -1.447379511e-07, 8.211272125e-09},
                    {-8.087801117e+01, 1.621573104e+02, -8.536869453e+00, 4.719686976e-01, -1.441693666e-02, 2.081618890e-04},
                    {5.333875126e+04, -1.235892298e+04, 1.092657613e+03, -4.265693686e+01, 6.247205420e-01}}),
    /** Platinum-13 % rhodium against platinum. */
    R(new double[] {-50, 1064.18, 1664.5, 1768.1}, new double[][] {
            {0, 0.528961729765e-02, 0.139166589782e-04, -0.238855693017e-07, 0.356916001063e-10, -0.462347666298e-13, 0.500777441034e-16,
                    -0.373105886191e-19,
                    0.157716482367e-22, -0.281038625251e-26},
            {0.295157925316e+01, -0.252061251332e-02, 0.159564501865e-04, -0.764085947576e-08, 0.205305291024e-11, -0.293359668173e-15},
            {0.152232118209e+03, -0.268819888545e+00, 0.171280280471e-03, -0.345895706453e-07, -0.934633971046e-14}},
            new double[] {-0.226, 1.923, 13.228, 19.739, 21.103}, new double[][] {
                    {0, 1.8891380e+02, -9.3835290e+01, 1.3068619e+02, -2.2703580e+02, 3.5145659e+02, -3.8953900e+02, 2.8239471e+02, -1.2607281e+02,
                            3.1353611e+01,
                            -3.3187769e+00},
                    {1.334584505e+01, 1.472644573e+02, -1.844024844e+01, 4.031129726e+00, -6.249428360e-01, 6.468412046e-02, -4.458750426e-03,
                            1.994710149e-04,
                            -5.313401790e-06, 6.481976217e-08},
                    {-8.199599416e+01, 1.553962042e+02, -8.342197663e+00, 4.279433549e-01, -1.191577910e-02, 1.492290091e-04},
                    {3.406177836e+04, -7.023729171e+03, 5.582903813e+02, -1.952394635e+01, 2.560740231e-01}}),
    /** Nickel-chromium-silicon against nickel-silicon: steadier than K. */
    N(new double[] {-50, 0, 1300}, new double[][] {
            {0, 0.261591059620e-01, 0.109574842280e-04, -0.938411115540e-07, -0.464120397590e-10, -0.263033577160e-11, -0.226534380030e-13,
                    -0.760893007910e-16,
                    -0.934196678350e-19},
            {0, 0.259293946010e-01, 0.157101418800e-04, 0.438256272370e-07, -0.252611697940e-09, 0.643118193390e-12, -0.100634715190e-14,
                    0.997453389920e-18,
                    -0.608632456070e-21, 0.208492293390e-24, -0.306821961510e-28}},
            new double[] {-1.27, 0, 20.613, 47.513}, new double[][] {
                    {0, 3.8436847e+01, 1.1010485e+00, 5.2229312e+00, 7.2060525e+00, 5.8488586e+00, 2.7754916e+00, 7.7075166e-01, 1.1582665e-01,
                            7.3138868e-03},
                    {0, 3.8689600e+01, -1.0826700e+00, 4.7020500e-02, -2.1216900e-06, -1.1727200e-04, 5.3928000e-06, -7.9815600e-08},
                    {1.9724850e+01, 3.3009430e+01, -3.9151590e-01, 9.8553910e-03, -1.2743710e-04, 7.7670220e-07}});

    private static final double K_A0 = 0.1185976;
    private static final double K_A1 = -0.1183432e-3;
    private static final double K_A2 = 126.9686;

    private final double[] limitsC;
    private final double[][] forward;
    private final double[] limitsMv;
    private final double[][] inverse;

    Thermocouple(double[] limitsC, double[][] forward, double[] limitsMv, double[][] inverse) {
        this.limitsC = limitsC;
        this.forward = forward;
        this.limitsMv = limitsMv;
        this.inverse = inverse;
    }

    public static Optional<Thermocouple> of(String letter) {
        for (Thermocouple type : values()) {
            if (type.name().equals(letter.strip().toUpperCase(Locale.ROOT))) {
                return Optional.of(type);
            }
        }
        return Optional.empty();
    }

    public double leastC() {
        return limitsC[0];
    }

    public double mostC() {
        return limitsC[limitsC.length - 1];
    }

    /** Electromotive force in mV of a hot junction at a temperature, cold junction at 0 degC. */
    public double mv(double degC) {
        int piece = piece(limitsC, degC, "degC");
        double sum = polynomial(forward[piece], degC);
        return this == K && degC >= 0 ? sum + K_A0 * Math.exp(K_A1 * (degC - K_A2) * (degC - K_A2)) : sum;
    }

    /** Temperature of the hot junction in degC, cold junction at 0 degC. */
    public double degC(double mv) {
        return polynomial(inverse[piece(limitsMv, mv, "mV")], mv);
    }

    /**
     * Temperature of the hot junction from a reading and the temperature of the cold junction: forces are added, never temperatures.
     *
     * @throws IllegalArgumentException if the force is beyond the function's range
     */
    public double degC(double mv, double coldJunctionC) {
        return degC(mv + mv(coldJunctionC));
    }

    /** Whether a reading with that cold junction can be turned into a temperature. */
    public boolean covers(double mv, double coldJunctionC) {
        if (!(coldJunctionC >= limitsC[0] && coldJunctionC <= mostC())) {
            return false;
        }
        double sum = mv + mv(coldJunctionC);
        return sum >= limitsMv[0] && sum <= limitsMv[limitsMv.length - 1];
    }

    private static int piece(double[] limits, double value, String unit) {
        if (!(value >= limits[0] && value <= limits[limits.length - 1])) {
            throw new IllegalArgumentException("value must be " + limits[0] + " to " + limits[limits.length - 1] + " " + unit + " but is " + value);
        }
        int piece = 0;
        while (piece < limits.length - 2 && value >= limits[piece + 1]) {
            piece++;
        }
        return piece;
    }

    private static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            sum = sum * x + coefficients[i];
        }
        return sum;
    }
}
