package saddlebar.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

import saddlebar.cartoon.Cartoon;
import saddlebar.cartoon.NarrowestWidth;
import saddlebar.cartoon.Relief;
import saddlebar.model.problem.Problem;

/** The JSON document of {@code pieces}; field names are part of the contract with scripts. */
record PiecesAnswer(PanelSize panel, List<PieceRow> pieces, List<ProblemRow> problems, Net euler, List<ReliefRow> reliefs,
        List<JointRow> joints, List<MendRow> mends) {
    PiecesAnswer(Cartoon cartoon, List<Problem> problems, List<MendRow> mends) {
        this(new PanelSize(cartoon.panelAreaMm2(), cartoon.widthMm(), cartoon.heightMm(), cartoon.panelPerimeterMm()),
                cartoon.pieces().stream()
                        .map(p -> new PieceRow(p.number(), p.areaMm2(), p.netAreaMm2(), p.perimeterMm(), List.of(p.label().xMm(), p.label().yMm()),
                                p.inradiusMm(), p.neighbours(), p.problems(), NarrowestWidth.of(p.face()).widthMm()))
                        .toList(),
                problems.stream().map(ProblemRow::of).toList(),
                new Net(cartoon.euler().v(), cartoon.euler().e(), cartoon.euler().f(), cartoon.euler().c()),
                cartoon.reliefs().stream().map(ReliefRow::of).toList(),
                cartoon.joints().stream()
                        .map(joint -> new JointRow(joint.join().kind().name().toLowerCase(Locale.ROOT), joint.join().gapMm(), joint.lengthMm())).toList(),
                mends);
    }

    record PanelSize(double areaMm2, double widthMm, double heightMm, double perimeterMm) {
    }

    record PieceRow(int number, double areaMm2, double netAreaMm2, double perimeterMm, List<Double> label, double inradiusMm, List<Integer> neighbours,
            List<String> problems, double narrowestMm) {
    }

    record Net(long v, long e, long f, long c) {
    }

    /** A proposal against a deep inside curve; each line as x, y, x, y in mm. */
    record ReliefRow(int piece, String kind, List<List<Double>> lines, String message) {
        static ReliefRow of(Relief relief) {
            return new ReliefRow(relief.piece(), relief.kind().key(), relief.lines().stream().map(line -> Arrays.stream(line.xy()).boxed().toList()).toList(),
                    relief.message());
        }
    }

    /** Inner joints of one kind. */
    record JointRow(String join, double gapMm, double lengthMm) {
    }
}
