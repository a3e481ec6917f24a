import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.util.Random;

/** Water, sky and reeds of the first window. */
record EbbTidePaint(Sheet s, EbbTideBirds birds, Curve halo, Curve horizon, Curve hill, Curve shore, Curve leftBank, Curve rightBankFar,
        Curve rightBankNear) {
    private static final Curve HIGH = Curve.through(-6, 96, 90, 72, 200, 82, 300, 84, 410, 58, 566, 76);
    private static final Curve MID_RIGHT = Curve.through(221, 188, 262, 172, 330, 146, 420, 134, 500, 146, 566, 150);
    private static final Curve LOW_RIGHT = Curve.through(219, 222, 262, 236, 340, 226, 440, 206, 520, 214, 566, 226);
    private static final Curve TOP = Curve.through(-6, 2, 280, 2, 566, 2);
    private static final Curve MID_LEFT = Curve.through(-6, 176, 50, 172, 100, 178, 150, 190);
    private static final Curve LOW_LEFT = Curve.through(-6, 246, 50, 252, 100, 244, 148, 222);

    void paint() {
        Area front = new Area(birds.curlew());
        front.add(birds.redshank());
        sky();
        sun();
        land();
        sea();
        channel(front);
        flats(front);
        reeds();
    }

    private Area land(Curve edge, double toY) {
        Path2D path = edge.path();
        path.lineTo(566, toY);
        path.lineTo(-6, toY);
        path.closePath();
        return new Area(path);
    }

    private Area water() {
        Path2D path = leftBank.path();
        path.lineTo(246, 846);
        path.append(rightBankNear.reversed().path(), true);
        path.lineTo(349, 606);
        path.lineTo(322, 470);
        path.append(rightBankFar.reversed().path(), true);
        path.closePath();
        Area area = new Area(path);
        area.intersect(land(shore, 846));
        return area;
    }

    private void sky() {
        Area air = new Area(Motif.rectangle(0, 0, 560, 300));
        air.subtract(new Area(halo.path()));
        air.subtract(land(hill, 310));
        Layer trace = s.trace.within(air).outside(Curve.circle(185, 204, 104).path());
        Layer matt = s.matt.within(air);
        matt.linear(Motif.rectangle(0, 0, 560, 130), 0, 0, 0, 130, 0, 0.26, 0.6, 0.08, 1, 0);
        // clouds: shade gathers under each long line, thin strokes comb it out
        for (Curve c : new Curve[] {HIGH, MID_RIGHT, LOW_RIGHT, MID_LEFT, LOW_LEFT}) {
            Path2D under = c.path();
            under.append(c.moved(0, 34).reversed().path(), true);
            under.closePath();
            double[] m = c.at(0.5);
            Motif.softEdge(matt.within(under), c, 46, 0.3);
        }
        Motif.combed(trace, new Patch(TOP, HIGH), 0.0, 1, 0.3, 1.0, 8, 5, 1.3, 51);
        Motif.combed(trace, new Patch(HIGH, MID_RIGHT.part(0, 5)), 0.3, 1, 0.05, 0.35, 4, 4, 1.1, 52);
        Motif.combed(trace, new Patch(HIGH, MID_RIGHT.part(0, 5)), 0.3, 1, 0.72, 0.98, 3, 4, 1.1, 58);
        Motif.combed(trace, new Patch(HIGH.part(0, 2), MID_LEFT), 0.0, 0.9, 0.05, 0.6, 5, 2, 1.1, 53);
        Motif.combed(trace, new Patch(MID_RIGHT, LOW_RIGHT), 0.25, 1, 0.08, 0.92, 7, 3, 1.0, 54);
        Motif.combed(trace, new Patch(LOW_RIGHT, hill), 0.3, 1, 0.06, 0.5, 4, 4, 0.9, 55);
        Motif.combed(trace, new Patch(MID_LEFT, LOW_LEFT), 0.0, 0.8, 0.1, 0.9, 6, 2, 1.0, 56);
        Motif.combed(trace, new Patch(LOW_LEFT, Curve.through(-6, 302, 60, 300, 150, 298)), 0.0, 0.95, 0.1, 0.95, 5, 2, 1.0, 59);
        flock();
    }

    private void flock() {
        double[][] birdsAt = {{446, 96, 1.25}, {482, 84, 1.0}, {418, 112, 0.95}, {512, 102, 0.85}, {470, 116, 0.8}, {400, 92, 0.7}, {536, 88, 0.65}};
        for (double[] b : birdsAt) {
            double x = b[0];
            double y = b[1];
            double k = b[2];
            s.trace.stroke(Brush.w(0.4, 2.6 * k, 1.8 * k, 0.4), x - 17 * k, y - 5 * k, x - 9 * k, y - 8 * k, x - 3 * k, y - 4 * k, x, y);
            s.trace.stroke(Brush.w(0.4, 2.4 * k, 1.6 * k, 0.4), x + 15 * k, y - 9 * k, x + 9 * k, y - 9 * k, x + 4 * k, y - 5 * k, x, y);
            s.trace.stroke(Brush.w(0.4, 3.0 * k, 2.2 * k, 0.4), x - 8 * k, y + 1.6 * k, x - 3 * k, y + 0.4 * k, x + 3 * k, y - 0.2 * k, x + 8 * k, y + 1.2 * k);
        }
    }

    private void sun() {
        Random chance = new Random(7);
        Layer trace = s.trace.within(halo.path());
        for (int i = 0; i < 72; i++) {
            double a = 2 * StrictMath.PI * i / 72;
            double inner = i % 2 == 0 ? 44.5 : 50;
            double outer = (i % 2 == 0 ? 68 : 61) - 3 * chance.nextDouble();
            double c = StrictMath.cos(a);
            double d = StrictMath.sin(a);
            double turn = 0.05;
            trace.stroke(Brush.w(0.5, i % 2 == 0 ? 1.7 : 1.0, 0.3), 185 + inner * c, 204 + inner * d, 185 + (inner + outer) / 2 * StrictMath.cos(a + turn),
                    204 + (inner + outer) / 2 * StrictMath.sin(a + turn), 185 + outer * c, 204 + outer * d);
        }
        s.stain.flat(Curve.circle(185, 204, 38).path(), 0.55);
        Area ring = new Area(Curve.circle(185, 204, 74).path());
        ring.subtract(new Area(Curve.circle(185, 204, 41).path()));
        s.stain.within(halo.path()).radial(ring, 185, 204, 74, 74, 0, 0.54, 0.3, 0.7, 0.8, 1, 0.4);
        // light that reaches past the ring
        Layer beyond = s.trace.outside(halo.path()).within(Motif.rectangle(0, 0, 560, 296));
        for (int i = 0; i < 40; i++) {
            double a = 2 * StrictMath.PI * (i + 0.3) / 40;
            double inner = 79 + 3 * (i % 3);
            double outer = inner + 9 + 10 * chance.nextDouble() + (i % 4 == 0 ? 12 : 0);
            beyond.stroke(Brush.w(0.4, 1.2, 0.3), 185 + inner * StrictMath.cos(a), 204 + inner * StrictMath.sin(a), 185 + (inner + outer) / 2 * StrictMath.cos(a + 0.02),
                    204 + (inner + outer) / 2 * StrictMath.sin(a + 0.02), 185 + outer * StrictMath.cos(a + 0.01), 204 + outer * StrictMath.sin(a + 0.01));
        }
        for (int i = 0; i < 4; i++) {
            double y = 188 + 11 * i;
            double half = 26 - 2.5 * Math.abs(i - 1.4) * Math.abs(i - 1.4);
            s.trace.stroke(Brush.w(0.3, 1.5, 0.7, 0.3), 185 - half + 7 * (i % 2), y, 180, y - 2.2, 190, y + 1.4, 185 + half - 9 * ((i + 1) % 2), y - 0.8);
        }
    }

    private void land() {
        Area hillArea = land(hill, 302);
        hillArea.intersect(land(Curve.through(-6, 200, 566, 200), 300));
        Layer trace = s.trace.within(hillArea);
        s.matt.within(hillArea).linear(Motif.rectangle(300, 250, 260, 52), 0, 258, 0, 302, 0, 0.05, 1, 0.42);
        Random chance = new Random(13);
        for (int i = 0; i < 64; i++) {
            double[] p = hill.at(0.05 + 0.93 * i / 64);
            double h = 3 + 7 * chance.nextDouble();
            trace.stroke(Brush.w(1.3, 0.9, 0.3), p[0], p[1] + 3, p[0] + 2, p[1] + 3 + h * 0.5, p[0] + 1, p[1] + 4 + h);
        }
        Motif.ripples(trace, new Patch(hill, Curve.through(318, 305, 430, 303, 566, 304)), 0.2, 1, 0.35, 0.95, 3, 7, 0.9, 57);
        // trees and the small library on the rise
        for (int i = 0; i < 26; i++) {
            double x = 404 + 3.4 * i + (i > 13 ? 52 : 0);
            if (x > 556) {
                break;
            }
            double[] p = hill.at((x - 318) / 248);
            double r = 3.2 + 2.6 * chance.nextDouble();
            s.trace.solid(Curve.loop(x - r, p[1] - r * 0.4, x - r * 0.5, p[1] - r * 1.7, x + r * 0.3, p[1] - r * 1.5, x + r, p[1] - r * 0.6, x + r * 0.7, p[1] + 1.5, x - r * 0.7, p[1] + 1.8)
                    .path());
        }
        Area house = new Area(Curve.straight(470, 266, 470, 250, 480, 240, 490, 250, 490, 247, 512, 247, 514, 262, 514, 266, 470, 268).path());
        house.add(new Area(Curve.straight(487, 250, 487, 234, 490.5, 228, 494, 234, 494, 250).path()));
        house.subtract(new Area(Curve.straight(477, 262, 477, 252, 480, 248.5, 483, 252, 483, 262, 477, 262).path()));
        for (int i = 0; i < 3; i++) {
            house.subtract(new Area(Motif.rectangle(497 + 5.4 * i, 252, 3, 6)));
        }
        s.trace.solid(house);
        s.stain.flat(Motif.rectangle(474, 246, 38, 17), 0.9);
    }

    private void sea() {
        Area area = land(horizon, 400);
        area.subtract(land(shore, 400));
        Layer trace = s.trace.within(area);
        Layer matt = s.matt.within(area);
        Patch sea = new Patch(horizon, shore);
        Motif.ripples(trace, sea, 0.0, 0.26, 0.06, 0.97, 7, 3, 1.5, 61);
        Motif.ripples(trace, sea, 0.42, 1.0, 0.06, 0.97, 7, 6, 1.5, 62);
        Motif.ripples(trace, sea, 0.27, 0.41, 0.08, 0.95, 7, 3, 1.1, 63);
        matt.linear(Motif.rectangle(228, 290, 340, 86), 228, 0, 560, 0, 0, 0.02, 1, 0.3);
        matt.linear(Motif.rectangle(-6, 290, 150, 86), 150, 0, 0, 0, 0, 0.02, 1, 0.26);
        Motif.softEdge(matt, shore, 20, 0.22);
        s.stain.within(area).linear(Motif.rectangle(120, 290, 130, 90), 120, 0, 250, 0, 0, 0, 0.3, 0.6, 0.5, 0.9, 0.7, 0.6, 1, 0);
    }

    private void channel(Area front) {
        Area water = water();
        water.subtract(front);
        Layer trace = s.trace.within(water);
        Layer matt = s.matt.within(water);
        Curve[] across = {shore, Curve.through(126, 418, 166, 424, 210, 416), Curve.through(110, 466, 160, 468, 218, 444, 300, 462),
            Curve.through(150, 540, 220, 552, 300, 546, 350, 560), Curve.through(150, 584, 232, 598, 290, 616, 354, 622),
            Curve.through(150, 668, 250, 694, 350, 688), Curve.through(80, 738, 170, 742, 230, 766, 290, 770), Curve.through(30, 838, 150, 846, 260, 842)};
        double[][] u = {{0.27, 0.39}, {0, 1}, {0, 1}, {0, 1}, {0, 1}, {0, 1}, {0, 1}};
        int[] rows = {4, 4, 6, 5, 5, 5, 6};
        int[] perRow = {2, 3, 4, 3, 3, 3, 3};
        for (int i = 0; i < 7; i++) {
            Motif.ripples(trace, new Patch(i == 0 ? Curve.through(150, 374, 186, 377, 222, 372) : across[i], across[i + 1]), 0.02, 0.98, 0.08, 0.96, rows[i], perRow[i],
                    1.0 + 0.25 * i, 70 + i);
        }
        Motif.softEdge(matt, leftBank, 64, 0.34);
        Motif.softEdge(matt, rightBankNear, 54, 0.34);
        Motif.softEdge(matt, rightBankFar, 40, 0.3);
        matt.linear(Motif.rectangle(20, 700, 280, 146), 0, 700, 0, 846, 0, 0, 1, 0.24);
        matt.breath(285, 600, 34, 14, 10, 0.16);
        Layer stain = s.stain.within(water);
        stain.linear(Motif.rectangle(60, 366, 300, 120), 0, 372, 0, 484, 0, 0.85, 0.4, 0.5, 1, 0);
    }

    private void flats(Area front) {
        Area mud = land(shore, 846);
        mud.subtract(water());
        mud.subtract(front);
        Layer trace = s.trace.within(mud);
        Layer matt = s.matt.within(mud);
        Motif.softEdge(matt, leftBank, 46, 0.4);
        Motif.softEdge(matt, rightBankNear, 46, 0.4);
        Motif.softEdge(matt, rightBankFar, 30, 0.34);
        trace.stroke(Brush.w(0.6, 1.8, 0.8, 2.6, 1.2, 3.0, 1.0), leftBank.moved(-7, 1));
        trace.stroke(Brush.w(0.6, 2.2, 0.9, 2.6, 1.0), rightBankNear.moved(7, 2));
        trace.stroke(Brush.w(0.4, 1.6, 0.7, 1.4), rightBankFar.moved(6, -4));
        Curve[] left = {shore, Curve.through(-6, 434, 50, 424, 124, 430), Curve.through(-6, 520, 40, 504, 90, 502, 150, 506), Curve.through(-6, 600, 60, 590, 130, 590, 240, 590),
            Curve.through(-6, 676, 44, 662, 104, 666, 180, 672), Curve.through(-6, 764, 40, 742, 96, 734), Curve.through(-6, 846, 30, 842, 60, 840)};
        for (int i = 0; i < 6; i++) {
            mud(trace, new Patch(i == 0 ? Curve.through(-6, 374, 90, 366, 150, 374) : left[i], left[i + 1]), i, 80 + i, 2);
        }
        Curve[] right = {Curve.through(204, 376, 300, 362, 420, 374, 566, 356), Curve.through(206, 412, 300, 418, 372, 402, 440, 412, 566, 402), Curve.through(220, 470, 340, 460, 430, 500, 486, 474, 566, 464),
            Curve.through(414, 560, 466, 570, 500, 552, 566, 540), Curve.through(414, 650, 534, 648, 566, 662), Curve.through(326, 700, 404, 708, 456, 722, 512, 748, 566, 728),
            Curve.through(262, 780, 316, 766, 388, 776, 450, 800, 500, 804, 566, 776), Curve.through(246, 850, 400, 852, 566, 850)};
        for (int i = 0; i < 7; i++) {
            mud(trace, new Patch(right[i], right[i + 1]), i, 90 + i, 3);
        }
        Motif.vignette(s, s.matt.outside(front), 0.3, f -> f.labelY() > 300);
        Motif.vignette(s, s.matt, 0.26, f -> f.labelY() < 300 && f.areaMm2() > 5100);
        matt.breath(430, 770, 90, 18, 2, 0.24);
        matt.breath(98, 668, 44, 9, 0, 0.22);
        footprints(trace);
        shells(trace, matt);
    }

    /** Wet ground: a few combed strokes under its upper edge, grains below, and here and there the crescents that the ebb leaves. */
    private static void mud(Layer trace, Patch field, int depth, int seed, int perRow) {
        Motif.combed(trace, field, 0.0, 1, 0.07, 0.34, 3, perRow + 1, 1.3 + 0.1 * depth, seed);
        Motif.combed(trace, field, 0.0, 1, 0.72, 0.96, 2, perRow + 1, 1.2 + 0.1 * depth, seed + 400);
        Motif.grains(trace, field, 0.02, 0.98, 0.3, 0.95, 12 * perRow, 0.6 + 0.07 * depth, seed + 500);
        Random chance = new Random(seed + 600);
        for (int i = 0; i < perRow; i++) {
            double u = 0.08 + 0.84 * (i + chance.nextDouble() * 0.6) / perRow;
            double v = 0.42 + 0.24 * chance.nextDouble();
            for (int k = 0; k < 2; k++) {
                double r = 0.055 - 0.016 * k;
                double w = v + 0.08 * k;
                trace.stroke(Brush.w(0.3, 1.0 + 0.1 * depth, 0.3), field.line(u - r, w, u - r * 0.3, w + 0.05, u + r * 0.4, w + 0.045, u + r, w - 0.01));
            }
        }
    }

    private void footprints(Layer trace) {
        for (int i = 0; i < 9; i++) {
            double x = 316 + 17 * i;
            double y = 806 + 9 * StrictMath.sin(i * 0.8) + (i % 2) * 9;
            double k = 1.0;
            trace.stroke(Brush.w(0.5, 1.6, 0.5), x, y, x - 5 * k, y + 1, x - 9 * k, y + 1.5);
            trace.stroke(Brush.w(0.5, 1.4, 0.5), x, y, x - 5 * k, y + 4, x - 7 * k, y + 6);
            trace.stroke(Brush.w(0.5, 1.4, 0.5), x, y, x - 4 * k, y - 3, x - 7 * k, y - 5);
        }
    }

    private void shells(Layer trace, Layer matt) {
        double[][] at = {{296, 822, 11, -20}, {340, 786, 8, 30}, {470, 826, 10, 10}, {28, 726, 8, -10}, {62, 708, 6, 40}, {366, 832, 7, 60}};
        for (double[] c : at) {
            double a = StrictMath.toRadians(c[3]);
            for (int i = 0; i <= 6; i++) {
                double b = a + StrictMath.toRadians(200 + 140.0 * i / 6);
                trace.stroke(Brush.w(0.6, 1.1, 0.3), c[0], c[1], c[0] + c[2] * 0.6 * StrictMath.cos(b + 0.06), c[1] + c[2] * 0.6 * StrictMath.sin(b + 0.06), c[0] + c[2] * StrictMath.cos(b),
                        c[1] + c[2] * StrictMath.sin(b));
            }
            trace.stroke(Brush.w(0.6, 1.8, 0.6), Curve.arc(c[0], c[1], c[2] * 1.02, c[3] + 196, c[3] + 344));
            trace.stroke(Brush.w(0.3, 0.8, 0.3), Curve.arc(c[0], c[1], c[2] * 0.66, c[3] + 200, c[3] + 340));
            matt.breath(c[0] + 2, c[1] + 3, c[2] * 1.4, c[2] * 0.6, 0, 0.3);
        }
    }

    private void reeds() {
        double[][] stems = {
            {548, 850, 546, 700, 536, 560, 514, 420}, {530, 850, 534, 720, 540, 600, 548, 470}, {508, 850, 516, 740, 530, 620, 534, 520}, {556, 850, 558, 760, 556, 660, 552, 560},
            {14, 850, 18, 760, 28, 690, 46, 626}, {30, 850, 28, 780, 22, 720, 12, 660}, {4, 850, 4, 800, 8, 740, 26, 690}
        };
        int seed = 100;
        for (double[] stem : stems) {
            Curve line = Curve.through(stem);
            s.trace.stroke(Brush.w(3.0, 2.4, 1.8, 1.0), line);
            double[] tip = line.at(1);
            double k = stem[0] > 100 ? 1 : 0.75;
            Curve axis = Curve.through(tip[0], tip[1], tip[0] + tip[2] * 26 * k, tip[1] + tip[3] * 26 * k, tip[0] + tip[2] * 44 * k + (tip[2] >= 0 ? 10 : -10) * k, tip[1] + tip[3] * 50 * k);
            Motif.plume(s.trace, s.matt, s.stain, axis, 10 * k, 1.5 * k, seed++);
        }
        double[][] blades = {
            {552, 850, 548, 740, 524, 640, 470, 590}, {520, 850, 512, 760, 486, 700, 446, 690}, {540, 850, 544, 740, 552, 640, 566, 590}, {496, 850, 490, 800, 474, 760, 446, 744},
            {10, 850, 14, 790, 40, 740, 84, 726}, {22, 850, 24, 800, 44, 776, 74, 770}, {2, 850, 4, 790, -2, 740, -8, 720}
        };
        for (double[] b : blades) {
            Motif.blade(s.trace, s.matt, b[0] > 100 ? 10 : 8, 1.3, 0.4, b);
        }
    }
}
