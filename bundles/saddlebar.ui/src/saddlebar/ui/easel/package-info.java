/**
 * The Easel: a window as it looks with light behind it. {@link saddlebar.ui.easel.EaselScene} is what lies on it, plain data;
 * {@link saddlebar.ui.easel.Viewport} the arithmetic of zooming and panning; {@link saddlebar.ui.easel.EaselPainter} makes pictures of both in
 * memory, on any thread; {@link saddlebar.ui.easel.EaselCanvas} is the only class that knows a screen.
 */
package saddlebar.ui.easel;
