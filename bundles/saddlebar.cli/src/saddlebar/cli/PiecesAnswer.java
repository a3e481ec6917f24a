package saddlebar.cli;

import java.util.List;

import saddlebar.cartoon.Cartoon;
import saddlebar.model.problem.Problem;

/** The JSON document of {@code pieces}; field names are part of the contract with scripts. */
record PiecesAnswer(PanelSize panel, List<PieceRow> pieces, List<ProblemRow> problems, Net euler) {
    PiecesAnswer(Cartoon cartoon, List<Problem> problems) {
        this(new PanelSize(cartoon.panelAreaMm2(), cartoon.widthMm(), cartoon.heightMm(), cartoon.panelPerimeterMm()),
                cartoon.pieces().stream()
                        .map(p -> new PieceRow(p.number(), p.areaMm2(), p.netAreaMm2(), p.perimeterMm(), List.of(p.label().xMm(), p.label().yMm()),
                                p.inradiusMm(), p.neighbours(), p.problems()))
                        .toList(),
                problems.stream().map(ProblemRow::of).toList(),
                new Net(cartoon.euler().v(), cartoon.euler().e(), cartoon.euler().f(), cartoon.euler().c()));
    }

    record PanelSize(double areaMm2, double widthMm, double heightMm, double perimeterMm) {
    }

    record PieceRow(int number, double areaMm2, double netAreaMm2, double perimeterMm, List<Double> label, double inradiusMm, List<Integer> neighbours,
            List<String> problems) {
    }

    record Net(long v, long e, long f, long c) {
    }
}
