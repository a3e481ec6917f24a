/** What lay where, and the cold and hot places of a shelf. */
package saddlebar.kiln.shelf;
