/** Exact sums, prices by the day, margin, tax, deposits. */
package saddlebar.materials.money;
