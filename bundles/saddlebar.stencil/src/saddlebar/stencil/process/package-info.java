/** From paint to toner: polarity and mirror, by the process, the side of the mesh and the painted face. */
package saddlebar.stencil.process;
