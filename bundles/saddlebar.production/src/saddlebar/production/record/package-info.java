/** What was done at the bench, told by a person or read from an old notebook, entered into the making record. */
package saddlebar.production.record;
