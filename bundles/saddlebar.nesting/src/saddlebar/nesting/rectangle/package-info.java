/** Rectangles with sides along x and y, in whole steps of a fine grid, each already larger by the gap. */
package saddlebar.nesting.rectangle;
