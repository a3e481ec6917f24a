/** Thermocouples on ITS-90. */
package saddlebar.kiln.couple;
