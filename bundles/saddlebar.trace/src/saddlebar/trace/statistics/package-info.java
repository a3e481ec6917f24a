/** Statistics of flaws in counts: exact tests, odds, many tests at once, strata, control charts, ranks. Plain computation, no clock, no chance. */
package saddlebar.trace.statistics;
