package saddlebar.colour;

import saddlebar.model.units.Require;

/**
 * CIELAB (ISO/CIE 11664-4).
 *
 * @param l lightness L*, 0 black to 100 the bare light
 * @param a a*, green to red
 * @param b b*, blue to yellow
 */
public record Lab(double l, double a, double b) {
    private static final double EDGE = 6.0 / 29;

    public Lab {
        Require.finite("l", l);
        Require.finite("a", a);
        Require.finite("b", b);
    }

    /** Seen beside a white, usually that of the light itself. */
    public static Lab of(Xyz colour, Xyz white) {
        double fx = bent(colour.x() / white.x());
        double fy = bent(colour.y() / white.y());
        double fz = bent(colour.z() / white.z());
        return new Lab(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));
    }

    public Xyz xyz(Xyz white) {
        double fy = (l + 16) / 116;
        return new Xyz(white.x() * straight(fy + a / 500), white.y() * straight(fy), white.z() * straight(fy - b / 200));
    }

    private static double bent(double share) {
        return share > EDGE * EDGE * EDGE ? StrictMath.cbrt(share) : share / (3 * EDGE * EDGE) + 4.0 / 29;
    }

    private static double straight(double f) {
        return f > EDGE ? f * f * f : 3 * EDGE * EDGE * (f - 4.0 / 29);
    }

    public double chroma() {
        return StrictMath.hypot(a, b);
    }

    /** Hue angle, 0 to 360; 0 where there is no chroma. */
    public double hueDeg() {
        double deg = StrictMath.toDegrees(StrictMath.atan2(b, a));
        return deg < 0 ? deg + 360 : deg;
    }

    /** The same lightness and hue with a share of the chroma. */
    Lab withChroma(double share) {
        return new Lab(l, share * a, share * b);
    }
}
