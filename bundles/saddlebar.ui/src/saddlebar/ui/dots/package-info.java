/** The dots of a made stencil under a magnifier, with the mesh laid over them; painting knows no workbench. */
package saddlebar.ui.dots;
