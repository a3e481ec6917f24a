package saddlebar.materials.metal;

import saddlebar.model.units.Require;

/** So many pieces of one length, in hundredths of a mm so that sums are exact. */
public record CutOrder(long lengthHmm, int count) {
    public CutOrder {
        if (lengthHmm < 1 || lengthHmm > 1_000_000_000L) {
            throw new IllegalArgumentException("lengthHmm must be 1 to 1000000000 but is " + lengthHmm);
        }
        Require.within("count", count, 1, 1_000_000);
    }

    /** Rounded up to the next hundredth. */
    public static CutOrder ofMm(double lengthMm, int count) {
        return new CutOrder((long) Math.ceil(lengthMm * 100 - 1e-6), count);
    }
}
