/**
 * The hole in the wall that a window is made for: its shape (arches, roundels, foils), what a survey of it says (sides and diagonals, points of a
 * template), how large the panel is then, and how it is divided by bars. Lengths in mm, places x to the right and y down from the top left of the
 * opening, angles in degrees and turning x towards y.
 * <p>Bars, panel sizes and fixing told here are rules of thumb of studios, see {@link saddlebar.cartoon.opening.BarRule#CAUTION}. Methods and
 * sources: docs/algorithms/openings.md.
 */
package saddlebar.cartoon.opening;
