import java.awt.geom.Area;

/** Grass and fish of the third window. */
final class Seabed {
    private final Sheet s;
    /** Left and right edge of each blade, from the ground up. */
    private final Curve[][] blades = {
        {Curve.through(136, 428, 114, 372, 124, 318, 156, 268, 186, 206), Curve.through(157, 426, 135, 374, 145, 324, 176, 275, 205, 210)},
        {Curve.through(222, 436, 204, 378, 218, 318, 242, 262, 246, 204), Curve.through(243, 436, 225, 379, 238, 322, 261, 267, 266, 206)},
        {Curve.through(298, 426, 278, 370, 292, 312, 326, 260, 354, 200), Curve.through(319, 425, 299, 372, 312, 317, 345, 267, 373, 208)},
        {Curve.through(360, 426, 388, 372, 384, 314, 400, 260, 422, 208), Curve.through(381, 424, 409, 372, 405, 316, 420, 262, 441, 206)}
    };
    private final Curve firstTop = Curve.through(166, 328, 190, 305, 222, 299, 252, 308, 276, 319);
    private final Curve firstBelow = Curve.through(166, 328, 190, 346, 222, 348, 252, 334, 276, 319);
    private final Curve secondTop = Curve.through(366, 264, 386, 245, 412, 239, 436, 245, 454, 252);
    private final Curve secondBelow = Curve.through(366, 264, 386, 278, 412, 279, 436, 266, 454, 252);

    Seabed(Sheet s) {
        this.s = s;
    }

    Area fish() {
        Area area = new Area(Motif.closed(firstTop, firstBelow.reversed()));
        area.add(new Area(Motif.closed(secondTop, secondBelow.reversed())));
        return area;
    }

    Area grass() {
        Area area = new Area();
        for (Curve[] b : blades) {
            area.add(new Area(new Patch(b[0], b[1]).outline()));
        }
        return area;
    }

    void cut() {
        s.cut(firstTop);
        s.cut(firstBelow);
        s.cut(secondTop);
        s.cut(secondBelow);
        s.cut(196, 296, 206, 322, 198, 352);
        s.cut(390, 236, 398, 258, 392, 284);
        for (int i = 0; i < 4; i++) {
            for (Curve edge : blades[i]) {
                if (i % 2 == 0) {
                    s.cut(edge);
                } else {
                    // a fish swims before this blade
                    s.cut(edge.part(0, place(edge, i == 1 ? firstBelow : secondBelow) + 0.05));
                    s.cut(edge.part(place(edge, i == 1 ? firstTop : secondTop) - 0.05, edge.segments()));
                }
            }
        }
    }

    private static double place(Curve line, Curve crossed) {
        double[][] samples = line.samples();
        Arrangement.Crossing c = Arrangement.crossings(samples, crossed.samples()).get(0);
        return samples[c.segment()][2] + (samples[c.segment() + 1][2] - samples[c.segment()][2]) * c.share();
    }

    void paint(Area water) {
        Area before = fish();
        Layer trace = s.trace.within(water).outside(before);
        Layer matt = s.matt.within(water).outside(before);
        for (Curve[] b : blades) {
            Patch blade = new Patch(b[0], b[1]);
            Layer in = matt.within(blade.outline());
            for (int i = 1; i <= 4; i++) {
                double v = 0.2 * i;
                trace.stroke(Brush.w(0.5, i == 2 ? 2.0 : 1.0, i == 2 ? 1.6 : 0.8, 0.5), blade.run(0.02 + 0.05 * (i % 2), v, 0.97 - 0.08 * (i % 3), v));
            }
            for (int i = 0; i < 9; i++) {
                double u = 0.06 + 0.1 * i;
                trace.stroke(Brush.w(0.4, 0.9, 0.4), blade.line(u, 0.24, u + 0.012, 0.4, u + 0.004, 0.56));
                trace.stroke(Brush.w(0.4, 0.9, 0.4), blade.line(u + 0.05, 0.62, u + 0.06, 0.76, u + 0.052, 0.9));
            }
            Motif.softEdge(in, b[1], 22, 0.42);
            Motif.softEdge(in, b[0], 8, 0.2);
            // the shadow that a blade throws beside itself
            Motif.softEdge(matt.outside(blade.outline()), b[1], 26, 0.26);
        }
        paintFish(new Patch(firstTop, firstBelow), 1, 301);
        paintFish(new Patch(secondTop, secondBelow), 0.82, 302);
    }

