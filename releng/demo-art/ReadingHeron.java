import java.awt.geom.Area;
import java.util.ArrayList;
import java.util.List;

/**
 * W02: a heron bends over an open book on a mooring post, the sun behind its head. Pointed arch of one radius, 480 x 960 mm, with a border
 * whose straight pieces are all alike, and a line of lettering.
 */
final class ReadingHeron {
    static final double W = 480;
    static final double H = 960;
    static final double SPRING = 416;
    static final double BORDER = 34;
    static final double REPEAT = 68;
    static final int REPEATS = 8;

    private final Sheet s = new Sheet("W02 The reading heron", W, H, Curve.join(List.of(Curve.through(0, H, 0, SPRING), Curve.arc(W, SPRING, W, 180, 240),
            Curve.arc(0, SPRING, W, 300, 360), Curve.through(W, SPRING, W, H), Curve.through(W, H, 0, H))), 0.48);
    private final Curve disc = Curve.circle(236, 300, 140);
    private final HeronFigure heron = new HeronFigure(s);
    private final Curve bandTop = Curve.through(28, 859, 110, 852, 240, 848, 370, 852, 452, 859);
    private final Curve bandMiddle = Curve.through(28, 912, 130, 905, 240, 909, 350, 913, 452, 906);
    private final Curve farWater = Curve.through(28, 786, 80, 780, 112, 789, 141, 797, 170, 789, 230, 782, 290, 796, 360, 788, 452, 776);
    private final Curve reed = Curve.through(404, 858, 396, 790, 410, 716, 404, 648, 420, 580, 452, 524);

    private ReadingHeron() {
    }

    static Sheet draw() {
        ReadingHeron window = new ReadingHeron();
        window.cutBorder();
        window.cutScene();
        window.heron.cut();
        window.glaze();
        new ReadingHeronPaint(window.s, window.heron, window.disc, window.bandTop, window.bandMiddle, window.farWater, window.reed).paint();
        window.heron.paint();
        return window.s;
    }

    private void cutBorder() {
        double inner = W - BORDER;
        double apexY = apexY();
        double apexDeg = StrictMath.toDegrees(StrictMath.atan2(SPRING - apexY, -W / 2));
        s.cut(Curve.join(List.of(Curve.through(BORDER, H + 6, BORDER, SPRING), Curve.arc(W, SPRING, inner, 180, 360 - apexDeg))));
        s.cut(Curve.join(List.of(Curve.through(W - BORDER, H + 6, W - BORDER, SPRING), Curve.arc(0, SPRING, inner, 0, apexDeg - 180))));
        for (int i = 0; i < REPEATS; i++) {
            double y = SPRING + REPEAT * i;
            s.cut(-5, y, BORDER + 5, y);
            s.cut(W + 5, y, W - BORDER - 5, y);
        }
        for (int i = 1; i <= 5; i++) {
            double a = StrictMath.toRadians(10 * i);
            double c = StrictMath.cos(a);
            double d = StrictMath.sin(a);
            s.cut(W - (W + 5) * c, SPRING - (W + 5) * d, W - (inner - 5) * c, SPRING - (inner - 5) * d);
            s.cut((W + 5) * c, SPRING - (W + 5) * d, (inner - 5) * c, SPRING - (inner - 5) * d);
        }
    }

    private static double apexY() {
        double inner = W - BORDER;
        return SPRING - StrictMath.sqrt(inner * inner - W * W / 4);
    }

    private void cutScene() {
        double apexY = apexY();
        // the disc, where the bird does not hide it: from the neck round to the back of the neck
        s.cut(Curve.arc(236, 300, 140, 80, 418));
        // sky beyond the disc
        s.cut(184, 280, 150, 252, 112, 236, 70, 229);
        s.cut(232, 274, 226, 222, 238, 160, 250, 110, 240, apexY);
        s.cut(240, apexY, 240, -5);
        s.cut(172, 180, 146, 172, 110, 156);
        s.cut(304, 182, 330, 168, 374, 158);
        s.cut(318, 352, 344, 330, 374, 314, 408, 306, 438, 300);
        s.cut(346, 222, 376, 220, 410, 230);
        s.cut(102, 318, 76, 312, 44, 302);
        // land behind
        s.cut(326, 448, 360, 440, 400, 446, 452, 434);
        s.cut(346, 484, 380, 484, 420, 474, 452, 462);
        s.cut(370, 540, 396, 534, 432, 556);
        s.cut(170, 418, 176, 470, 166, 560);
        s.cut(28, 532, 56, 536, 84, 552);
        s.cut(198, 552, 214, 544, 240, 546);
        // the book and its post
        s.cut(84, 552, 112, 546, 141, 570);
        s.cut(141, 570, 170, 546, 198, 552);
        s.cut(84, 552, 80, 584, 78, 616);
        s.cut(198, 552, 202, 584, 204, 616);
        s.cut(78, 616, 112, 606, 141, 622);
        s.cut(141, 622, 170, 606, 204, 616);
        s.cut(141, 570, 142, 598, 141, 622);
        s.cut(114, 614, 112, 700, 110, 794);
        s.cut(168, 614, 170, 700, 172, 794);
        s.cut(78, 616, 56, 612, 28, 602);
        s.cut(204, 616, 230, 622, 272, 612);
        // water
        s.cut(28, 706, 70, 692, 114, 704);
        s.cut(168, 702, 220, 690, 280, 708, 350, 694, 410, 708, 452, 698);
        s.cut(farWater);
        s.cut(384, 668, 396, 664, 412, 654, 452, 640);
        s.cut(reed);
        s.cut(92, 780, 88, 820, 94, 858);
        s.cut(180, 782, 178, 818, 182, 856);
        // lettering
        s.cut(bandTop);
        s.cut(bandMiddle);
        s.cut(286, 844, 283, 880, 287, 912);
        s.cut(274, 904, 271, 934, 274, 966);
    }

