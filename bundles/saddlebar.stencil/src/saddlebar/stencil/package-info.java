/** . */
package saddlebar.stencil;
