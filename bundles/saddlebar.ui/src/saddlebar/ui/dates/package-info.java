/** What can be done next, and when what is due. */
package saddlebar.ui.dates;
