/**
 * W01: the tide runs out. A low sun over the sea, a channel that winds through the flats, a curlew at the water, a redshank on the far
 * bank, reeds; 560 x 840 mm.
 */
final class EbbTide {
    private static final double W = 560;
    private static final double H = 840;

    private final Sheet s = new Sheet("W01 Ebb tide", W, H, Curve.straight(0, 0, W, 0, W, H, 0, H, 0, 0), 0.56);
    private final Curve sun = Curve.circle(185, 204, 40);
    private final Curve halo = Curve.circle(185, 204, 74);
    private final Curve horizon = Curve.through(-6, 303, 130, 298, 290, 297, 430, 300, 566, 303);
    private final Curve hill = Curve.through(318, 305, 328, 290, 352, 279, 388, 277, 430, 275, 480, 262, 524, 258, 566, 266);
    private final Curve shore = Curve.through(-6, 374, 90, 364, 186, 377, 300, 360, 420, 373, 566, 355);
    private final Curve leftBank = Curve.through(165, 362, 146, 402, 118, 438, 116, 476, 152, 508, 204, 538, 232, 580, 220, 628, 168, 674, 104, 724, 64, 780, 46,
            846);
    private final Curve rightBankFar = Curve.through(208, 362, 202, 402, 212, 440, 250, 462, 292, 468, 322, 470);
    private final Curve rightBankNear = Curve.through(390, 646, 364, 674, 330, 708, 288, 748, 258, 798, 246, 846);
    private final EbbTideBirds birds = new EbbTideBirds(s);

    private EbbTide() {
    }

    static Sheet draw() {
        EbbTide window = new EbbTide();
        window.cutSky();
        window.cutSeaAndFlats();
        window.birds.cut();
        window.glaze();
        new EbbTidePaint(window.s, window.birds, window.halo, window.horizon, window.hill, window.shore, window.leftBank, window.rightBankFar,
                window.rightBankNear).paint();
        window.birds.paint();
        return window.s;
    }

    private void cutSky() {
        s.cut(sun);
        s.cut(halo);
        s.cut(-6, 96, 90, 72, 200, 82, 300, 84, 410, 58, 566, 76);
        s.cut(-6, 176, 50, 172, 100, 178, 150, 190);
        s.cut(221, 188, 262, 172, 330, 146, 420, 134, 500, 146, 566, 150);
        s.cut(-6, 246, 50, 252, 100, 244, 148, 222);
        s.cut(219, 222, 262, 236, 340, 226, 440, 206, 520, 214, 566, 226);
        s.cut(180, 170, 167, 131, 146, 92, 118, 46, 106, -6);
        s.cut(230, 144, 262, 96, 306, 46, 322, -6);
        s.cut(404, 140, 424, 96, 466, 44, 474, -6);
        s.cut(390, 136, 376, 176, 384, 218);
        s.cut(188, 240, 194, 274, 186, 300);
        s.cut(300, 234, 296, 262, 306, 292, 304, 302);
        s.cut(hill);
        s.cut(476, 206, 470, 232, 478, 264);
    }

    private void cutSeaAndFlats() {
        s.cut(horizon);
        s.cut(shore);
        s.cut(leftBank);
        s.cut(rightBankFar);
        s.cut(rightBankNear);
        // the sun's road over the sea
        s.cut(146, 292, 138, 322, 152, 352, 165, 374);
        s.cut(228, 292, 240, 322, 224, 352, 208, 374);
        s.cut(-6, 338, 60, 328, 140, 334, 190, 340, 236, 330, 340, 324, 450, 334, 566, 322);
        s.cut(352, 292, 342, 312, 346, 328);
        s.cut(420, 330, 410, 350, 416, 374);
        s.cut(74, 296, 66, 314, 70, 332);
        // across the channel
        s.cut(130, 418, 166, 424, 206, 416);
        s.cut(116, 466, 160, 468, 214, 444);
        // from the far bank through the water to the near bank
        s.cut(-6, 676, 44, 662, 104, 666, 172, 672, 250, 694, 346, 688);
        s.cut(-6, 764, 40, 742, 96, 734, 170, 742, 230, 766, 278, 770);
        s.cut(178, 742, 150, 784, 142, 846);
        // the flats on the left
        s.cut(-6, 434, 50, 424, 124, 430);
        s.cut(-6, 520, 40, 504, 90, 502, 148, 506);
        s.cut(20, 756, 24, 800, 18, 846);
        // the flats on the right
        s.cut(206, 410, 250, 408, 300, 418, 352, 414);
        s.cut(366, 400, 440, 412, 500, 408, 566, 402);
        s.cut(474, 402, 464, 440, 474, 480);
        s.cut(326, 700, 364, 712, 404, 708, 456, 722, 512, 748, 566, 728);
        s.cut(262, 780, 316, 766, 388, 776, 450, 800, 500, 804, 566, 776);
    }

