/** Pieces laid on the studio's sheets of glass, sheet by sheet, around flaws and along the grain; what is left over goes back on the shelf. */
package saddlebar.production.stock;
