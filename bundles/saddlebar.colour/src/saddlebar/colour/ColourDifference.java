package saddlebar.colour;

/**
 * CIEDE2000 with all weights 1. Sources: CIE 142-2001; ISO/CIE 11664-6; Sharma, Wu, Dalal, The CIEDE2000 Color-Difference Formula: Implementation
 * Notes, Supplementary Test Data, and Mathematical Observations, Color Res. Appl. 30(1), 2005, 21-30, whose equations these are. Symmetric in its
 * colours. Made for small differences (below about 5); a large number says only "far apart".
 */
public final class ColourDifference {
    private static final double POWER_25_7 = 6103515625.0;

    private ColourDifference() {
    }

    public static double ciede2000(Lab one, Lab two) {
        double g = 0.5 * (1 - softened((one.chroma() + two.chroma()) / 2));
        double a1 = (1 + g) * one.a();
        double a2 = (1 + g) * two.a();
        double c1 = StrictMath.hypot(a1, one.b());
        double c2 = StrictMath.hypot(a2, two.b());
        double h1 = hueDeg(a1, one.b());
        double h2 = hueDeg(a2, two.b());
        boolean gray = c1 * c2 == 0;
        double dh = gray ? 0 : around(h2 - h1);
        double dL = two.l() - one.l();
        double dC = c2 - c1;
        double dH = 2 * StrictMath.sqrt(c1 * c2) * sin(dh / 2);
        double l = (one.l() + two.l()) / 2;
        double c = (c1 + c2) / 2;
        double h = gray ? h1 + h2 : meanHueDeg(h1, h2);
        double t = 1 - 0.17 * cos(h - 30) + 0.24 * cos(2 * h) + 0.32 * cos(3 * h + 6) - 0.20 * cos(4 * h - 63);
        double away = (l - 50) * (l - 50);
        double sL = 1 + 0.015 * away / StrictMath.sqrt(20 + away);
        double sC = 1 + 0.045 * c;
        double sH = 1 + 0.015 * c * t;
        double blue = (h - 275) / 25;
        double turn = 30 * StrictMath.exp(-blue * blue);
        double rT = -2 * softened(c) * sin(2 * turn);
        double termL = dL / sL;
        double termC = dC / sC;
        double termH = dH / sH;
        return StrictMath.sqrt(Math.max(0, termL * termL + termC * termC + termH * termH + rT * termC * termH));
    }

    /** sqrt(C^7 / (C^7 + 25^7)). */
    private static double softened(double chroma) {
        double c7 = StrictMath.pow(chroma, 7);
        return StrictMath.sqrt(c7 / (c7 + POWER_25_7));
    }

    private static double hueDeg(double a, double b) {
        if (a == 0 && b == 0) {
            return 0;
        }
        double deg = StrictMath.toDegrees(StrictMath.atan2(b, a));
        return deg < 0 ? deg + 360 : deg;
    }

    private static double around(double deg) {
        return deg > 180 ? deg - 360 : deg < -180 ? deg + 360 : deg;
    }

    private static double meanHueDeg(double h1, double h2) {
        double sum = h1 + h2;
        if (Math.abs(h1 - h2) <= 180) {
            return sum / 2;
        }
        return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
    }

    private static double sin(double deg) {
        return StrictMath.sin(StrictMath.toRadians(deg));
    }

    private static double cos(double deg) {
        return StrictMath.cos(StrictMath.toRadians(deg));
    }
}
