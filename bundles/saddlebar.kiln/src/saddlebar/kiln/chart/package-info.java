/** A firing as a drawing. */
package saddlebar.kiln.chart;
