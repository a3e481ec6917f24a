package saddlebar.cartoon.opening;

/**
 * One level bar across an opening.
 *
 * @param yMm      place from the top of the outline's page
 * @param leftMm   x where it meets the outline
 * @param rightMm  x where it leaves the outline
 * @param division whether two panels meet on it; else it is tied across one panel
 */
public record SaddleBar(double yMm, double leftMm, double rightMm, boolean division) {
    /** Between the edges of the outline, without what is let into the wall. */
    public double clearMm() {
        return rightMm - leftMm;
    }
}
