package saddlebar.colour;

/**
 * A colour brought to the screen. One that the screen cannot show keeps its lightness and CIELAB hue and loses chroma until it can (by bisection to
 * 1e-9 of the chroma); that is marked, since the glass will be stronger than the picture. CIELAB hue is not quite seen hue: strong blues turn a
 * little to violet.
 *
 * @param shown       what the screen shows, 0 to 1 each
 * @param outOfGamut  whether the screen cannot show the colour itself
 * @param chromaShare share of the chroma that is shown, 1 if all
 */
public record ScreenColour(Srgb shown, boolean outOfGamut, double chromaShare) {
    private static final int HALVINGS = 30;

    /** @param xyz as seen beside {@link Srgb#WHITE} */
    public static ScreenColour of(Xyz xyz) {
        Srgb wanted = Srgb.of(xyz);
        if (wanted.isShowable()) {
            return new ScreenColour(wanted.clipped(), false, 1);
        }
        Lab lab = Lab.of(xyz, Srgb.WHITE);
        if (lab.l() >= 100 || lab.l() <= 0) {
            double end = lab.l() >= 100 ? 1 : 0;
            return new ScreenColour(new Srgb(end, end, end), true, 0);
        }
        double shows = 0;
        double fails = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (shows + fails) / 2;
            if (at(lab, middle).isShowable()) {
                shows = middle;
            } else {
                fails = middle;
            }
        }
        return new ScreenColour(at(lab, shows).clipped(), true, shows);
    }

    private static Srgb at(Lab lab, double share) {
        return Srgb.of(lab.withChroma(share).xyz(Srgb.WHITE));
    }
}
