/** The Tone part of the Screen bench: wedges printed and read, calibrations kept, a layer's curve drawn by hand. */
package saddlebar.ui.tone;
