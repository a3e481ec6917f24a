import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Moon, air, water and ring of the third window. */
record MoonAndEelgrassPaint(Sheet s, Seabed bed, Curve moon, Curve surface) {
    private static final Curve SAND = Curve.through(104, 430, 126, 420, 166, 416, 240, 428, 310, 416, 360, 420, 404, 426);

    private static Area sand(Area water) {
        Path2D path = SAND.path();
        path.lineTo(404, 480);
        path.lineTo(100, 480);
        path.closePath();
        Area sand = new Area(path);
        sand.intersect(water);
        return sand;
    }

    void paint() {
        Area inside = new Area(Curve.circle(250, 250, 224).path());
        Path2D below = surface.path();
        below.lineTo(500, 500);
        below.lineTo(0, 500);
        below.closePath();
        Area water = new Area(below);
        water.intersect(inside);
        Area air = new Area(inside);
        air.subtract(water);
        ring();
        Motif.vignette(s, s.matt.within(inside), 0.3, f -> f.areaMm2() < 40000 && (f.areaMm2() < 6000 || f.labelX() != 284));
        sky(air);
        moonFace();
        water(water);
        ground(water);
        Area deep = new Area(water);
        deep.subtract(sand(water));
        bed.paint(deep);
    }

    /** One piece of the ring as it lies on the right, around the x axis through the middle: a wave between two lines of foam, left clear. */
    private void ring() {
        Area ground = new Area(Curve.join(List.of(Curve.arc(250, 250, 245.5, -13.6, 13.6), Curve.through(polar(245.5, 13.6, 228.8, 13.5)), Curve.arc(250, 250, 228.8, 13.5, -13.5),
                Curve.through(polar(228.8, -13.5, 245.5, -13.6)))).path());
        for (int i = 0; i < 3; i++) {
            double a = -8.4 + 8.8 * i;
            Curve wave = Curve.through(polar(230.6, a - 4.6, 231.6, a - 2.4, 235.2, a + 0.5, 240.2, a + 1.9, 243, a + 0.7, 242, a - 0.9, 239.4, a - 1.1, 238.2, a - 0.1));
            ground.subtract(new Area(Brush.stroke(wave, 0.7, 1.8, 3.6, 3.4, 2.4, 1.8, 1.2, 0.7)));
            Curve swell = Curve.through(polar(230.8, a - 0.6, 232.6, a + 1.2, 235.4, a + 2.4, 238.4, a + 3.4));
            ground.subtract(new Area(Brush.stroke(swell, 0.6, 1.6, 1.6, 0.6)));
            double[] d = polar(242.2, a + 4.2);
            ground.subtract(new Area(Curve.circle(d[0], d[1], 1.3).path()));
            d = polar(238.6, a - 3.9);
            ground.subtract(new Area(Curve.circle(d[0], d[1], 1).path()));
        }
        List<AffineTransform> places = new ArrayList<>();
        for (int i = 0; i < MoonAndEelgrass.RING_PIECES; i++) {
            places.add(AffineTransform.getRotateInstance(StrictMath.toRadians(30 * i), 250, 250));
        }
        s.trace.repeated("ring-wave", ground, places);
    }

    private static double[] polar(double... radiusAndDegrees) {
        double[] out = new double[radiusAndDegrees.length];
        for (int i = 0; i < out.length; i += 2) {
            double a = StrictMath.toRadians(radiusAndDegrees[i + 1]);
            out[i] = 250 + radiusAndDegrees[i] * StrictMath.cos(a);
            out[i + 1] = 250 + radiusAndDegrees[i] * StrictMath.sin(a);
        }
        return out;
    }

