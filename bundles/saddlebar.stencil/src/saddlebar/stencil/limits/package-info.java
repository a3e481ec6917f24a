/** What is too fine to print or to hold, counted on the bits; no bit is changed. Lengths in px of the device. */
package saddlebar.stencil.limits;
