package saddlebar.colour;

import java.util.Objects;

import saddlebar.model.units.Require;

/**
 * The light behind the glass, seen by the CIE 1931 2 degree observer. X = K sum S T xbar and so on, K = 100 / sum S ybar, 380 to 780 nm by 5 nm (CIE
 * 015; ISO/CIE 11664-1 and -2).
 *
 * @param name  as told to people and in files
 * @param power relative spectral power
 */
public record Light(String name, Spectrum power) {
    private static final Spectrum XBAR = Spectrum.of(CieTable.OBSERVER.column("xbar"));
    private static final Spectrum YBAR = Spectrum.of(CieTable.OBSERVER.column("ybar"));
    private static final Spectrum ZBAR = Spectrum.of(CieTable.OBSERVER.column("zbar"));

    /** North light by day: CIE standard illuminant D65. */
    public static final Light D65 = new Light("D65", Spectrum.of(CieTable.OBSERVER.column("D65")));
    /** Lamp light: CIE standard illuminant A, an incandescent lamp of 2856 K. */
    public static final Light A = new Light("A", Spectrum.of(CieTable.OBSERVER.column("A")));
    /** Equal energy at every wavelength: not a real light, but a check. */
    public static final Light E = new Light("E", Spectrum.flat(100));
    /**
     * Colour temperature taken for dusk. Studio setting, no source: clear twilight sky is bluer than the north sky by day and differs from evening to
     * evening.
     */
    public static final double DUSK_K = 12_000;
    public static final double LEAST_DAYLIGHT_K = 4000;
    public static final double MOST_DAYLIGHT_K = 25_000;

    public Light {
        Require.text("name", name);
        Objects.requireNonNull(power, "power");
        if (!(power.most() > 0)) {
            throw new IllegalArgumentException("the light " + name + " has no power");
        }
    }

    /** Clear sky after sunset, as CIE daylight of {@link #DUSK_K}. */
    public static Light dusk() {
        return new Light("dusk", daylight(DUSK_K).power);
    }

    /**
     * Daylight of a correlated colour temperature: S = S0 + M1 S1 + M2 S2 with M1 and M2 from the chromaticity of the daylight locus, both rounded to
     * three decimals as CIE 015 does. Source: CIE 015, Colorimetry; Judd, MacAdam, Wyszecki, J. Opt. Soc. Am. 54, 1964.
     *
     * @param cctK correlated colour temperature in K, 4000 to 25000, the range of the formula; D65 has 6504
     */
    public static Light daylight(double cctK) {
        Require.within("cctK", cctK, LEAST_DAYLIGHT_K, MOST_DAYLIGHT_K);
        double perK = 1000 / cctK;
        double x = cctK <= 7000
                ? 0.244063 + perK * (0.09911 + perK * (2.9678 - perK * 4.6070))
                : 0.237040 + perK * (0.24748 + perK * (1.9018 - perK * 2.0064));
        double y = -3 * x * x + 2.870 * x - 0.275;
        double divisor = 0.0241 + 0.2562 * x - 0.7341 * y;
        double m1 = Math.rint(1000 * (-1.3515 - 1.7703 * x + 5.9114 * y) / divisor) / 1000;
        double m2 = Math.rint(1000 * (0.0300 - 31.4424 * x + 30.0717 * y) / divisor) / 1000;
        double[] s0 = CieTable.DAYLIGHT.column("S0");
        double[] s1 = CieTable.DAYLIGHT.column("S1");
        double[] s2 = CieTable.DAYLIGHT.column("S2");
        return new Light("D " + Math.round(cctK) + " K", Spectrum.each(band -> Math.max(0, s0[band] + m1 * s1[band] + m2 * s2[band])));
    }

    /** What the observer sees of this light behind a transmittance. */
    public Xyz through(Spectrum transmittance) {
        double x = 0;
        double y = 0;
        double z = 0;
        double white = 0;
        for (int band = 0; band < Spectrum.BANDS; band++) {
            double bare = power.at(band);
            double passed = bare * transmittance.at(band);
            x += passed * XBAR.at(band);
            y += passed * YBAR.at(band);
            z += passed * ZBAR.at(band);
            white += bare * YBAR.at(band);
        }
        return new Xyz(100 * x / white, 100 * y / white, 100 * z / white);
    }

    /** The bare light; Y = 100. */
    public Xyz white() {
        return through(Spectrum.flat(1));
    }

    /** Luminous transmittance, 0 to 1: Y / 100. */
    public double luminousShare(Spectrum transmittance) {
        return through(transmittance).y() / 100;
    }

    /** Rows for X, Y, Z: what each band adds per unit of transmittance; the bare light gives Y = 1. */
    double[][] weights() {
        double white = 0;
        double[][] rows = new double[3][Spectrum.BANDS];
        for (int band = 0; band < Spectrum.BANDS; band++) {
            white += power.at(band) * YBAR.at(band);
        }
        for (int band = 0; band < Spectrum.BANDS; band++) {
            double share = power.at(band) / white;
            rows[0][band] = share * XBAR.at(band);
            rows[1][band] = share * YBAR.at(band);
            rows[2][band] = share * ZBAR.at(band);
        }
        return rows;
    }
}
