import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

/** Border, sky, book, water and lettering of the second window. */
record ReadingHeronPaint(Sheet s, HeronFigure heron, Curve disc, Curve bandTop, Curve bandMiddle, Curve farWater, Curve reed) {
    private static final double X_HEIGHT = 24;
    private static final double CLEAR_MM = 2.4;

    void paint() {
        border();
        // paint of the scene keeps off the border, so that all border pieces are alike even where paint is carried past their cut edges
        double r = 446 - CLEAR_MM;
        double deg = StrictMath.toDegrees(StrictMath.acos(240 / r));
        Area scene = new Area(Curve.join(List.of(Curve.through(480 - r, 960, 480 - r, 416), Curve.arc(480, 416, r, 180, 180 + deg), Curve.arc(0, 416, r, 360 - deg, 360),
                Curve.through(r, 416, r, 960), Curve.through(r, 960, 480 - r, 960))).path());
        Area behind = new Area(scene);
        behind.subtract(heron.outline());
        Motif.vignette(s, s.matt.within(scene), 0.24, f -> f.labelY() < 850);
        sky(behind);
        land(behind);
        water(behind);
        book();
        reeds(behind);
        lettering(s.matt.within(scene));
    }

    /** One border piece, its corner at 0, 0: a bud between two leaves, left clear in a dark ground. */
    private static Area repeat() {
        Area ground = new Area(new java.awt.geom.RoundRectangle2D.Double(4.6, 4.6, 24.8, 58.8, 7, 7));
        Area clear = new Area();
        clear.add(new Area(Curve.ellipse(17, 34, 6.6, 6.6, 0).path()));
        for (int up = -1; up <= 1; up += 2) {
            for (int side = -1; side <= 1; side += 2) {
                Curve rib = Curve.through(17 + side * 1.6, 34 + up * 8.4, 17 + side * 4.6, 34 + up * 15, 17 + side * 3.2, 34 + up * 25.6);
                clear.add(new Area(Motif.leafShape(rib, 4.4)));
                Curve low = Curve.through(17 + side * 6.2, 34 + up * 3.2, 17 + side * 9.2, 34 + up * 8, 17 + side * 9.6, 34 + up * 15);
                clear.add(new Area(Motif.leafShape(low, 2.3)));
                clear.add(new Area(Curve.circle(17 + side * 9.3, 34 + up * 24.6, 1.7).path()));
                clear.add(new Area(Curve.circle(17 + side * 9.7, 34 + up * 19.4, 1.1).path()));
            }
        }
        ground.subtract(clear);
        ground.add(new Area(Curve.circle(17, 34, 2.5).path()));
        for (int i = 0; i < 8; i++) {
            double a = StrictMath.toRadians(45 * i + 22.5);
            double c = StrictMath.cos(a);
            double d = StrictMath.sin(a);
            ground.add(new Area(Brush.stroke(Curve.through(17 + 3.4 * c, 34 + 3.4 * d, 17 + 5.6 * c, 34 + 5.6 * d), 0.5, 0.8)));
        }
        for (int up = -1; up <= 1; up += 2) {
            for (int side = -1; side <= 1; side += 2) {
                ground.add(new Area(Brush.stroke(Curve.through(17 + side * 2, 34 + up * 10, 17 + side * 4.4, 34 + up * 15, 17 + side * 3.6, 34 + up * 22), 0.5, 0.7, 0.35)));
            }
        }
        return ground;
    }

