/** The Quality part of the Screen bench: how even the tones of a recipe are. */
package saddlebar.ui.quality;
