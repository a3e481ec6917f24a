/**
 * Sheets: stencils put together with what a person at the press needs - label, numbers, up-arrows, register marks, a 100 mm rule and the reading
 * mark - and the plan of what must be taped. All places in the toner view: the sheet as it lies with its toner towards the reader.
 */
package saddlebar.stencil.sheet;