    private void sky(Area air) {
        Area open = new Area(air);
        open.subtract(new Area(Curve.circle(284, 146, 85).path()));
        Layer trace = s.trace.within(open);
        Curve high = Curve.through(256, 108, 224, 90, 180, 86, 132, 99, 96, 121, 52, 116);
        Curve low = Curve.through(240, 146, 196, 148, 150, 136, 90, 138, 38, 158);
        Motif.combed(trace, new Patch(high, low), 0.22, 1, 0.55, 1.0, 4, 4, 1.3, 311);
        Motif.combed(trace, new Patch(low, surface.reversed().part(2.2, 6)), 0.1, 1, 0.08, 0.9, 8, 4, 1.2, 312);
        Curve right = Curve.through(330, 160, 366, 166, 412, 154, 462, 162);
        Motif.combed(trace, new Patch(Curve.through(318, 112, 346, 93, 384, 93, 412, 112, 446, 116), right), 0.2, 1, 0.6, 1.0, 3, 3, 1.2, 313);
        Motif.combed(trace, new Patch(right, Curve.through(340, 212, 380, 212, 420, 219, 482, 204)), 0.1, 1, 0.1, 0.9, 6, 3, 1.2, 314);
        Motif.softEdge(s.matt.within(open), high, 30, 0.3);
        Motif.softEdge(s.matt.within(open), low, 26, 0.26);
        Motif.softEdge(s.matt.within(open), right, 24, 0.26);
        // light around the moon: broken circles
        Layer halo = s.trace.within(air);
        for (int r = 0; r < 5; r++) {
            for (int k = 0; k < 11; k++) {
                double from = 33 * k + 15 * r + (k * 7 + r * 5) % 9;
                halo.stroke(Brush.w(0.3, 0.8 + 0.3 * (k % 3), 0.3), Curve.arc(284, 146, 55 + 6 * r, from, from + 13 + (k * 5 + r * 3) % 9));
            }
        }
        s.stain.within(air).radial(Curve.circle(284, 146, 84).path(), 284, 146, 84, 84, 0, 0, 0.08, 0.56, 0.14, 0.62, 0.7, 1, 0.3);
        // stars
        double[][] stars = {{150, 66, 7}, {190, 50, 4}, {226, 64, 5}, {118, 84, 3.4}, {330, 54, 6}, {366, 70, 4}, {248, 42, 3.2}, {304, 40, 3.4}, {398, 112, 6}, {424, 132, 3.6}, {372, 124, 3.4}, {112, 112, 5},
            {170, 114, 4}, {140, 128, 3}, {398, 78, 3}, {210, 34, 3}};
        Area lights = new Area();
        for (double[] st : stars) {
            Area star = star(st[0], st[1], st[2] * 1.9);
            lights.add(star);
            Area edge = new Area(star);
            edge.subtract(star(st[0], st[1], st[2] * 1.9 - 1.5));
            s.trace.solid(edge);
        }
        // the night is laid on as an even matt that deepens upwards; stars are wiped out of it
        s.matt.within(open).outside(lights).linear(Motif.rectangle(20, 20, 460, 210), 0, 24, 0, 200, 0, 0.5, 0.5, 0.28, 1, 0);
    }

