/** Measures of a screened tone: spectrum, anisotropy, tone error, grain as the eye gets it, and the worst repeat. */
package saddlebar.stencil.quality;
