/** From the drawn gray to the share of glass that paint covers: stretch, measured calibration, end limits. Coverage 0 to 1. */
package saddlebar.stencil.tone;