    /** A star with four long points, a little turned. */
    private static Area star(double x, double y, double r) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < 16; i++) {
            double a = StrictMath.toRadians(22.5 * i + 8);
            double reach = i % 4 == 0 ? r * (i % 8 == 0 ? 1.35 : 1) : i % 4 == 2 ? r * 0.46 : r * 0.25;
            if (i == 0) {
                path.moveTo(x + reach * StrictMath.sin(a), y - reach * StrictMath.cos(a));
            } else {
                path.lineTo(x + reach * StrictMath.sin(a), y - reach * StrictMath.cos(a));
            }
        }
        path.closePath();
        return new Area(path);
    }

    private void moonFace() {
        Layer matt = s.matt.within(moon.path());
        double[][] seas = {{268, 130, 15, 11, 20, 0.5}, {288, 124, 11, 8, -10, 0.42}, {302, 136, 10, 12, 10, 0.46}, {276, 152, 17, 10, -15, 0.4}, {300, 160, 9, 7, 0, 0.34}, {262, 148, 8, 10, 0, 0.3},
            {290, 176, 7, 4, 0, 0.2}};
        for (double[] m : seas) {
            matt.breath(m[0], m[1], m[2] * 1.4, m[3] * 1.4, m[4], m[5]);
        }
        matt.radial(moon.path(), 272, 132, 66, 66, 0, 0, 0, 0.6, 0, 1, 0.5);
        Layer trace = s.trace.within(moon.path());
        double[][] craters = {{292, 178, 4.2}, {270, 172, 2.6}, {314, 150, 3.2}, {304, 112, 2.4}, {258, 120, 2.8}, {282, 110, 1.8}, {310, 170, 2.2}, {252, 160, 2}};
        for (double[] c : craters) {
            trace.stroke(Brush.w(0.3, 0.9, 0.3), Curve.arc(c[0], c[1], c[2], 150, 330));
            trace.stroke(Brush.w(0.3, 0.6, 0.3), Curve.arc(c[0], c[1], c[2] * 0.95, -10, 90));
        }
        for (int i = 0; i < 7; i++) {
            double a = StrictMath.toRadians(20 + 52 * i);
            trace.stroke(Brush.w(0.5, 0.3), 292 + 6 * StrictMath.cos(a), 178 + 6 * StrictMath.sin(a), 292 + (10 + i) * StrictMath.cos(a + 0.1), 178 + (10 + i) * StrictMath.sin(a + 0.1));
        }
        Motif.hatch(trace, Curve.arc(284, 146, 47.5, 20, 110), 0, 1, 30, 9, 120, 0.7, 321);
    }

    private void water(Area water) {
        Area open = new Area(water);
        open.subtract(bed.grass());
        open.subtract(bed.fish());
        open.subtract(sand(water));
        Layer trace = s.trace.within(open);
        Layer matt = s.matt.within(open);
        // just under the surface the light breaks
        Motif.ripples(trace, new Patch(surface, surface.moved(0, 44)), 0.02, 0.98, 0.06, 0.9, 5, 10, 1.4, 331);
        Curve bottom = Curve.through(20, 400, 160, 412, 240, 424, 320, 414, 476, 400);
        Motif.combed(trace, new Patch(surface.moved(0, 50), bottom), 0.02, 0.98, 0.02, 0.95, 13, 6, 1.2, 332);
        Motif.softEdge(matt, surface, 26, 0.3);
        matt.linear(Motif.rectangle(20, 210, 200, 230), 20, 0, 220, 0, 0, 0.26, 1, 0);
        matt.linear(Motif.rectangle(360, 210, 120, 230), 480, 0, 360, 0, 0, 0.26, 1, 0);
        matt.linear(Motif.rectangle(20, 340, 460, 100), 0, 340, 0, 436, 0, 0, 1, 0.26);
        // the moon's road, broken by the current
        Layer stain = s.stain.within(open);
        for (int i = 0; i < 15; i++) {
            double y = 232 + 12 * i;
            double half = 24 - i * 0.5 + 7 * ((i * 5) % 3);
            double x = 292 + 9 * StrictMath.sin(i * 1.3);
            stain.flat(Brush.stroke(Curve.through(x - half, y, x - half * 0.3, y - 2.4, x + half * 0.3, y + 2, x + half, y - 0.6), 0.4, 4.6, 3.4, 0.4), 0.7);
        }
        // thin young blades, painted only
        Layer thin = s.trace.within(open);
        Layer thinMatt = s.matt.within(open);
        double[][] young = {{84, 430, 70, 384, 78, 330, 104, 284, 112, 250}, {180, 424, 168, 388, 172, 360, 190, 352}, {104, 430, 96, 390, 102, 360, 122, 330},
            {340, 424, 330, 380, 344, 330, 368, 290}, {430, 420, 440, 376, 432, 330, 446, 286, 462, 262}, {412, 424, 420, 390, 428, 372}, {190, 424, 186, 396, 196, 372}};
        for (double[] b : young) {
            Motif.blade(thin, thinMatt, 7.5, 1.1, 0.4, b);
        }
        // breath of the fish, rising
        double[][] bubbles = {{152, 316, 3.4}, {146, 302, 2.6}, {154, 292, 4.2}, {178, 246, 3}, {170, 236, 2}, {352, 252, 2.8}, {356, 240, 3.8}, {350, 230, 2.2}, {60, 300, 2.6}, {54, 288, 3.6}, {62, 250, 2.4}, {460, 292, 3},
            {454, 278, 2.2}, {288, 396, 3}, {280, 384, 2}};
        for (double[] b : bubbles) {
            trace.stroke(Brush.w(0.4, 1.3, 0.4), Curve.arc(b[0], b[1], b[2], 20, 250));
            trace.stroke(Brush.w(0.4, 0.7, 0.4), Curve.arc(b[0], b[1], b[2], 262, 368));
            trace.stroke(Brush.w(0.3, 0.7, 0.3), Curve.arc(b[0], b[1], b[2] * 0.55, 190, 260));
        }
    }

    private void ground(Area water) {
        Curve top = SAND;
        Area sand = sand(water);
        Layer trace = s.trace.within(sand);
        Patch field = new Patch(top, Curve.through(104, 440, 160, 462, 250, 474, 340, 462, 404, 430));
        Motif.combed(trace, field, 0.02, 0.98, 0.12, 0.95, 6, 6, 1.3, 341);
        Motif.grains(trace, field, 0, 1, 0.05, 1, 110, 0.8, 342);
        Motif.softEdge(s.matt.within(sand), top, 26, 0.3);
        s.matt.within(sand).linear(Motif.rectangle(100, 420, 310, 60), 0, 430, 0, 474, 0, 0, 1, 0.34);
        cockle(trace, 160, 446, 12, -12);
        cockle(trace, 296, 456, 10, 18);
        cockle(trace, 366, 434, 8, -30);
        // a sea star
        for (int i = 0; i < 5; i++) {
            double a = StrictMath.toRadians(72 * i - 80);
            double c = StrictMath.cos(a);
            double d = StrictMath.sin(a);
            trace.stroke(Brush.w(5.6, 4.2, 2.6, 1.0), 236 + 1.5 * c, 452 + 1.2 * d, 236 + 6 * c, 452 + 5 * d, 236 + 12 * c, 452 + 9.4 * d);
        }
    }

    private static void cockle(Layer trace, double x, double y, double r, double turnDeg) {
        for (int i = 0; i <= 7; i++) {
            double b = StrictMath.toRadians(turnDeg + 195 + 150.0 * i / 7);
            trace.stroke(Brush.w(0.7, 1.2, 0.4), x, y, x + r * 0.6 * StrictMath.cos(b + 0.06), y + r * 0.6 * StrictMath.sin(b + 0.06), x + r * StrictMath.cos(b), y + r * StrictMath.sin(b));
        }
        trace.stroke(Brush.w(0.7, 2.0, 0.7), Curve.arc(x, y, r * 1.03, turnDeg + 192, turnDeg + 348));
        trace.stroke(Brush.w(0.3, 0.9, 0.3), Curve.arc(x, y, r * 0.7, turnDeg + 196, turnDeg + 344));
    }
}
