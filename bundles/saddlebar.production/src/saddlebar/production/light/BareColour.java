package saddlebar.production.light;

/**
 * The colour of a bare glass in a light, for a swatch.
 *
 * @param rgb        0xRRGGBB
 * @param outOfGamut whether the glass is stronger than that
 */
public record BareColour(int rgb, boolean outOfGamut) {
}