    private void border() {
        List<AffineTransform> places = new ArrayList<>();
        for (int i = 0; i < ReadingHeron.REPEATS; i++) {
            for (double x : new double[] {0, ReadingHeron.W - ReadingHeron.BORDER}) {
                double y = ReadingHeron.SPRING + ReadingHeron.REPEAT * i;
                places.add(Brush.moved(x, y));
                s.matt.linear(Motif.rectangle(x + CLEAR_MM, y + CLEAR_MM, 34 - 2 * CLEAR_MM, 68 - 2 * CLEAR_MM), x, y, x, y + 68, 0, 0.22, 0.5, 0, 1, 0.22);
            }
        }
        for (int i = 0; i < 6; i++) {
            double deg = 10 * i + (i == 5 ? 3.6 : 5);
            double tall = i == 5 ? 0.78 : 1.13;
            for (int side = 0; side < 2; side++) {
                AffineTransform t = side == 0 ? AffineTransform.getTranslateInstance(480, 416) : AffineTransform.getTranslateInstance(0, 416);
                t.rotate(StrictMath.toRadians(side == 0 ? deg : -deg));
                t.translate(side == 0 ? -463 : 463, 0);
                t.scale(1, tall);
                t.translate(-17, -34);
                places.add(t);
            }
        }
        s.trace.repeated("border-leaf", repeat(), places);
    }

    private void sky(Area behind) {
        Area outside = new Area(behind);
        outside.subtract(new Area(disc.path()));
        outside.subtract(new Area(Motif.rectangle(0, 440, 480, 520)));
        Layer trace = s.trace.within(outside);
        // the air turns around the disc
        for (int ring = 0; ring < 9; ring++) {
            double r = 152 + 11.5 * ring;
            for (int k = 0; k < 9; k++) {
                double from = 135 + 32 * k + 13 * (ring % 3) + (ring * 37 + k * 53) % 11;
                double sweep = 12 + (ring * 29 + k * 17) % 15;
                trace.stroke(Brush.w(0.3, 0.8 + 0.5 * ((ring + k) % 3), 0.3), Curve.arc(236, 300, r + (k % 3) * 2.4, from, from + sweep));
            }
        }
        Layer in = s.trace.within(behind).within(disc.path());
        for (int i = 0; i < 96; i++) {
            double a = StrictMath.toRadians(3.75 * i);
            double inner = i % 2 == 0 ? 112 : 121;
            double outer = 135;
            double c = StrictMath.cos(a);
            double d = StrictMath.sin(a);
            in.stroke(Brush.w(0.3, i % 2 == 0 ? 1.5 : 0.9, 0.5), 236 + inner * StrictMath.cos(a - 0.05), 300 + inner * StrictMath.sin(a - 0.05), 236 + (inner + outer) / 2 * StrictMath.cos(a - 0.01),
                    300 + (inner + outer) / 2 * StrictMath.sin(a - 0.01), 236 + outer * c, 300 + outer * d);
        }
        for (int ring = 0; ring < 5; ring++) {
            double r = 102 - 15 * ring;
            for (int k = 0; k < 6; k++) {
                double from = 60 * k + 23 * ring;
                in.stroke(Brush.w(0.3, 0.9, 0.3), Curve.arc(236, 300, r, from, from + 26 + 6 * (k % 2)));
            }
        }
        s.stain.within(behind).radial(disc.path(), 236, 300, 140, 140, 0, 0, 0.1, 0.55, 0.3, 1, 0.8);
        s.matt.within(outside).linear(Motif.rectangle(30, 30, 420, 260), 0, 40, 0, 290, 0, 0.24, 1, 0);
        s.matt.within(behind).within(disc.path()).linear(Curve.circle(236, 300, 140).path(), 236, 440, 236, 300, 0, 0.2, 1, 0);
    }

