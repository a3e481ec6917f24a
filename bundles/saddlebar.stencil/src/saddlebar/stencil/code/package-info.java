/**
 * Coding and files of 1-bit pictures: ITU-T T.6 both ways, TIFF 6.0, PDF and PNG. In every file a 1 of the {@link saddlebar.stencil.BitBands
 * bits} is toner and shows black.
 * <p>Writers stream: they hold bands, never the sheet; they close the bits they were given; they tell one unit of work a row; they read back
 * what they wrote and compare it before the file becomes visible. A target that exists without leave to replace it, or cannot be written, is a
 * {@link saddlebar.model.problem.LockedException}; nothing is left behind. Readers refuse what they cannot read with the file's name.
 */
package saddlebar.stencil.code;
