package saddlebar.trace.statistics;

/**
 * Whether flaws become more or fewer along ordered levels (pull number, age of a mesh): Cochran (Biometrics 10, 1954) and Armitage
 * (Biometrics 11, 1955).
 *
 * @param slope change of the share of flaws for one unit of the score
 * @param z     standardised; above 0 where flaws grow with the score
 * @param p     two-sided chance if there were no trend; 1 where nothing varies
 */
public record TrendTest(double slope, double z, double p) {
    /**
     * @param scores of each level, in any unit
     * @param bad    flawed of each level
     * @param n      all of each level, at least bad
     */
    public static TrendTest of(double[] scores, long[] bad, long[] n) {
        if (scores.length != bad.length || scores.length != n.length) {
            throw new IllegalArgumentException("as many scores as counts are needed: " + scores.length + " " + bad.length + " " + n.length);
        }
        double total = 0;
        double flawed = 0;
        double scoreSum = 0;
        for (int i = 0; i < n.length; i++) {
            if (bad[i] < 0 || bad[i] > n[i]) {
                throw new IllegalArgumentException("level " + i + " has " + bad[i] + " of " + n[i]);
            }
            total += n[i];
            flawed += bad[i];
            scoreSum += scores[i] * n[i];
        }
        double share = flawed / total;
        double mean = scoreSum / total;
        double together = 0;
        double spread = 0;
        for (int i = 0; i < n.length; i++) {
            together += (scores[i] - mean) * (bad[i] - n[i] * share);
            spread += n[i] * (scores[i] - mean) * (scores[i] - mean);
        }
        double variance = share * (1 - share) * spread;
        if (!(variance > 0)) {
            return new TrendTest(0, 0, 1);
        }
        double z = together / Math.sqrt(variance);
        return new TrendTest(together / spread, z, Tail.chiSquare(z * z, 1));
    }
}
