package saddlebar.cli;

import java.util.List;

import saddlebar.model.problem.Problem;

/** A problem in JSON; {@code at} is null where there is no place. */
record ProblemRow(String code, String severity, String where, List<Double> at, String message) {
    static ProblemRow of(Problem problem) {
        return new ProblemRow(problem.code(), problem.severity().key(), problem.where(), problem.at().map(at -> List.of(at.xMm(), at.yMm())).orElse(null),
                problem.message());
    }
}
