/** Separated text files as loggers and controllers write them. */
package saddlebar.kiln.read;