    private void land(Area behind) {
        Area low = new Area(Motif.rectangle(30, 380, 420, 260));
        low.intersect(behind);
        low.subtract(new Area(disc.path()));
        low.subtract(new Area(Motif.closed(Curve.through(84, 552, 112, 546, 141, 570), Curve.through(141, 570, 170, 546, 198, 552), Curve.through(204, 616, 170, 606, 141, 622),
                Curve.through(141, 622, 112, 606, 78, 616))));
        Layer trace = s.trace.within(low);
        Layer matt = s.matt.within(low);
        Patch left = new Patch(Curve.through(28, 504, 80, 474, 130, 440, 250, 440), Curve.through(28, 534, 84, 548, 170, 552, 240, 546));
        Motif.combed(trace, left, 0, 1, 0.08, 0.6, 5, 4, 0.9, 211);
        // a far shore with trees
        java.util.Random chance = new java.util.Random(17);
        Curve shore = Curve.through(28, 524, 70, 520, 120, 528, 170, 522, 240, 526);
        trace.stroke(Brush.w(0.5, 2.4, 1.2, 2.0, 0.6), shore);
        for (int i = 0; i < 40; i++) {
            double[] p = shore.at(i / 40.0);
            double r = 2.6 + 4.4 * chance.nextDouble() * (0.4 + 0.6 * Math.abs(StrictMath.sin(i * 0.45)));
            trace.solid(Curve.loop(p[0] - r, p[1] + 0.5, p[0] - r * 0.6, p[1] - r * 1.1, p[0] + r * 0.1, p[1] - r * 1.5, p[0] + r * 0.8, p[1] - r * 0.9, p[0] + r, p[1] + 0.6).path());
        }
        Motif.ripples(trace, new Patch(shore.moved(0, 6), Curve.through(28, 560, 130, 556, 240, 560)), 0, 1, 0, 0.9, 3, 6, 0.9, 212);
        // on the right: meadow, hedge, reed bed
        Patch meadow = new Patch(Curve.through(318, 446, 360, 440, 400, 446, 452, 434), Curve.through(340, 484, 380, 484, 420, 474, 452, 462));
        for (int i = 0; i < 26; i++) {
            double[] p = meadow.points(0.05 + 0.94 * i / 26, 0.86);
            double r = 3.2 + 4 * chance.nextDouble();
            trace.solid(Curve.loop(p[0] - r, p[1] + 1, p[0] - r * 0.5, p[1] - r * 1.2, p[0] + r * 0.4, p[1] - r * 1.3, p[0] + r, p[1] + 1).path());
        }
        Motif.combed(trace, meadow, 0, 1, 0.15, 0.6, 3, 4, 1.0, 213);
        Patch field = new Patch(Curve.through(350, 490, 380, 486, 420, 478, 452, 468), Curve.through(370, 540, 396, 536, 420, 548, 452, 552));
        for (int i = 0; i < 60; i++) {
            double[] p = field.points(chance.nextDouble(), 0.1 + 0.85 * chance.nextDouble());
            trace.stroke(Brush.w(1.2, 0.8, 0.3), p[0], p[1], p[0] + 1, p[1] - 6, p[0] + 4 * (chance.nextDouble() - 0.3), p[1] - 12);
        }
        matt.linear(field.outline(), 0, 484, 0, 548, 0, 0.02, 1, 0.3);
    }

    private void water(Area behind) {
        Area wet = new Area(Motif.rectangle(30, 548, 420, 310));
        wet.intersect(behind);
        wet.subtract(new Area(Motif.closed(Curve.through(84, 552, 112, 546, 141, 570), Curve.through(141, 570, 170, 546, 198, 552), Curve.through(204, 616, 170, 606, 141, 622),
                Curve.through(141, 622, 112, 606, 78, 616))));
        wet.subtract(new Area(Motif.closed(Curve.straight(114, 614, 110, 794), Curve.through(110, 790, 141, 798, 172, 790), Curve.straight(172, 790, 168, 614))));
        Path2D bandArea = bandTop.path();
        bandArea.lineTo(452, 960);
        bandArea.lineTo(28, 960);
        bandArea.closePath();
        wet.subtract(new Area(bandArea));
        Area shadeOfReeds = new Area(Motif.closed(reed, Curve.straight(452, 524, 452, 858, 404, 858)));
        wet.subtract(shadeOfReeds);
        Layer trace = s.trace.within(wet);
        Layer matt = s.matt.within(wet);
        Curve[] down = {Curve.through(28, 552, 130, 556, 240, 552, 404, 560), Curve.through(28, 606, 140, 620, 280, 612, 420, 640), Curve.through(28, 706, 70, 692, 114, 704, 220, 690, 280, 708, 350, 694, 410, 708),
            farWater, bandTop};
        int[] rows = {4, 8, 7, 6};
        for (int i = 0; i < 4; i++) {
            Motif.ripples(trace, new Patch(down[i], down[i + 1]), 0, 1, 0.1, 0.95, rows[i], 6, 1.2 + 0.3 * i, 220 + i);
        }
        // reflections: the post, the legs, the light between
        matt.breath(141, 824, 34, 30, 0, 0.24);
        matt.breath(300, 720, 70, 14, 0, 0.2);
        matt.breath(300, 810, 80, 12, 0, 0.22);
        Layer stain = s.stain.within(wet);
        for (int i = 0; i < 9; i++) {
            double x = 190 + 9 * (i * 5 % 7);
            double y = 706 + 8.5 * i;
            stain.flat(Brush.stroke(Curve.through(x, y, x + 18, y + 2, x + 36 + i * 1.5, y - 1), 0.5, 4 + i * 0.25, 0.5), 0.7);
        }
    }

