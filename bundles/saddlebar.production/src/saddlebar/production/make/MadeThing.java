package saddlebar.production.make;

/**
 * One file that was made now.
 *
 * @param what    pieces, stencil, sheet, cutting list or making record
 * @param file    path within the commission's folder
 * @param sha256  of its bytes
 * @param seconds how long it took
 */
public record MadeThing(String what, String file, String sha256, double seconds) {
}
