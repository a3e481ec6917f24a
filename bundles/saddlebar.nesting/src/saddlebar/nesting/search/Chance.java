package saddlebar.nesting.search;

/**
 * Numbers that look drawn by lot but follow from a seed alone, the same on every machine.
 *
 * <p>Source: Steele, G. L., Lea, D., Flood, C. H. (2014). Fast splittable pseudorandom number generators. OOPSLA, 453-472 (SplitMix64).
 */
public final class Chance {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;
    private long state;

    public Chance(long seed) {
        state = seed;
    }

    public long next() {
        state += GOLDEN;
        long z = state;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /** 0 to {@code bound - 1}. */
    public int below(int bound) {
        return (int) (((next() >>> 32) * bound) >>> 32);
    }

    /** At least 0, less than 1. */
    public double share() {
        return (next() >>> 11) * 0x1.0p-53;
    }

    public double between(double low, double high) {
        return low + share() * (high - low);
    }
}
