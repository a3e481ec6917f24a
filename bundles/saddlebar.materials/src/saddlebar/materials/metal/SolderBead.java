package saddlebar.materials.metal;

import saddlebar.model.units.Require;

/**
 * A bead of solder, half an ellipse in section: area = pi/4 x width x height.
 *
 * @param widthMm  0.5 to 50
 * @param heightMm 0.1 to 20
 */
public record SolderBead(double widthMm, double heightMm) {
    /** On each face of an inner joint (studio setting). */
    public static final SolderBead INNER = new SolderBead(6, 2);
    /** Once around the edge (studio setting). */
    public static final SolderBead EDGE = new SolderBead(5, 1.5);
    /** Lost to drips and dross (common practice, no source). */
    public static final double WASTE_SHARE = 0.15;
    private static final double TIN_G_PER_CM3 = 7.31;
    private static final double LEAD_G_PER_CM3 = 11.34;

    public SolderBead {
        Require.within("widthMm", widthMm, 0.5, 50);
        Require.within("heightMm", heightMm, 0.1, 20);
    }

    public double sectionMm2() {
        return Math.PI / 4 * widthMm * heightMm;
    }

    /** Of one bead on one face. */
    public double massGPerM(double densityGPerCm3) {
        return sectionMm2() * densityGPerCm3;
    }

    /** Solder for a foiled panel, waste included: a bead on both faces of the inner joints, one bead around the edge. */
    public static double massG(double innerMm, double edgeMm, double densityGPerCm3) {
        return netG(innerMm, edgeMm, densityGPerCm3) * (1 + WASTE_SHARE);
    }

    /** As {@link #massG}, only what stays on the panel. */
    public static double netG(double innerMm, double edgeMm, double densityGPerCm3) {
        return (2 * INNER.massGPerM(densityGPerCm3) * innerMm + EDGE.massGPerM(densityGPerCm3) * edgeMm) / 1000;
    }

    /** Density of a tin-lead solder by the rule of mixtures, from the mass share of tin. */
    public static double alloyGPerCm3(double tinShare) {
        Require.within("tinShare", tinShare, 0, 1);
        return 1 / (tinShare / TIN_G_PER_CM3 + (1 - tinShare) / LEAD_G_PER_CM3);
    }
}
