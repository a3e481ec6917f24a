/** The sources of cost, the estimate, the quote, and what it came to. */
package saddlebar.materials.cost;
