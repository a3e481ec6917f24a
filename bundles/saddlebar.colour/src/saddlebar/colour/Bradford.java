package saddlebar.colour;

/**
 * The eye gets used to its light: what was white under one light is white under the other. Linear Bradford transform: cone-like responses scaled by
 * the ratio of the whites. Source: Lam, Metamerism and colour constancy, thesis, University of Bradford, 1985; the linear form is that of ICC.1
 * (profiles), Annex E.
 *
 * @param from white under which the colour was seen
 * @param to   white under which it will be shown
 */
public record Bradford(Xyz from, Xyz to) {
    private static final Matrix3 CONES = new Matrix3(0.8951, 0.2664, -0.1614, -0.7502, 1.7135, 0.0367, 0.0389, -0.0685, 1.0296);
    private static final Matrix3 BACK = CONES.inverse();

    public Xyz adapt(Xyz colour) {
        double[] seen = CONES.times(colour.x(), colour.y(), colour.z());
        double[] first = CONES.times(from.x(), from.y(), from.z());
        double[] second = CONES.times(to.x(), to.y(), to.z());
        double[] back = BACK.times(seen[0] * second[0] / first[0], seen[1] * second[1] / first[1], seen[2] * second[2] / first[2]);
        return new Xyz(back[0], back[1], back[2]);
    }
}
