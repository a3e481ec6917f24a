/** What somebody should look at, gathered from wherever it is found, in one list. */
package saddlebar.ui.problems;
