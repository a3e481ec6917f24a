/** What can be wrong and how it is told: problems that a person looks at, refusals of input, locked targets. */
package saddlebar.model.problem;
