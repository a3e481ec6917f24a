/**
 * Pages of PDF files as drawings. The library (Apache PDFBox) reads the file and runs the page's operators; what they draw is kept as shapes,
 * ramps, tiles and pictures of {@code saddlebar.artwork.drawing}, which paints it in strips.
 */
package saddlebar.artwork.pdf;
