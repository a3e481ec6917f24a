import java.awt.geom.Area;

/** The heron of the second window. */
final class HeronFigure {
    private final Sheet s;
    private final Curve back = Curve.through(172, 312, 180, 288, 204, 273, 236, 270, 276, 286, 308, 326, 322, 384, 322, 440, 346, 484, 372, 540, 386, 610, 384, 668);
    private final Curve front = Curve.through(172, 312, 184, 330, 206, 326, 232, 324, 254, 344, 262, 380, 252, 430, 234, 476, 226, 524, 240, 578, 274, 624, 320, 650, 354, 660, 384, 668);
    private final Curve wing = Curve.through(320, 440, 282, 466, 264, 510, 270, 560, 306, 608, 362, 634);
    private final Curve tail = Curve.through(390, 600, 364, 628, 346, 664);

    HeronFigure(Sheet s) {
        this.s = s;
    }

    Area outline() {
        return new Area(Motif.closed(back, front.reversed()));
    }

    void cut() {
        s.cut(back);
        s.cut(front);
        s.cut(wing);
        s.cut(tail);
        s.cut(216, 330, 224, 300, 212, 266);
        s.cut(256, 366, 286, 350, 316, 346);
        s.cut(240, 458, 276, 452, 290, 462);
        s.cut(262, 520, 308, 514, 356, 494);
        s.cut(280, 580, 326, 572, 384, 556);
        s.cut(268, 552, 250, 566, 236, 572);
        // bill, and on to the border
        s.cut(172, 312, 150, 340, 128, 384, 108, 436, 80, 474, 28, 504);
        s.cut(286, 626, 280, 700, 276, 790, 268, 860);
    }

    void paint() {
        Layer trace = s.trace.within(outline());
        Layer matt = s.matt.within(outline());
        neck(trace, matt);
        body(trace, matt);
        head();
        legs();
    }

    private void neck(Layer trace, Layer matt) {
        Patch neck = new Patch(Curve.through(204, 273, 236, 270, 276, 286, 308, 326, 322, 384, 322, 440), Curve.through(206, 326, 232, 324, 254, 344, 262, 380, 252, 430, 236, 470));
        // the dark dashes down the front of the throat, then fine combing behind them
        Motif.dabs(trace, neck, 0.12, 0.99, 0.72, 0.96, 13, 2, 0.05, 3.0, 201);
        Motif.combed(trace, neck, 0.02, 0.98, 0.06, 0.6, 7, 6, 0.9, 202);
        Motif.softEdge(matt, Curve.through(204, 273, 236, 270, 276, 286, 308, 326, 322, 384, 322, 440), 30, 0.3);
        Motif.softEdge(matt, Curve.through(232, 324, 254, 344, 262, 380, 252, 430, 234, 476), 20, 0.26);
        matt.breath(290, 440, 34, 22, -20, 0.26);
        // plumes that hang from the breast
        for (int i = 0; i < 9; i++) {
            double x = 236 + 5.2 * i;
            double y = 468 - 1.6 * i;
            double fall = 92 - 7 * i;
            trace.stroke(Brush.w(0.4, 1.9, 1.1, 0.3), x, y, x - 5, y + fall * 0.35, x - 4 + i, y + fall * 0.7, x + 2 + i * 1.4, y + fall);
        }
    }

    private void body(Layer trace, Layer matt) {
        Patch mantle = new Patch(Curve.through(320, 440, 346, 484, 372, 540, 388, 604), wing.part(0, 4.7));
        Motif.scallops(trace, mantle, 0.06, 0.34, 4, 0.04, 0.97, 5, 1.2);
        Motif.scallopShade(matt, mantle, 0.06, 0.34, 4, 0.04, 0.97, 5, 0.34);
        Motif.scallops(trace, mantle, 0.38, 0.62, 2, 0.03, 0.97, 5, 1.7);
        Motif.scallopShade(matt, mantle, 0.38, 0.62, 2, 0.03, 0.97, 5, 0.36);
        Motif.quills(trace, mantle, 0.66, 1, 0.05, 0.97, 6, 1.9, 6);
        Patch fan = new Patch(Curve.through(390, 604, 388, 640, 384, 668), Curve.through(346, 662, 364, 664, 384, 668));
        Motif.quills(trace, fan, 0.05, 0.96, 0.15, 0.9, 3, 1.3, 0);
        Motif.combed(trace, new Patch(wing, front.part(7, 12.6)), 0.12, 0.95, 0.2, 0.9, 5, 7, 1.1, 203);
        Motif.softEdge(matt, front.part(7, 13), 44, 0.36);
        Motif.softEdge(matt.outside(mantle.outline()), wing, 26, 0.26);
        Motif.softEdge(matt, wing, 16, 0.18);
        Motif.softEdge(matt, tail, 18, 0.2);
        matt.breath(350, 600, 40, 30, 60, 0.16);
    }

    private void head() {
        s.trace.stroke(Brush.w(0.8, 7.5, 7, 3.6, 1.6, 0.4), 190, 287, 208, 281, 232, 282, 268, 302, 302, 342, 318, 380);
        s.trace.stroke(Brush.w(0.6, 4.4, 2.4, 0.4), 214, 287, 246, 296, 278, 324, 296, 362);
        Motif.eye(s.trace, 194, 302, 4.6);
        s.trace.stroke(Brush.w(0.5, 1.6, 0.5), 178, 312, 186, 310, 190, 307);
        Motif.hatch(s.trace, Curve.through(186, 322, 204, 320, 222, 318), 0, 1, 11, 9, -55, 0.7, 204);
        Area bill = new Area(Motif.closed(Curve.through(177, 304, 148, 336, 124, 384, 106, 440), Curve.through(106, 440, 134, 386, 158, 346, 186, 327)));
        bill.subtract(new Area(Brush.stroke(Curve.through(178, 316, 152, 344, 130, 386), 0.4, 1.1, 0.3)));
        s.trace.solid(bill);
    }

    private void legs() {
        Layer trace = s.trace.outside(outline());
        trace.stroke(Brush.w(12, 7, 5, 4.6, 5), 287, 622, 284, 656, 282, 700, 279, 750, 277, 792);
        trace.stroke(Brush.w(12, 7, 5, 4.6, 5), 322, 646, 330, 680, 334, 712, 328, 756, 324, 798);
        trace.solid(Curve.ellipse(282, 704, 5.4, 7, 0).path());
        trace.solid(Curve.ellipse(334, 712, 5.2, 6.8, 0).path());
        double[][] feet = {{277, 790}, {324, 797}};
        for (double[] f : feet) {
            for (int i = 0; i < 4; i++) {
                double rx = 14 + 9 * i;
                trace.stroke(Brush.w(0.4, 1.8 - 0.25 * i, 0.4), Curve.arc(0, 0, 1, 15 + 12 * i, 165 - 9 * i).map(rx, 0, 0, rx * 0.24, f[0], f[1]));
                trace.stroke(Brush.w(0.4, 1.2, 0.4), Curve.arc(0, 0, 1, 200 + 9 * i, 330 - 12 * i).map(rx, 0, 0, rx * 0.24, f[0], f[1]));
            }
        }
    }
}
