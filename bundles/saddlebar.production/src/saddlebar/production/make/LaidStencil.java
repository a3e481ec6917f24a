package saddlebar.production.make;

/**
 * A stencil's place on a sheet, in mm from the sheet's top left in the toner view.
 *
 * @param stencil      what lies there
 * @param xMm          left of its place, as turned
 * @param yMm          top of its place, as turned
 * @param quarterTurns of x towards y
 */
public record LaidStencil(PlannedLayerStencil stencil, double xMm, double yMm, int quarterTurns) {
}
