/** The shortest schedule within limits; what a kiln can do, learnt from its logs. */
package saddlebar.kiln.search;
