import java.awt.geom.Area;
import java.awt.geom.Path2D;

/** The smallest useful panel: a small diving bird on a willow branch, six pieces, 200 x 250 mm. */
final class FirstPanel {
    private FirstPanel() {
    }

    static Sheet draw() {
        Curve panel = Curve.straight(0, 0, 200, 0, 200, 250, 0, 250, 0, 0);
        Sheet s = new Sheet("First panel: the diver on the willow", 200, 250, panel, 0.66);
        Curve back = s.cut(64, 80, 70, 66, 84, 55, 102, 54, 118, 64, 130, 86, 143, 116, 153, 152, 160, 186, 164, 212);
        Curve front = s.cut(64, 80, 62, 92, 65, 112, 74, 136, 90, 157, 112, 174, 132, 188, 150, 203, 164, 212);
        Curve wing = s.cut(54, 96, 73, 100, 90, 106, 103, 119, 109, 138, 109, 156, 105, 182);
        s.cut(70, 72, 46, 74, 20, 84, -8, 82);
        s.cut(100, 60, 104, 36, 104, 16, 100, -6);
        s.cut(130, 112, 156, 100, 180, 94, 208, 92);
        s.cut(164, 212, 168, 228, 170, 256);
        s.glass(40, 40, "sky blue", "shell pink");
        s.glass(160, 50, "pale water", "pale straw");
        s.glass(182, 170, "pale jade", "lavender");
        s.glass(40, 200, "sea green", "rose");
        s.glass(135, 130, "river blue", "dusk violet");
        s.glass(85, 120, "amber", "copper");

        Path2D bird = back.path();
        bird.append(front.reversed().path(), true);
        bird.closePath();
        Area body = new Area(bird);
        Layer air = s.trace.outside(body);
        Layer airMatt = s.matt.outside(body);
        plumage(s, body, back, front, wing);
        bill(air);
        branch(s, air, airMatt);
        leaves(s, air, airMatt);
        Motif.vignette(s, airMatt, 0.26, f -> true);
        sky(s, airMatt);
        return s;
    }

    private static void plumage(Sheet s, Area body, Curve back, Curve front, Curve wing) {
        Area blue = new Area(new Patch(back, wing).outline());
        blue.intersect(body);
        Layer onBird = s.trace.within(body);
        Layer matt = s.matt.within(body);
        Patch mantle = new Patch(back, Curve.through(64, 92, 84, 100, 100, 106, 110, 122, 113, 150, 130, 184, 164, 212));
        // crown: small bars; wing: scallops, then quills towards the tail
        Motif.scallops(onBird, mantle, 0.08, 0.30, 6, 0.02, 0.62, 4, 0.8);
        Motif.scallops(onBird, mantle, 0.34, 0.62, 4, 0.04, 0.98, 4, 1.1);
        Motif.scallopShade(matt, mantle, 0.36, 0.62, 4, 0.04, 0.98, 4, 0.26);
        Motif.quills(onBird, mantle, 0.64, 0.99, 0.1, 0.95, 4, 1.0, 9);
        matt.linear(new Patch(back, wing).outline(), 150, 110, 108, 140, 0, 0.30, 0.4, 0.05, 1, 0.22);
        matt.breath(92, 58, 30, 10, 10, 0.16);
        // breast
        Patch breast = new Patch(front, wing);
        Motif.dabs(onBird, breast, 0.28, 0.74, 0.12, 0.85, 7, 7, 0.05, 0.55, 11);
        Layer onBreast = matt.outside(blue);
        onBreast.linear(body, 66, 132, 108, 120, 0, 0.26, 0.3, 0.06, 0.62, 0, 1, 0.24);
        onBreast.breath(104, 166, 34, 16, 35, 0.3);
        // cheek: a white patch with a dark stripe through the eye
        onBird.stroke(Brush.w(0.4, 3.4, 4.2, 1.6, 0.4), 66, 84, 78, 82, 92, 84, 106, 93, 114, 106);
        Layer onThroat = onBird.outside(blue);
        onThroat.stroke(Brush.w(0.3, 1.2, 0.3), 66, 108, 78, 114, 92, 116, 104, 114);
        Motif.hatch(onThroat, Curve.through(70, 111, 84, 116, 100, 115), 0, 1, 14, 7, 55, 0.5, 3);
        Layer eye = s.trace;
        Motif.eye(eye, 84, 73, 4.3);
        // the edge of the drawing, heavier below
        s.trace.stroke(Brush.w(0.5, 1.2, 0.6, 1.4, 0.5), Curve.through(66, 96, 69, 112, 77, 135, 92, 154.5, 111, 170));
    }

