/**
 * A window as it looks with light behind it, without a screen. {@link saddlebar.production.light.WindowSketch} is taken from the model on the thread that
 * owns it, quickly and whole; {@link saddlebar.production.light.SceneReader} reads the artwork after it on any thread;
 * {@link saddlebar.production.light.EaselScene} is what comes of it, plain data; {@link saddlebar.production.light.EaselPainter} makes pictures of it in
 * memory, on any thread.
 */
package saddlebar.production.light;
