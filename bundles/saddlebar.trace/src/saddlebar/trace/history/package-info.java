/** From the lines of the making record to units of work that can be counted. */
package saddlebar.trace.history;
