/**
 * The desktop: an Eclipse workbench. {@link saddlebar.ui.StudioApplication} starts it, {@link saddlebar.ui.StudioAdvisor} sets it up. What it shows
 * comes from the commission on the desk ({@code .desk}); the benches and the Easel are in {@code .bench}, the painting of glass, which knows no
 * workbench, in {@code .easel}. Nothing here computes what a commission needs: that is done by the bundles below.
 */
package saddlebar.ui;
