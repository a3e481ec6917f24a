import java.util.ArrayList;
import java.util.List;

/** W03: the moon over shallow water, eelgrass in the current, two fish; roundel of 500 mm with a ring of twelve like pieces. */
final class MoonAndEelgrass {
    static final double MIDDLE = 250;
    static final double RING = 26;
    static final int RING_PIECES = 12;

    private final Sheet s = new Sheet("W03 Moon and eelgrass", 500, 500, Curve.circle(MIDDLE, MIDDLE, 250), 0.55);
    private final Seabed bed = new Seabed(s);
    private final Curve moon = Curve.circle(284, 146, 50);
    private final Curve surface = Curve.through(18, 224, 90, 210, 160, 221, 226, 212, 286, 222, 350, 208, 420, 219, 482, 204);

    private MoonAndEelgrass() {
    }

    static Sheet draw() {
        MoonAndEelgrass window = new MoonAndEelgrass();
        window.cutRing();
        window.cutSky();
        window.cutWater();
        window.bed.cut();
        window.glaze();
        new MoonAndEelgrassPaint(window.s, window.bed, window.moon, window.surface).paint();
        return window.s;
    }

    private void cutRing() {
        s.cut(Curve.circle(MIDDLE, MIDDLE, 250 - RING));
        for (int i = 0; i < RING_PIECES; i++) {
            double a = StrictMath.toRadians(360.0 / RING_PIECES * i + 15);
            double c = StrictMath.cos(a);
            double d = StrictMath.sin(a);
            s.cut(MIDDLE + 255 * c, MIDDLE + 255 * d, MIDDLE + 219 * c, MIDDLE + 219 * d);
        }
    }

    private void cutSky() {
        s.cut(moon);
        s.cut(surface);
        s.cut(Curve.arc(284, 146, 84, 120, 414));
        s.cut(240, 146, 196, 148, 150, 136, 90, 138, 38, 158);
        s.cut(256, 108, 224, 90, 180, 86, 132, 99, 96, 121, 52, 116);
        s.cut(286, 100, 290, 64, 276, 40, 276, 20);
        s.cut(318, 112, 346, 93, 384, 93, 412, 112, 441, 118);
        s.cut(330, 160, 366, 166, 412, 154, 462, 162);
        s.cut(284, 192, 288, 208, 286, 226);
    }

    private void cutWater() {
        // from the first fish to both sides, through the grass
        s.cut(166, 328, 140, 334, 84, 326, 32, 336);
        s.cut(276, 319, 306, 328, 350, 320, 400, 330, 470, 318);
        // from the second fish
        s.cut(366, 264, 344, 268, 300, 258, 256, 264);
        s.cut(452, 252, 464, 250, 482, 252);
        s.cut(20, 278, 80, 268, 154, 276);
        s.cut(60, 382, 88, 374, 124, 378);
        s.cut(136, 382, 176, 388, 216, 378);
        s.cut(300, 374, 346, 364, 394, 372);
        s.cut(104, 430, 126, 420, 166, 416, 240, 428, 310, 416, 360, 420, 404, 426);
        s.cut(206, 420, 196, 446, 200, 476);
        s.cut(344, 410, 339, 434, 345, 462);
    }

    private void glaze() {
        String[][] pieces = {
            // sky
            {"284,146", "bone", "pale straw"}, {"269,81", "bone", "honey"}, {"312,85", "pale straw", "coral"}, {"219,129", "pale straw", "coral"}, {"348,135", "bone", "honey"},
            {"227,181", "bone", "honey"}, {"334,190", "pale straw", "coral"}, {"220,55", "night blue", "plum"}, {"340,60", "dusk violet", "dusk violet"},
            {"174,109", "dusk violet", "dusk violet"}, {"395,128", "night blue", "plum"}, {"148,178", "river blue", "rose"}, {"417,186", "dusk violet", "rose"},
            // water, from the left
            {"91,239", "river blue", "lavender"}, {"100,298", "teal", "slate"}, {"78,351", "deep sea", "dusk violet"}, {"100,391", "teal", "plum"},
            {"209,271", "sky blue", "shell pink"}, {"162,361", "sea green", "storm gray"}, {"191,403", "teal", "slate"},
            {"300,239", "pale water", "bone"}, {"281,283", "pale jade", "shell pink"}, {"258,384", "sea green", "lavender"},
            {"382,229", "sky blue", "rose"}, {"365,295", "pale jade", "shell pink"}, {"350,342", "sea green", "lavender"}, {"351,391", "teal", "slate"},
            {"455,233", "river blue", "lavender"}, {"440,297", "teal", "slate"}, {"435,355", "deep sea", "dusk violet"},
            // grass
            {"160,275", "reed green", "olive"}, {"127,345", "moss", "olive"}, {"254,230", "reed green", "ochre"}, {"218,394", "moss", "moss"}, {"357,219", "reed green", "ochre"},
            {"311,300", "olive", "olive"}, {"289,361", "reed green", "moss"}, {"429,222", "reed green", "ochre"}, {"395,310", "olive", "olive"}, {"398,363", "moss", "moss"},
            // fish
            {"189,327", "amber", "copper"}, {"228,322", "honey", "coral"}, {"385,263", "copper", "copper"}, {"416,258", "amber", "honey"},
            // ground
            {"176,439", "pale ochre", "rose"}, {"270,445", "ochre", "copper"}, {"360,438", "pale ochre", "rose"}
        };
        List<String[]> all = new ArrayList<>(List.of(pieces));
        for (int i = 0; i < RING_PIECES; i++) {
            double a = StrictMath.toRadians(30.0 * i);
            all.add(new String[] {Math.round(250 + 237 * StrictMath.cos(a)) + "," + Math.round(250 + 237 * StrictMath.sin(a)), i % 2 == 0 ? "river blue" : "lavender",
                i % 2 == 0 ? "slate" : "rose"});
        }
        for (String[] p : all) {
            String[] place = p[0].split(",");
            s.glass(Integer.parseInt(place[0]), Integer.parseInt(place[1]), p[1], p[2]);
        }
    }
}
