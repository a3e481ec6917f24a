package saddlebar.production.kiln;

import java.util.ArrayList;
import java.util.List;

import saddlebar.kiln.paint.FiringOrder;
import saddlebar.kiln.paint.PaintHistory;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;

/**
 * One piece over all its firings.
 *
 * @param label    W01/12
 * @param firings  what it went through, earliest first
 * @param layers   what its layers have gathered
 * @param problems burnt or raw layers, firings in the wrong order; empty if all is well
 */
public record PieceHeat(String label, List<PaintHistory.Fired> firings, List<PaintHistory.Layer> layers, List<Problem> problems) {
    public PieceHeat {
        firings = List.copyOf(firings);
        layers = List.copyOf(layers);
        problems = List.copyOf(problems);
    }

    static PieceHeat of(String label, List<PaintHistory.Fired> firings) {
        PaintHistory history = PaintHistory.of(firings);
        List<Problem> problems = new ArrayList<>(history.cautions().stream().filter(problem -> problem.severity() != Severity.NOTE).toList());
        List<FiringOrder.Step> steps = new ArrayList<>();
        firings.forEach(fired -> fired.newLayers().forEach(paint -> steps.add(new FiringOrder.Step(paint, fired.curve().peakC()))));
        problems.addAll(FiringOrder.check(steps));
        return new PieceHeat(label, firings, history.layers(), problems);
    }

    PieceHeat named(String other) {
        return new PieceHeat(other, firings, layers, problems);
    }
}
