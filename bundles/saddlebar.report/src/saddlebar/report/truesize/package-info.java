/** Drawings at true size on paper: cut apart into pages that are laid together again, or on a roll. Millimetres, x right, y down. */
package saddlebar.report.truesize;
