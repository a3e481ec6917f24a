/** Glass and colourways on the screen: which glass pieces are cut from, in which light they are looked at, and two choices side by side. */
package saddlebar.ui.colourway;
