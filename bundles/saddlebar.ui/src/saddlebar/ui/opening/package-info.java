/** The opening of a window as it is measured, on the screen. */
package saddlebar.ui.opening;