    private static void bill(Layer air) {
        Path2D upper = Curve.through(68, 80, 46, 88, 22, 102, 8, 108).path();
        upper.append(Curve.through(8, 108, 24, 105, 46, 96, 68, 88.5).path(), true);
        upper.closePath();
        Area bill = new Area(upper);
        bill.subtract(new Area(Brush.stroke(Curve.through(62, 84, 46, 91, 30, 99), 0.3, 1.1, 0.3)));
        air.solid(bill);
        Path2D lower = Curve.through(68, 89.8, 46, 97, 26, 105.4).path();
        lower.append(Curve.through(26, 105, 46, 100, 68, 95).path(), true);
        lower.closePath();
        air.solid(lower);
    }

    private static void branch(Sheet s, Layer air, Layer airMatt) {
        Curve top = Curve.through(-4, 196, 30, 194, 66, 184, 100, 175, 130, 176, 162, 170, 204, 150);
        Curve under = Curve.through(-4, 214, 32, 210, 68, 198, 102, 188, 132, 187, 164, 180, 204, 157);
        Patch bark = new Patch(top, under);
        airMatt.linear(bark.outline(), 90, 174, 96, 200, 0, 0.04, 0.45, 0.2, 1, 0.44);
        air.stroke(Brush.w(1.4, 0.7, 1.3, 0.6, 1.1), top);
        air.stroke(Brush.w(2.6, 1.6, 2.8, 1.3, 1.8), under);
        Motif.ripples(air, bark, 0.0, 0.99, 0.15, 0.95, 5, 7, 0.9, 5);
        air.stroke(Brush.w(0.4, 1.2, 0.5, 0.3), 40, 203, 46, 197, 53, 199, 50, 204, 44, 203);
        // toes over the branch
        for (int i = 0; i < 3; i++) {
            double x = 100 + 7 * i;
            s.trace.stroke(Brush.w(2.8, 2.2, 0.5), x + 5, 167 + 3 * i, x - 0.5, 177, x + 0.5, 188);
        }
        // twigs
        air.stroke(Brush.w(1.8, 1.1, 0.5), 166, 171, 172, 150, 184, 132, 190, 112);
        air.stroke(Brush.w(1.6, 1.0, 0.5), 60, 193, 44, 214, 36, 232, 34, 254);
        air.stroke(Brush.w(1.4, 0.9, 0.4), 30, 200, 20, 182, 18, 164, 22, 146);
    }

    private static void leaves(Sheet s, Layer air, Layer airMatt) {
        double[][] ribs = {
            {186, 130, 178, 112, 178, 92, 184, 72}, {189, 116, 194, 98, 193, 78, 188, 58}, {178, 146, 164, 140, 150, 130, 146, 112},
            {46, 212, 60, 216, 76, 226, 86, 242}, {38, 230, 24, 228, 12, 234, 4, 246}, {36, 240, 50, 238, 62, 244, 70, 256},
            {20, 166, 8, 158, 2, 144, 4, 128}, {20, 158, 30, 146, 34, 132, 32, 118}, {21, 148, 14, 138, 12, 126, 16, 114},
            {110, 192, 106, 208, 112, 226, 124, 242}, {140, 188, 138, 206, 128, 222, 112, 232},
            {186, 166, 184, 186, 190, 206, 198, 222}, {176, 172, 172, 190, 176, 208, 184, 226},
            {184, 150, 172, 158, 164, 154, 150, 162}, {192, 98, 180, 90, 168, 88, 156, 92}, {8, -4, 16, 14, 20, 34, 16, 54}, {26, -4, 36, 12, 42, 30, 40, 50}, {48, -4, 58, 8, 66, 22, 68, 38}, {70, -4, 80, 4, 88, 16, 92, 30},
            {130, -4, 136, 12, 146, 26, 160, 36}, {158, -4, 166, 10, 176, 22, 190, 28}
        };
        Area covered = new Area();
        for (double[] rib : ribs) {
            Motif.leaf(s, air.outside(covered), airMatt.outside(covered), 6.2, 0.8, 0.34, rib);
            covered.add(new Area(Motif.leafShape(Curve.through(rib), 6.2)));
        }
        for (int i : new int[] {4, 8, 16, 19}) {
            s.stain.flat(Motif.leafShape(Curve.through(ribs[i]), 6.2), 0.45);
        }
        s.stain.flat(Motif.leafShape(Curve.through(ribs[0]), 6.2), 0.6);
        s.stain.flat(Motif.leafShape(Curve.through(ribs[12]), 6.2), 0.6);
        Motif.ripples(air.outside(covered), new Patch(Curve.through(-4, 224, 60, 228, 120, 222, 204, 228), Curve.through(-4, 254, 70, 256, 140, 250, 204, 254)), 0, 1,
                0, 1, 5, 5, 1.0, 21);
    }

    private static void sky(Sheet s, Layer airMatt) {
        airMatt.linear(Motif.rectangle(0, 0, 200, 90), 0, 0, 0, 90, 0, 0.22, 1, 0);
        airMatt.linear(Motif.rectangle(0, 190, 200, 60), 0, 190, 0, 250, 0, 0, 1, 0.2);
        airMatt.breath(152, 205, 40, 22, -20, 0.12);
    }
}
