/** Advice on a schedule, each with its reason in figures, and the cautions that go with a kiln. */
package saddlebar.kiln.advice;
