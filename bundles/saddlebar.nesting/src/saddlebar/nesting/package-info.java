/**
 * Shapes placed on sheets or along a strip, with a gap between them. Pure geometry: it knows no stencil, no glass and no kiln.
 *
 * <p>Way of a job: {@link saddlebar.nesting.NestItem}s and {@link saddlebar.nesting.SheetArea}s (or a strip's height) go into
 * {@link saddlebar.nesting.SheetNesting} or {@link saddlebar.nesting.StripNesting}; every better layout found on the way is handed to the
 * caller, the best is returned. Each has passed {@link saddlebar.nesting.LayoutCheck}, which shares no code with the search.
 *
 * <p>Lengths in mm, x to the right and y down from the top left of the usable area, angles in degrees from x towards y. Method and sources:
 * docs/algorithms/nesting.md. Threads: all values are immutable; a search belongs to the thread that called it. With
 * {@link saddlebar.nesting.Effort#rounds(int)} the result depends on nothing but the input.
 */
package saddlebar.nesting;
