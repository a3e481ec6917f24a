import java.awt.geom.Area;

/** The curlew and the redshank of the first window. */
final class EbbTideBirds {
    private final Sheet s;
    private final Curve back = Curve.through(313, 487, 320, 468, 342, 459, 362, 471, 371, 497, 384, 526, 420, 546, 464, 574, 504, 610, 534, 648);
    private final Curve breast = Curve.through(313, 487, 320, 508, 333, 534, 338, 566, 349, 606, 382, 644, 428, 663, 474, 664, 508, 656, 534, 648);
    private final Curve wing = Curve.through(388, 524, 372, 562, 384, 602, 432, 632, 490, 637);
    private final Curve tail = Curve.through(500, 600, 484, 630, 488, 670);
    private final Curve coverts = Curve.through(446, 558, 424, 590, 430, 636);
    private final Curve smallBack = Curve.through(151, 577, 143, 563, 130, 563, 121, 577, 98, 585, 70, 598, 44, 618);
    private final Curve smallBreast = Curve.through(151, 577, 147, 592, 138, 610, 114, 626, 82, 626, 44, 618);
    private final Curve smallWing = Curve.through(126, 574, 118, 600, 96, 612, 74, 628);

    EbbTideBirds(Sheet s) {
        this.s = s;
    }

    void cut() {
        s.cut(back);
        s.cut(breast);
        s.cut(wing);
        s.cut(tail);
        s.cut(coverts);
        s.cut(326, 524, 348, 522, 374, 502);
        s.cut(334, 572, 358, 566, 376, 548);
        s.cut(414, 622, 408, 640, 412, 664);
        s.cut(smallBack);
        s.cut(smallBreast);
        s.cut(smallWing);
        s.cut(117, 574, 132, 582, 150, 594);
        // the curlew's bill, down to the water's edge
        s.cut(313, 487, 284, 484, 256, 498, 236, 524, 222, 560);
        // the redshank's bill, over the water to the curlew's breast
        s.cut(151, 577, 190, 583, 232, 598, 290, 616, 354, 622);
        // lines that spring from the curlew
        s.cut(346, 464, 348, 430, 366, 398, 392, 362);
        s.cut(414, 548, 430, 506, 486, 474, 566, 464);
        s.cut(466, 580, 500, 552, 566, 540);
        s.cut(534, 648, 550, 654, 566, 662);
        s.cut(534, 648, 524, 690, 512, 740, 498, 796, 494, 846);
        s.cut(412, 660, 406, 704, 400, 752, 386, 800, 378, 846);
        // and from the redshank
        s.cut(140, 566, 132, 534, 112, 496);
        s.cut(88, 592, 62, 556, 50, 498);
        s.cut(44, 618, 20, 618, -6, 608);
        s.cut(108, 622, 106, 646, 102, 670);
    }

    Area curlew() {
        return new Area(Motif.closed(back, breast.reversed()));
    }

    Area redshank() {
        return new Area(Motif.closed(smallBack, smallBreast.reversed()));
    }

    void paint() {
        Layer trace = s.trace.within(curlew());
        Layer matt = s.matt.within(curlew());
        Patch whole = new Patch(back, breast);
        // crown and neck: fine streaks that run down the form
        Motif.dabs(trace, whole, 0.05, 0.42, 0.10, 0.94, 13, 9, 0.026, 1.1, 41);
        Motif.dabs(trace, whole, 0.40, 0.66, 0.56, 0.97, 8, 7, 0.03, 1.5, 42);
        Motif.dabs(trace, whole, 0.66, 0.80, 0.80, 0.98, 5, 4, 0.03, 1.2, 43);
        Patch mantle = new Patch(Curve.through(384, 526, 420, 546, 464, 574, 500, 605), wing);
        Motif.scallops(trace, mantle, 0.04, 0.50, 5, 0.03, 0.98, 5, 1.7);
        Motif.scallopShade(matt, mantle, 0.04, 0.50, 5, 0.03, 0.98, 5, 0.38);
        Motif.quills(trace, mantle, 0.54, 1.0, 0.05, 0.97, 6, 1.7, 9);
        Patch fan = new Patch(Curve.through(500, 602, 516, 622, 534, 648), Curve.through(486, 658, 508, 655, 534, 648));
        Motif.quills(trace, fan, 0.02, 0.97, 0.12, 0.92, 4, 1.3, 0);
        for (int i = 0; i < 5; i++) {
            double u = 0.12 + 0.16 * i;
            trace.stroke(Brush.w(0.4, 2.0, 0.4), fan.line(u, 0.06, u + 0.07, 0.5, u, 0.94));
        }
        // light from above left: the back is bright, the belly and the far side of the neck lie in shade
        Motif.softEdge(matt, breast, 60, 0.36);
        Motif.softEdge(matt.outside(mantle.outline()), wing, 34, 0.3);
        Motif.softEdge(matt, tailLine(), 22, 0.2);
        matt.breath(368, 520, 16, 36, -20, 0.24);
        matt.breath(438, 652, 50, 16, 4, 0.2);
        head();
        legs();
        redshankPaint();
    }