    private void paintFish(Patch fish, double k, long seed) {
        Area body = new Area(fish.outline());
        Layer trace = s.trace.within(body);
        Layer matt = s.matt.within(body);
        Motif.scallops(trace, fish, 0.34, 0.9, 9, 0.06, 0.94, 6, 0.9 * k);
        Motif.softEdge(matt, fish.second(), 30 * k, 0.4);
        Motif.softEdge(matt, fish.first(), 16 * k, 0.34);
        trace.stroke(Brush.w(0.5, 2.2 * k, 0.8), fish.line(0.25, 0.04, 0.3, 0.3, 0.31, 0.6, 0.25, 0.96));
        trace.stroke(Brush.w(0.4, 1.2 * k, 0.4), fish.line(0.19, 0.3, 0.225, 0.5, 0.2, 0.86));
        trace.stroke(Brush.w(0.4, 1.4 * k, 0.4), fish.line(0.0, 0.5, 0.05, 0.62, 0.1, 0.6));
        double[] eye = fish.points(0.125, 0.36);
        Motif.eye(trace, eye[0], eye[1], 4.2 * k);
        for (int i = 0; i < 5; i++) {
            trace.stroke(Brush.w(0.4, 1.3 * k, 0.4), fish.line(0.34, 0.6 + 0.03 * i, 0.4, 0.62 + 0.05 * i, 0.47, 0.62 + 0.08 * i));
        }
        // fins, outside the body
        Layer water = s.trace.within(Curve.circle(250, 250, 222).path()).outside(body);
        double[] t = fish.points(0.985, 0.5);
        for (int i = -4; i <= 4; i++) {
            double reach = (21 + 2.2 * Math.abs(i)) * k;
            water.stroke(Brush.w(1.6 * k, 1.1 * k, 0.4), t[0] - 2, t[1] + 0.6 * i, t[0] + reach * 0.5, t[1] + 1.5 * i * k, t[0] + reach, t[1] + 4.3 * i * k);
        }
        water.stroke(Brush.w(0.6, 1.8 * k, 0.8), t[0], t[1] - 3 * k, t[0] + 13 * k, t[1] - 7 * k, t[0] + 31 * k, t[1] - 19 * k);
        water.stroke(Brush.w(0.6, 1.8 * k, 0.8), t[0], t[1] + 3 * k, t[0] + 13 * k, t[1] + 7 * k, t[0] + 31 * k, t[1] + 19 * k);
        water.stroke(Brush.w(0.6, 1.2 * k, 0.6), t[0] + 31 * k, t[1] - 19 * k, t[0] + 22 * k, t[1], t[0] + 31 * k, t[1] + 19 * k);
        double[][] top = fish.first().along(new double[] {0.36, 0.44, 0.52, 0.6, 0.68, 0.76});
        for (int i = 0; i < top.length; i++) {
            double h = (14 - 1.6 * i) * k;
            water.stroke(Brush.w(1.2 * k, 0.9 * k, 0.4), top[i][0], top[i][1] + 1, top[i][0] + 5 * k, top[i][1] - h * 0.6, top[i][0] + 10 * k, top[i][1] - h);
        }
        water.stroke(Brush.w(0.5, 1.8 * k, 0.5), top[0][0] - 4 * k, top[0][1], top[0][0] + 8 * k, top[0][1] - 15 * k, top[3][0] + 9 * k, top[3][1] - 10 * k, top[5][0] + 10 * k, top[5][1] - 5 * k);
        double[][] low = fish.second().along(new double[] {0.42, 0.48, 0.54, 0.74, 0.79, 0.84});
        for (int i = 0; i < low.length; i++) {
            double h = (12 - 1.2 * i) * k;
            water.stroke(Brush.w(1.2 * k, 0.9 * k, 0.4), low[i][0], low[i][1] - 1, low[i][0] + 5 * k, low[i][1] + h * 0.6, low[i][0] + 11 * k, low[i][1] + h);
        }
        s.stain.within(body).linear(fish.outline(), eye[0], eye[1] - 20 * k, eye[0], eye[1] + 24 * k, 0, 0.1, 0.6, 0.75, 1, 0.2);
    }
}