    private void book() {
        Curve topLeft = Curve.through(84, 552, 112, 546, 141, 570);
        Curve bottomLeft = Curve.through(78, 616, 112, 606, 141, 622);
        Curve topRight = Curve.through(198, 552, 170, 546, 141, 570);
        Curve bottomRight = Curve.through(204, 616, 170, 606, 141, 622);
        for (Patch page : new Patch[] {new Patch(topLeft, bottomLeft), new Patch(topRight, bottomRight)}) {
            Layer matt = s.matt.within(page.outline());
            double[] spine = page.points(1, 0.5);
            double[] edge = page.points(0, 0.5);
            matt.linear(page.outline(), spine[0], spine[1], edge[0], edge[1], 0, 0.42, 0.25, 0.14, 0.6, 0, 1, 0.14);
            for (int i = 0; i < 7; i++) {
                double v = 0.16 + 0.105 * i;
                double end = i == 6 ? 0.55 : 0.9;
                double at = 0.14;
                int word = i;
                while (at < end) {
                    double length = Math.min(end - at, 0.07 + 0.045 * (word * 7 % 4));
                    s.trace.stroke(Brush.w(0.5, 1.6, 0.9, 1.5, 0.5), page.run(at, v, at + length, v));
                    at += length + 0.055;
                    word++;
                }
            }
            for (int i = 0; i < 3; i++) {
                s.trace.stroke(Brush.w(0.4, 0.8, 0.4), page.run(0.02, 0.94 - 0.028 * i, 0.98, 0.94 - 0.028 * i));
            }
            s.trace.stroke(Brush.w(0.4, 1.0, 0.4), page.run(0.05, 0.06, 0.95, 0.06));
        }
        Patch post = new Patch(Curve.through(114, 616, 112, 700, 110, 794), Curve.through(168, 616, 170, 700, 172, 794));
        Layer trace = s.trace.within(post.outline());
        Motif.combed(trace, post, 0.02, 0.98, 0.04, 0.96, 10, 5, 1.2, 230);
        s.matt.linear(post.outline(), 112, 0, 170, 0, 0, 0.04, 0.35, 0.02, 0.75, 0.32, 1, 0.4);
        s.matt.linear(post.outline(), 0, 612, 0, 660, 0, 0.34, 1, 0);
        trace.stroke(Brush.w(0.6, 0.8, 1.2, 1.6, 1.6, 1.2, 0.8, 0.6, 0.6), Curve.ellipse(136, 668, 5, 9, 4));
        trace.stroke(Brush.w(0.5, 0.7, 1.0, 1.0, 0.8, 0.6, 0.5), Curve.ellipse(136, 668, 2, 4.5, 4));
        // weed and mussels at the high water mark
        java.util.Random chance = new java.util.Random(23);
        for (int i = 0; i < 22; i++) {
            double x = 113 + 56 * chance.nextDouble();
            double y = 738 + 26 * chance.nextDouble();
            trace.stroke(Brush.w(0.8, 2.4, 0.4), x, y, x + 3 * (chance.nextDouble() - 0.5), y + 9, x + 7 * (chance.nextDouble() - 0.5), y + 18);
        }
        for (int i = 0; i < 11; i++) {
            double x = 116 + 5.2 * i;
            double y = 732 + 5 * StrictMath.sin(i * 1.9);
            trace.solid(Curve.ellipse(x, y, 2.1, 4.4, 25 * StrictMath.sin(i * 2.3)).path());
        }
    }

