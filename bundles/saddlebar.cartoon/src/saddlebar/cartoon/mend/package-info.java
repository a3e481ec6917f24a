/**
 * Proposals to mend a cutline that does not close: what would change, where and why, before anybody agrees. Nothing is changed unasked, and the
 * artwork's file never: mended lines are new values, and what was agreed is known again by its key when the artwork is read another time. Lengths in
 * mm. Method: docs/algorithms/mending.md.
 */
package saddlebar.cartoon.mend;
