package saddlebar.cartoon.opening;

/**
 * One panel of an opening, from division bar to division bar.
 *
 * @param topMm       y of its top
 * @param bottomMm    y of its bottom
 * @param widthMm     at its widest
 * @param areaMm2     of its outline
 * @param perimeterMm of its outline
 */
public record StackedPanel(double topMm, double bottomMm, double widthMm, double areaMm2, double perimeterMm) {
}
