/**
 * Screening, limits, processes and the writing of stencils and sheets.
 * <p>Way of a stencil: bands of gray -> tone -> {@link saddlebar.stencil.BitBands bits} (1 = paint prints) -> limits -> process (polarity,
 * mirror) -> sheet -> writers. Lengths in mm, device lengths in px at a stated dpi, angles in degrees from x towards y.
 */
package saddlebar.stencil;