    private Curve tailLine() {
        return tail;
    }

    private void head() {
        Layer trace = s.trace;
        trace.stroke(Brush.w(0.5, 3.6, 2.2, 0.4), 322, 473, 336, 465, 352, 469, 364, 480);
        trace.stroke(Brush.w(0.4, 1.8, 0.5), 316, 486, 323, 485, 328, 483);
        trace.stroke(Brush.w(0.6, 2.0, 0.4), 338, 483, 348, 485, 358, 492);
        Motif.eye(trace, 333, 481, 4.4);
        s.trace.solid(Motif.closed(Curve.through(318, 481.5, 284, 479, 254, 493, 233, 521, 221, 559), Curve.through(221, 559, 238, 525.5, 258, 501, 284, 488.8, 317, 493)));
    }

    private void legs() {
        Layer trace = s.trace.outside(curlew());
        trace.stroke(Brush.w(11, 6.4, 4.4, 4.0, 4.6), 413, 656, 409, 682, 405, 704, 401, 730, 398, 758);
        trace.stroke(Brush.w(10, 6, 4.2, 3.8, 4.4), 442, 658, 452, 682, 456, 704, 450, 732, 446, 762);
        trace.solid(Curve.ellipse(405.5, 704, 4.6, 5.6, 0).path());
        trace.solid(Curve.ellipse(456, 705, 4.4, 5.4, 0).path());
        double[][] feet = {{398, 757}, {446, 761}};
        for (double[] f : feet) {
            trace.stroke(Brush.w(4.2, 2.6, 0.8), f[0], f[1], f[0] - 14, f[1] + 5, f[0] - 34, f[1] + 7);
            trace.stroke(Brush.w(4.2, 2.8, 0.8), f[0], f[1], f[0] - 6, f[1] + 9, f[0] - 20, f[1] + 19);
            trace.stroke(Brush.w(4.0, 2.6, 0.8), f[0], f[1], f[0] + 9, f[1] + 9, f[0] + 17, f[1] + 16);
            trace.stroke(Brush.w(3.4, 1.8, 0.6), f[0], f[1] - 3, f[0] + 8, f[1], f[0] + 15, f[1] + 1);
        }
    }

    private void redshankPaint() {
        Layer trace = s.trace.within(redshank());
        Layer matt = s.matt.within(redshank());
        Patch whole = new Patch(smallBack, smallBreast);
        Patch mantle = new Patch(Curve.through(121, 577, 98, 585, 70, 598, 48, 616), smallWing);
        Motif.scallops(trace, mantle, 0.06, 0.5, 3, 0.05, 0.95, 4, 1.0);
        Motif.quills(trace, mantle, 0.52, 1.0, 0.05, 0.95, 4, 1.0, 4);
        Motif.dabs(trace, whole, 0.22, 0.62, 0.55, 0.95, 8, 5, 0.03, 0.8, 44);
        Motif.dabs(trace, whole, 0.08, 0.3, 0.1, 0.6, 5, 4, 0.03, 0.7, 45);
        Motif.softEdge(matt, smallBreast, 26, 0.36);
        Motif.softEdge(matt, smallWing, 10, 0.22);
        Motif.eye(s.trace, 141, 572, 2.3);
        s.trace.solid(Motif.closed(Curve.through(150, 573.5, 172, 577, 193, 584), Curve.through(193, 584, 172, 582, 150, 581.5)));
        Layer below = s.trace.outside(redshank());
        below.stroke(Brush.w(5, 3, 2.4, 2.6), 108, 622, 107, 636, 106, 648, 104, 664);
        below.stroke(Brush.w(5, 3, 2.4, 2.6), 96, 624, 93, 637, 90, 648, 86, 662);
        double[][] feet = {{104, 663}, {86, 661}};
        for (double[] f : feet) {
            below.stroke(Brush.w(2.4, 1.6, 0.5), f[0], f[1], f[0] + 8, f[1] + 4, f[0] + 17, f[1] + 4);
            below.stroke(Brush.w(2.4, 1.6, 0.5), f[0], f[1], f[0] + 4, f[1] + 6, f[0] + 10, f[1] + 10);
            below.stroke(Brush.w(2.2, 1.4, 0.5), f[0], f[1], f[0] - 5, f[1] + 3, f[0] - 9, f[1] + 4);
        }
    }
}
