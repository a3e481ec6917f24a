/** Step wedges: the sheet to print, and reading the fired wedge, by instrument or from a photograph on a light box. */
package saddlebar.stencil.wedge;
