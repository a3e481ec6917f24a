package saddlebar.cartoon.mend;

import saddlebar.model.units.Require;

/**
 * How far mends may reach. All are studio settings without a source.
 *
 * @param snapMm    free ends no further apart are moved together, 0 to 20
 * @param gapMm     free ends that look at each other are joined across this, 0 to 50
 * @param extendMm  a free end is carried on so far, 0 to 50
 * @param trimMm    an end is cut back where it runs past a crossing by no more, 0 to 50
 * @param doubledMm a line that lies so near to another is the same line, 0.001 to 0.05: what then ends beside the other is still carried on to it
 *                  when pieces are made
 * @param metMm     an end so near to a line has met it, 0.001 to 1: pieces are made of it without mending
 * @param dangleMm  an end that runs past a crossing by less is cut off when pieces are made, without mending, 0 to 10
 */
public record MendSettings(double snapMm, double gapMm, double extendMm, double trimMm, double doubledMm, double metMm, double dangleMm) {
    private static final MendSettings DEFAULTS = new MendSettings(1, 5, 5, 5, 0.04, 0.05, 0.5);

    public MendSettings {
        Require.within("snapMm", snapMm, 0, 20);
        Require.within("gapMm", gapMm, 0, 50);
        Require.within("extendMm", extendMm, 0, 50);
        Require.within("trimMm", trimMm, 0, 50);
        Require.within("doubledMm", doubledMm, 0.001, 0.05);
        Require.within("metMm", metMm, 0.001, 1);
        Require.within("dangleMm", dangleMm, 0, 10);
    }

    public static MendSettings defaults() {
        return DEFAULTS;
    }

    public MendSettings withReach(double snap, double gap, double extend, double trim) {
        return new MendSettings(snap, gap, extend, trim, doubledMm, metMm, dangleMm);
    }

    double farthestMm() {
        return Math.max(Math.max(snapMm, gapMm), Math.max(extendMm, trimMm));
    }
}