    private void glaze() {
        String[][] pieces = {
            // sky beyond the disc
            {"200,110", "river blue", "dusk violet"}, {"290,110", "river blue", "dusk violet"}, {"130,190", "sky blue", "lavender"}, {"350,185", "sky blue", "lavender"},
            {"75,270", "pale water", "rose"}, {"395,265", "river blue", "dusk violet"}, {"70,394", "sky blue", "lavender"}, {"400,382", "sky blue", "rose"},
            // disc
            {"183,220", "honey", "coral"}, {"282,227", "amber", "copper"}, {"136,290", "pale straw", "shell pink"}, {"208,381", "pale straw", "shell pink"},
            {"345,375", "honey", "coral"},
            // land
            {"124,496", "pale water", "shell pink"}, {"206,480", "pale jade", "rose"}, {"400,455", "reed green", "slate"}, {"387,507", "moss", "plum"},
            {"400,562", "sea green", "slate"}, {"428,590", "reed green", "dusk violet"}, {"426,670", "moss", "plum"}, {"424,750", "reed green", "slate"}, {"421,816", "moss", "plum"},
            // heron
            {"200,300", "mist white", "mist white"}, {"274,320", "mist white", "bone"}, {"288,410", "bone", "mist white"}, {"250,500", "mist white", "shell pink"},
            {"258,595", "pale water", "mist white"}, {"305,485", "river blue", "slate"}, {"337,537", "storm gray", "storm gray"}, {"345,590", "slate", "dusk violet"},
            {"370,645", "river blue", "slate"},
            // book and post
            {"110,585", "bone", "bone"}, {"172,585", "pale straw", "pale ochre"}, {"141,730", "umber", "rust brown"},
            // water
            {"58,572", "sea green", "slate"}, {"222,585", "sea green", "slate"}, {"76,655", "teal", "dusk violet"}, {"240,655", "teal", "dusk violet"},
            {"325,680", "sea green", "lavender"}, {"73,731", "pale jade", "rose"}, {"217,736", "pale jade", "rose"}, {"347,742", "teal", "dusk violet"}, {"61,828", "deep sea", "night blue"},
            {"130,822", "teal", "slate"}, {"221,822", "deep sea", "plum"}, {"345,822", "deep sea", "night blue"},
            // lettering
            {"150,880", "pale straw", "shell pink"}, {"380,880", "bone", "pale straw"}, {"128,933", "bone", "pale straw"}, {"380,935", "pale straw", "shell pink"}
        };
        List<String[]> all = new ArrayList<>(List.of(pieces));
        for (int i = 0; i < REPEATS; i++) {
            int y = (int) (SPRING + REPEAT * i + REPEAT / 2);
            String[] colours = i % 2 == 0 ? new String[] {"sea green", "dusk violet"} : new String[] {"river blue", "rose"};
            all.add(new String[] {"17," + y, colours[0], colours[1]});
            all.add(new String[] {"463," + y, colours[0], colours[1]});
        }
        for (int i = 0; i < 6; i++) {
            double a = StrictMath.toRadians(10 * i + (i == 5 ? 3 : 5));
            int x = (int) Math.round(463 * StrictMath.cos(a));
            int y = (int) Math.round(SPRING - 463 * StrictMath.sin(a));
            String[] colours = i % 2 == 1 ? new String[] {"sea green", "dusk violet"} : new String[] {"river blue", "rose"};
            all.add(new String[] {x + "," + y, colours[0], colours[1]});
            all.add(new String[] {480 - x + "," + y, colours[0], colours[1]});
        }
        for (String[] p : all) {
            String[] place = p[0].split(",");
            s.glass(Integer.parseInt(place[0]), Integer.parseInt(place[1]), p[1], p[2]);
        }
    }
}
