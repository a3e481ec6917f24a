/** The print bench: frames on the rack, what is to be done today, mixes, and what was pulled, fired or found. */
package saddlebar.ui.print;
