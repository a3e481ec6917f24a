/**
 * Cutline strokes to checked pieces of glass: noded, closed to faces, numbered, the gap taken off, looked over for what cannot be cut.
 * <p>Way of a cutline: drawn lines in mm -> guard -> ends carried on -> net (all crossings are nodes) -> faces -> pieces (numbers, glass,
 * labels, neighbours) -> problems with places. Front door: {@link saddlebar.cartoon.CartoonMaker}.
 * <p>Lengths in mm, areas in mm2, angles in degrees; x to the right and y down, as drawn. Threads: everything handed out is a value.
 * JTS geometries inside such values can be changed by whoever holds them and must not be: copy one before changing it.
 */
package saddlebar.cartoon;
