package saddlebar.stencil.method;

/** A fixed hash of places, where chance must be the same on every run. */
final class Hash {
    private Hash() {
    }

    /** The finaliser of SplitMix64: one to one, so that two places never share a hash. Steele, Lea and Flood, OOPSLA 2014. */
    static long mix(long place) {
        long z = place + 0x9e3779b97f4a7c15L;
        z = (z ^ z >>> 30) * 0xbf58476d1ce4e5b9L;
        z = (z ^ z >>> 27) * 0x94d049bb133111ebL;
        return z ^ z >>> 31;
    }
}
