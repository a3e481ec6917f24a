package saddlebar.production.light;

import java.util.Locale;

import saddlebar.colour.Spectrum;
import saddlebar.model.problem.Refusal;

/** A measured spectrum as the studio's tables hold it: {@code 380:0.12 390:0.15 …}, wavelengths in nm, shares 0 to 1. */
public final class SpectrumText {
    private static final int MOST_READINGS = 2000;

    private SpectrumText() {
    }

    /**
     * @param where names the glass or paint in a refusal
     * @throws Refusal if it is no spectrum
     */
    public static Spectrum read(String where, String text) {
        String[] readings = text.strip().split("\\s+");
        if (readings.length > MOST_READINGS) {
            throw new Refusal(where, "its spectrum has " + readings.length + " readings", "keep at most " + MOST_READINGS);
        }
        double[] nm = new double[readings.length];
        double[] shares = new double[readings.length];
        for (int i = 0; i < readings.length; i++) {
            int colon = readings[i].indexOf(':');
            try {
                nm[i] = Double.parseDouble(readings[i].substring(0, Math.max(0, colon)));
                shares[i] = Double.parseDouble(readings[i].substring(colon + 1));
            } catch (NumberFormatException e) {
                throw new Refusal(where, "'" + readings[i] + "' is no reading of a spectrum", "write them as 380:0.12 390:0.15 and so on", e);
            }
        }
        return Spectrum.sampled(where, nm, shares);
    }

    /** All bands of a spectrum, to five digits. */
    public static String write(Spectrum spectrum) {
        StringBuilder text = new StringBuilder();
        for (int band = 0; band < Spectrum.BANDS; band++) {
            text.append(band == 0 ? "" : " ").append(String.format(Locale.ROOT, "%d:%.5f", Spectrum.nmOf(band), spectrum.at(band)));
        }
        return text.toString();
    }
}
