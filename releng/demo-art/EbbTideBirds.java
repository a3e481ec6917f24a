import java.awt.geom.Area;

/** The curlew and the redshank of the first window. */
final class EbbTideBirds {
    private final Sheet s;
    private final Curve back = Curve.through(314, 487, 322, 470, 340, 463, 356, 472, 364, 496, 375, 524, 400, 545, 434, 560, 472, 583, 508, 614, 536, 650);
    private final Curve breast = Curve.through(314, 487, 320, 501, 332, 517, 342, 540, 343, 564, 342, 590, 352, 622, 378, 653, 418, 673, 466, 674, 506, 663, 536, 650);
    private final Curve wing = Curve.through(420, 545, 394, 574, 396, 608, 434, 638, 490, 644);
    private final Curve tail = Curve.through(506, 600, 487, 634, 490, 682);
    private final Curve coverts = Curve.through(452, 560, 426, 596, 432, 646);
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
        s.cut(326, 519, 346, 518, 372, 500);
        s.cut(334, 582, 360, 568, 379, 532, 404, 501, 448, 478, 500, 470, 566, 466);
        s.cut(424, 630, 420, 650, 428, 688);
        s.cut(smallBack);
        s.cut(smallBreast);
        s.cut(smallWing);
        s.cut(117, 574, 132, 582, 150, 594);
        // the curlew's bill, down to the water's edge
        s.cut(314, 487, 290, 492, 266, 507, 246, 530, 230, 566);
        // the redshank's bill, over the water to the curlew's breast
        s.cut(151, 577, 190, 583, 232, 598, 290, 617, 346, 624, 374, 621, 404, 608);
        // lines that spring from the curlew
        s.cut(346, 464, 348, 430, 366, 398, 392, 362);
        s.cut(472, 590, 504, 562, 566, 550);
        s.cut(536, 650, 550, 656, 566, 664);
        s.cut(536, 650, 526, 690, 512, 740, 498, 796, 494, 846);
        s.cut(413, 668, 408, 706, 400, 752, 386, 800, 378, 846);
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
        Motif.dabs(trace, whole, 0.05, 0.36, 0.10, 0.94, 11, 9, 0.026, 1.1, 41);
        Motif.dabs(trace, whole, 0.38, 0.66, 0.66, 0.97, 9, 6, 0.03, 1.5, 42);
        Motif.dabs(trace, whole, 0.66, 0.80, 0.80, 0.98, 5, 4, 0.03, 1.2, 43);
        Patch shoulder = new Patch(Curve.through(379, 528, 400, 545, 420, 553), Curve.through(343, 582, 352, 606, 390, 622));
        Motif.scallops(trace, shoulder, 0.06, 0.98, 3, 0.02, 0.8, 7, 1.0);
        Patch mantle = new Patch(Curve.through(416, 550, 434, 560, 472, 583, 504, 610), wing);
        Motif.scallops(trace, mantle, 0.04, 0.50, 5, 0.03, 0.98, 5, 1.7);
        Motif.scallopShade(matt, mantle, 0.04, 0.50, 5, 0.03, 0.98, 5, 0.38);
        Motif.quills(trace, mantle, 0.54, 1.0, 0.05, 0.97, 6, 1.7, 9);
        Patch fan = new Patch(Curve.through(504, 608, 520, 626, 536, 650), Curve.through(489, 668, 508, 662, 536, 650));
        Motif.quills(trace, fan, 0.02, 0.97, 0.12, 0.92, 4, 1.3, 0);
        for (int i = 0; i < 5; i++) {
            double u = 0.12 + 0.16 * i;
            trace.stroke(Brush.w(0.4, 2.0, 0.4), fan.line(u, 0.06, u + 0.07, 0.5, u, 0.94));
        }
        // light from above left: the back is bright, the belly and the far side of the neck lie in shade
        Motif.softEdge(matt, breast, 60, 0.36);
        Motif.softEdge(matt.outside(mantle.outline()), wing, 34, 0.3);
        Motif.softEdge(matt, tail, 22, 0.2);
        matt.breath(362, 520, 12, 30, -14, 0.24);
        matt.breath(380, 640, 30, 40, -40, 0.2);
        matt.breath(438, 664, 56, 16, 4, 0.24);
        head();
        legs();
        redshankPaint();
    }

    private void head() {
        Layer trace = s.trace;
        trace.stroke(Brush.w(0.5, 3.6, 2.2, 0.4), 324, 474, 338, 467.5, 350, 471, 358, 484);
        trace.stroke(Brush.w(0.4, 1.8, 0.5), 318, 488, 324, 487, 329, 485);
        trace.stroke(Brush.w(0.6, 2.0, 0.4), 340, 485, 348, 487, 356, 494);
        Motif.eye(trace, 334, 483, 4.0);
        s.trace.solid(Motif.closed(Curve.through(320, 480.5, 290, 486.4, 263, 502, 243, 526, 229.5, 562), Curve.through(229.5, 562, 249, 531.5, 269, 511, 292, 498, 320, 495.5)));
    }

    private void legs() {
        Layer trace = s.trace.outside(curlew());
        trace.stroke(Brush.w(11, 6.4, 4.4, 4.0, 4.6), 416, 664, 411, 686, 406, 706, 401, 732, 398, 758);
        trace.stroke(Brush.w(10, 6, 4.2, 3.8, 4.4), 446, 668, 454, 688, 457, 706, 450, 732, 446, 762);
        trace.solid(Curve.ellipse(406, 706, 4.6, 5.6, 0).path());
        trace.solid(Curve.ellipse(457, 707, 4.4, 5.4, 0).path());
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
