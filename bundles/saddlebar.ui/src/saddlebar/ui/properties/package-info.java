/** What is known of the chosen thing, row by row; what may be changed can be changed there. */
package saddlebar.ui.properties;
