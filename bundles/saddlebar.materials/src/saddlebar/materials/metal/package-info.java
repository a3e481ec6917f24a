/** Foil, solder, came, bars, weight and handling of a panel. */
package saddlebar.materials.metal;
