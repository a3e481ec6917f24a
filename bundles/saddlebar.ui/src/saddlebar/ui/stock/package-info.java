/** The shelf of glass: sheets and off-cuts, their flaws, and the pieces of the commission laid on them. */
package saddlebar.ui.stock;
