package saddlebar.kiln.fire;

/** The two lumps of a kiln while they are stepped, with a perfect controller: as much power as it takes, never more than there is. */
final class KilnState {
    private final Kiln kiln;
    private final double roomC;
    private double chamberC;
    private double liningC;
    private double powerW;
    private double electricJ;
    private double lostJ;

    KilnState(Kiln kiln, double startC, double roomC) {
        this.kiln = kiln;
        this.roomC = roomC;
        this.chamberC = startC;
        this.liningC = startC;
    }

    /**
     * One implicit step towards a temperature.
     *
     * @param loadW heat that the load takes, W
     */
    void advance(double seconds, double wishC, double loadW) {
        double chamber = kiln.chamberJPerK() / seconds;
        double lining = kiln.liningJPerK() / seconds;
        double inner = kiln.toLiningWPerK();
        double outer = kiln.toRoomWPerK();
        // lining(new) = p + r * chamber(new)
        double sum = lining + inner + outer;
        double p = (lining * liningC + outer * roomC) / sum;
        double r = inner / sum;
        double needed = chamber * (wishC - chamberC) + inner * (wishC - p - r * wishC) + loadW;
        powerW = Math.max(0, Math.min(kiln.powerW(), needed));
        chamberC = powerW == needed ? wishC : (chamber * chamberC + powerW - loadW + inner * p) / (chamber + inner * (1 - r));
        liningC = p + r * chamberC;
        electricJ += powerW * seconds;
        lostJ += outer * (liningC - roomC) * seconds;
    }

    /** The load, W, with which the chamber comes to a temperature by itself in one implicit step, with no power at all; below 0 if the load must give. */
    double idleLoadW(double seconds, double wishC) {
        double lining = kiln.liningJPerK() / seconds;
        double inner = kiln.toLiningWPerK();
        double sum = lining + inner + kiln.toRoomWPerK();
        double p = (lining * liningC + kiln.toRoomWPerK() * roomC) / sum;
        return -(kiln.chamberJPerK() / seconds * (wishC - chamberC) + inner * (wishC - p - inner / sum * wishC));
    }

    double chamberC() {
        return chamberC;
    }

    double liningC() {
        return liningC;
    }

    double powerW() {
        return powerW;
    }

    double electricJ() {
        return electricJ;
    }

    double lostJ() {
        return lostJ;
    }
}