    private void glaze() {
        String[][] pieces = {
            // place, spring tide, neap light
            // sky
            {"40,40", "river blue", "night blue"}, {"230,43", "sky blue", "dusk violet"}, {"360,35", "river blue", "dusk violet"}, {"527,33", "river blue", "night blue"},
            {"88,124", "sky blue", "lavender"}, {"205,110", "pale water", "rose"}, {"300,121", "pale water", "lavender"}, {"499,104", "sky blue", "dusk violet"},
            {"44,212", "pale straw", "rose"}, {"336,186", "pale straw", "coral"}, {"440,171", "pale water", "rose"}, {"419,244", "shell pink", "shell pink"},
            {"495,235", "shell pink", "lavender"}, {"108,271", "shell pink", "coral"}, {"260,267", "pale straw", "shell pink"},
            // sun
            {"185,204", "pale straw", "coral"}, {"135,165", "honey", "honey"}, {"129,213", "amber", "amber"}, {"150,250", "honey", "honey"},
            {"216,252", "amber", "amber"}, {"241,212", "honey", "honey"}, {"206,150", "amber", "amber"},
            // land and sea
            {"521,280", "moss", "plum"}, {"15,317", "teal", "slate"}, {"121,315", "river blue", "dusk violet"}, {"187,319", "honey", "coral"}, {"255,312", "river blue", "dusk violet"},
            {"445,317", "deep sea", "night blue"}, {"45,347", "sea green", "slate"}, {"180,358", "pale straw", "shell pink"}, {"330,350", "teal", "slate"},
            {"480,347", "deep sea", "dusk violet"},
            // channel
            {"174,400", "pale straw", "shell pink"}, {"141,446", "pale water", "rose"}, {"208,493", "sky blue", "lavender"}, {"282,555", "pale water", "shell pink"},
            {"256,653", "sky blue", "rose"}, {"234,729", "river blue", "lavender"}, {"100,798", "teal", "slate"}, {"191,797", "deep sea", "dusk violet"},
            // the flats beyond
            {"101,395", "ochre", "copper"}, {"40,464", "pale ochre", "rose"}, {"305,389", "pale ochre", "copper"}, {"262,438", "ochre", "plum"}, {"520,383", "olive", "plum"},
            {"410,450", "reed green", "slate"}, {"520,440", "sea green", "storm gray"}, {"490,525", "olive", "storm gray"}, {"525,590", "moss", "slate"},
            // the flats on the left
            {"40,560", "umber", "plum"}, {"100,533", "sea green", "storm gray"}, {"180,560", "olive", "slate"}, {"177,630", "ochre", "copper"}, {"23,642", "pale ochre", "rose"},
            {"60,702", "umber", "plum"}, {"40,755", "olive", "slate"}, {"10,796", "moss", "night blue"},
            // the flats on the right
            {"374,687", "ochre", "copper"}, {"351,741", "umber", "rust brown"}, {"318,806", "rust brown", "plum"}, {"450,691", "pale ochre", "rose"}, {"470,755", "olive", "copper"},
            {"440,820", "umber", "rust brown"}, {"541,701", "reed green", "slate"}, {"534,759", "moss", "plum"}, {"524,822", "olive", "slate"},
            // curlew
            {"341,487", "pale ochre", "pale ochre"}, {"355,541", "bone", "shell pink"}, {"410,585", "ochre", "ochre"}, {"454,606", "copper", "copper"}, {"502,637", "umber", "rust brown"},
            {"366,592", "bone", "shell pink"}, {"376,640", "mist white", "bone"}, {"456,660", "pale straw", "shell pink"},
            // redshank
            {"138,573", "copper", "ochre"}, {"90,605", "rust brown", "copper"}, {"130,605", "bone", "bone"}
        };
        for (String[] p : pieces) {
            String[] place = p[0].split(",");
            s.glass(Integer.parseInt(place[0]), Integer.parseInt(place[1]), p[1], p[2]);
        }
    }
}
