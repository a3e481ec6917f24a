package saddlebar.stencil.tone;

import saddlebar.model.units.Require;

/**
 * The tones that a paint can show on a glass: to show transmittance T, cover a = (T0 - T)/(T0 - Ts). Additive light (Murray-Davies with n = 1).
 *
 * @param glass T0, transmittance of the bare glass, above {@code solid} to 1
 * @param solid Ts, transmittance under a solid of the paint, 0 to less than {@code glass}
 */
public record PaintRange(double glass, double solid) {
    public PaintRange {
        Require.within("glass", glass, Double.MIN_VALUE, 1);
        Require.within("solid", solid, 0, Math.nextDown(glass));
    }

    /** Coverage that shows a transmittance, as near as the paint can: 0 to 1. */
    public double coverage(double transmittance) {
        return Math.max(0, Math.min(1, (glass - transmittance) / (glass - solid)));
    }

    /** Whether the paint can be so dark and the glass so light. */
    public boolean reaches(double transmittance) {
        return transmittance >= solid && transmittance <= glass;
    }

    /** What a coverage shows. */
    public double transmittance(double coverage) {
        return glass - coverage * (glass - solid);
    }
}
