/** Which screen, mix, firing or setting goes with flaws: from counted work to a ranked list with its reasons. */
package saddlebar.trace.suspect;
