/**
 * What making needs to know of a commission, as immutable values: read from the model once, on the thread that owns it, and then used by many. Their
 * {@code toString} is what content keys are made of, so every value that changes a made file must be in them and nothing else.
 */
package saddlebar.production.facts;
