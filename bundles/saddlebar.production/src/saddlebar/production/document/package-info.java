/** Gathers what documents speak of, from the model, the records and the other parts of the house, and has them written. */
package saddlebar.production.document;
