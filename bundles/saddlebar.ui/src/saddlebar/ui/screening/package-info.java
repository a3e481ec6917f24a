/** The Screen bench: how a layer becomes dots, on what mesh, in what tones, on which sheets. */
package saddlebar.ui.screening;
