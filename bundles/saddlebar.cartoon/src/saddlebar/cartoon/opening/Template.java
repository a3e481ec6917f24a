package saddlebar.cartoon.opening;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.Problem;

/**
 * The outline drawn through a survey's points.
 *
 * @param outline       closed, in straight steps
 * @param misclosureMm  distance between the first point and its second reading at the end of the round; empty if it was not read twice
 * @param problems      worst first, each with its place
 */
public record Template(DrawnLine outline, OptionalDouble misclosureMm, List<Problem> problems) {
    public Template {
        Objects.requireNonNull(outline, "outline");
        Objects.requireNonNull(misclosureMm, "misclosureMm");
        problems = List.copyOf(problems);
    }
}
