/** Heat work, and what it does to the paints on a piece over all its firings. */
package saddlebar.kiln.paint;
