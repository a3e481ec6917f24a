/**
 * SVG by many hands. Way of a file: bytes -> {@code SvgParser} (safe XML, lines remembered) -> tidied document (what cannot be drawn is
 * taken out and told) -> Batik's graphics tree -> our drawing in mm. Batik is not seen outside this package.
 */
package saddlebar.artwork.svg;
