/**
 * A drawing as an immutable list of things to paint, in mm, whoever read it; and what is made of it: gray in strips, pictures for screens,
 * flattened lines, coloured areas. Knows no file format.
 */
package saddlebar.artwork.drawing;
