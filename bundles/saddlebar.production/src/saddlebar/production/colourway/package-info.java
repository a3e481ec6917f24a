/**
 * Colourways: which glass each piece of a window is cut from. {@link saddlebar.production.colourway.Colourways} changes them,
 * {@link saddlebar.production.colourway.ColourwayApproval} freezes one, {@link saddlebar.production.colourway.ColourwayComparison} sets two side by side,
 * {@link saddlebar.production.colourway.Vidimus} is the picture that is shown to the client.
 */
package saddlebar.production.colourway;
