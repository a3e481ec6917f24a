/** Tracing over a commission and the studio that it shares: what the records tell, beside what the model says today. */
package saddlebar.production.trace;
