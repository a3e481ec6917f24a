/** The Glazing bench (metal, weight, bars) and Money on the Desk. Logic stands apart from widgets. */
package saddlebar.ui.glazing;
