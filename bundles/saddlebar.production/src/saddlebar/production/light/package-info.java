/**
 * From the commission to what lies on the Easel, in two steps: {@link saddlebar.ui.scene.WindowSketch} is taken from the model on the thread that
 * owns it, quickly and whole; {@link saddlebar.ui.scene.SceneReader} reads the artwork after it on any thread, as long as that takes.
 */
package saddlebar.ui.scene;
