/** What a person decides about pieces: numbers, groups, locks, notes, and mends of the lines that make them. Changes the model; the caller saves. */
package saddlebar.production.pieces;
