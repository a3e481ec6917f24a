/**
 * Pictures of pixels: PNG, JPEG and TIFF with their resolution, read in rows so that a large scan is never whole in memory. The head of a
 * file is judged before anything is decoded.
 */
package saddlebar.artwork.raster;
