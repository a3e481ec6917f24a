/** Lists of shapes from files: rectangles as CSV, strips of outlines as JSON. What is wrong is told with file and line. */
package saddlebar.nesting.read;