    private void reeds(Area behind) {
        Layer trace = s.trace.within(behind);
        Layer matt = s.matt.within(behind);
        Layer stain = s.stain.within(behind);
        double[][] stems = {{420, 852, 424, 740, 434, 600, 428, 400}, {436, 852, 434, 760, 420, 640, 404, 474}, {410, 852, 414, 740, 428, 620, 438, 500},
            {46, 846, 52, 740, 50, 620, 58, 470}, {62, 846, 58, 760, 46, 680, 44, 560}};
        int seed = 240;
        for (double[] stem : stems) {
            Curve line = Curve.through(stem);
            trace.stroke(Brush.w(2.8, 2.2, 1.6, 1.0), line);
            double[] tip = line.at(1);
            double lean = stem[0] > 240 ? -9 : 9;
            Motif.plume(trace, matt, stain, Curve.through(tip[0], tip[1], tip[0] + tip[2] * 28, tip[1] + tip[3] * 28, tip[0] + tip[2] * 46 + lean, tip[1] + tip[3] * 50), 9, 1.5, seed++);
        }
        Motif.blade(trace, matt, 9, 1.1, 0.26, 428, 854, 430, 760, 420, 660, 388, 600);
        Motif.blade(trace, matt, 9, 1.1, 0.26, 440, 854, 438, 780, 444, 700, 452, 640);
        Motif.blade(trace, matt, 8, 1.0, 0.26, 412, 854, 408, 790, 392, 740, 364, 716);
        Motif.blade(trace, matt, 9, 1.1, 0.26, 40, 850, 44, 780, 56, 720, 84, 676);
        Motif.blade(trace, matt, 8, 1.0, 0.26, 56, 850, 58, 800, 74, 770, 100, 756);
    }

    private void lettering(Layer matt) {
        Uncial hand = new Uncial();
        double gap = X_HEIGHT * 1.5;
        double first = hand.width("every tide", X_HEIGHT) + gap + hand.width("turns", X_HEIGHT);
        double x = 240 - first / 2;
        hand.write(s.lettering, "every tide", x, 894, X_HEIGHT);
        hand.write(s.lettering, "turns", x + hand.width("every tide", X_HEIGHT) + gap, 894, X_HEIGHT);
        double second = hand.width("another", X_HEIGHT) + gap + hand.width("page", X_HEIGHT);
        x = 240 - second / 2;
        hand.write(s.lettering, "another", x, 946, X_HEIGHT);
        hand.write(s.lettering, "page", x + hand.width("another", X_HEIGHT) + gap, 946, X_HEIGHT);
        for (int side = -1; side <= 1; side += 2) {
            for (int i = 0; i < 3; i++) {
                double cx = 240 + side * (second / 2 + 16 + 11 * i);
                s.trace.stroke(Brush.w(0.5, 2.2 - 0.4 * i, 0.5), cx - side * 6, 938, cx, 933 + 5 * (i % 2), cx + side * 6, 938);
            }
        }
        matt.linear(Motif.rectangle(34, 850, 412, 58), 0, 852, 0, 880, 0, 0.26, 1, 0);
        matt.linear(Motif.rectangle(34, 908, 412, 52), 0, 920, 0, 960, 0, 0, 1, 0.26);
        matt.linear(Motif.rectangle(34, 850, 60, 110), 34, 0, 94, 0, 0, 0.24, 1, 0);
        matt.linear(Motif.rectangle(386, 850, 60, 110), 446, 0, 386, 0, 0, 0.24, 1, 0);
    }
}
