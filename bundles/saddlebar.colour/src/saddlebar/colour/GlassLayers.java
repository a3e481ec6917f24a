package saddlebar.colour;

import java.util.List;

/** Sheets of glass one behind the other. */
public final class GlassLayers {
    private GlassLayers() {
    }

    /**
     * Fused, or joined by resin of the same index: the internal transmittances multiply and only the two outer faces reflect, (1-R1)(1-R2)/(1-R1 R2).
     * What the joints reflect is left out: (n1-n2)^2/(n1+n2)^2 is below 0.1 % up to a difference of 0.1 in index.
     *
     * @param sheets front to back, at least one
     */
    public static Spectrum fused(List<Glass> sheets) {
        double first = requireSome(sheets).get(0).faceLoss();
        double last = sheets.get(sheets.size() - 1).faceLoss();
        double faces = (1 - first) * (1 - last) / (1 - first * last);
        Spectrum passed = Spectrum.flat(faces);
        for (Glass sheet : sheets) {
            passed = passed.times(sheet.internal());
        }
        return passed;
    }

    /**
     * With air between: the full transmittances multiply; light thrown to and fro between the sheets is left out (at most R^2 = 0.2 % a gap at n =
     * 1.52).
     */
    public static Spectrum withAir(List<Glass> sheets) {
        Spectrum passed = Spectrum.flat(1);
        for (Glass sheet : requireSome(sheets)) {
            passed = passed.times(sheet.transmittance());
        }
        return passed;
    }

    private static List<Glass> requireSome(List<Glass> sheets) {
        if (sheets.isEmpty()) {
            throw new IllegalArgumentException("sheets is empty");
        }
        return sheets;
    }
}
