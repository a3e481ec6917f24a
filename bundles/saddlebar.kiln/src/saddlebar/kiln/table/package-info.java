/** The studio's tables, as far as the kiln needs them. */
package saddlebar.kiln.table;
