package saddlebar.kiln.fire;

/**
 * One segment as the simulated kiln ran it.
 *
 * @param index    of the segment
 * @param startS   when it began
 * @param rampEndS when the kiln stood at the target
 * @param endS     when the soak was over
 * @param startC   where the kiln stood when it began
 * @param reached  false if the kiln could not get there
 */
public record SegmentRun(int index, double startS, double rampEndS, double endS, double startC, double reachedC, boolean reached) {
    /** Mean rate of its ramp in K/h, with a sign; 0 if it had none. */
    public double meanRateKPerH() {
        return rampEndS == startS ? 0 : (reachedC - startC) / (rampEndS - startS) * 3600;
    }
}
