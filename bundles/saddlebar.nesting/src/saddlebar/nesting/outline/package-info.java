/**
 * Outlines of any kind on sheets and strips: tables of how deep two shapes overlap, and a search that lets shapes overlap and then drives them
 * apart while the strip becomes shorter. Lengths in mm.
 */
package saddlebar.nesting.outline;
