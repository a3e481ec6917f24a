/** Lengths and their units: mm for artwork and glass, um for mesh, px at a stated dpi for the device. Guards of ranges. */
package saddlebar.model.units;
