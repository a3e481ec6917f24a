/** Taking artwork into a commission: the file, the roles of its layers, its pieces, and the glass of its colourways. */
package saddlebar.production.bring;
