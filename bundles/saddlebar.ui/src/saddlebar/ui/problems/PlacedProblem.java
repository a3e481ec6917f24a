package saddlebar.ui.problems;

import saddlebar.model.problem.Problem;

/** A problem of a window, as it is chosen in a list. */
public record PlacedProblem(String windowName, Problem problem) {
}
