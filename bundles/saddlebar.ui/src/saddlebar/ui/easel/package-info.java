/**
 * The Easel on the screen: {@link saddlebar.ui.easel.Viewport} is the arithmetic of zooming and panning, {@link saddlebar.ui.easel.EaselCanvas} the only
 * class that knows a screen. What lies on it and how it looks in the light is {@link saddlebar.production.light}'s.
 */
package saddlebar.ui.easel;
