package saddlebar.kiln.fire;

import saddlebar.model.units.Require;

/**
 * A kiln in two lumps: the chamber with elements, air and the skin of the lining, whose temperature its thermocouple shows, and the lining behind
 * it, which loses heat to the room. The shape is ours; the five figures are worked out from a maker's table ({@link #fromTable}) or learnt from logs.
 *
 * @param name         what it is called
 * @param maxC         highest temperature it is made for
 * @param powerW       elements at full
 * @param chamberJPerK heat that the chamber takes up a K, without load
 * @param liningJPerK  heat that the lining takes up a K
 * @param toLiningWPerK conductance from chamber to lining
 * @param toRoomWPerK  conductance from lining to room
 * @param shelfM2      area of all its shelves
 */
public record Kiln(String name, double maxC, double powerW, double chamberJPerK, double liningJPerK, double toLiningWPerK, double toRoomWPerK,
        double shelfM2) {
    /** Where the table's natural fall is taken to hold. */
    private static final double FALL_AT_C = 500;
    private static final double HOLD_SHARE = 0.55;
    /** The chamber's side of the lining conducts so many times better than the whole: studio setting. */
    private static final double INNER_SHARE = 4;

    public Kiln {
        Require.text("name", name);
        Require.within("maxC", maxC, 300, 1400);
        Require.within("powerW", powerW, 100, 200_000);
        Require.within("chamberJPerK", chamberJPerK, 100, 1e8);
        Require.within("liningJPerK", liningJPerK, 100, 1e9);
        Require.within("toLiningWPerK", toLiningWPerK, 1e-3, 1e5);
        Require.within("toRoomWPerK", toRoomWPerK, 1e-3, 1e5);
        Require.within("shelfM2", shelfM2, 0.01, 100);
    }

    /**
     * From what a table says: at the highest temperature 55 % of the power make good the loss (studio setting); cold and empty but for a shelf it climbs at
     * the highest rate; from 500 degC it falls by itself at the natural rate. A start until a log has been learnt.
     */
    public static Kiln fromTable(String name, double shelfM2, double maxC, double maxRateKPerH, double naturalFallKPerH, double powerKw) {
        double powerW = powerKw * 1000;
        double through = HOLD_SHARE * powerW / (maxC - 20);
        double cold = powerW / (maxRateKPerH / 3600);
        double toRoom = through * INNER_SHARE / (INNER_SHARE - 1);
        double all = toRoom * (FALL_AT_C - 20) / (naturalFallKPerH / 3600); // without power the lining soon is as hot as the chamber
        double shelf = shelfM2 * Shelf.USUAL.heatJPerM2K();
        double chamber = Math.max(0.25 * cold, cold - shelf);
        double lining = Math.max(0.25 * cold, all - cold);
        return new Kiln(name, maxC, powerW, chamber, lining, INNER_SHARE * through, toRoom, shelfM2);
    }

    /** A small studio kiln of 420 x 420 mm, 3.2 kW: start values of the studio's table. */
    public static Kiln small() {
        return fromTable("small kiln", 0.42 * 0.42, 900, 450, 120, 3.2);
    }

    /** Loss to the room in W at a steady temperature. */
    public double steadyLossW(double degC, double roomC) {
        return (degC - roomC) / (1 / toLiningWPerK + 1 / toRoomWPerK);
    }

    /**
     * The same kiln without the heat of what lies in it: what is learnt from logs holds the usual load, and a simulation brings a load of its own. A quarter of
     * the chamber stays at least, as with {@link #fromTable}.
     */
    public Kiln withoutLoad(Shelf shelf) {
        double chamber = Math.max(0.25 * chamberJPerK, chamberJPerK - shelfM2 * shelf.heatJPerM2K());
        return new Kiln(name, maxC, powerW, chamber, liningJPerK, toLiningWPerK, toRoomWPerK, shelfM2);
    }

    public Kiln named(String other) {
        return new Kiln(other, maxC, powerW, chamberJPerK, liningJPerK, toLiningWPerK, toRoomWPerK, shelfM2);
    }

    /** The same kiln with weaker or stronger elements: they age. */
    public Kiln withPowerW(double watts) {
        return new Kiln(name, maxC, watts, chamberJPerK, liningJPerK, toLiningWPerK, toRoomWPerK, shelfM2);
    }
}
