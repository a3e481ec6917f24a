package saddlebar.production.check;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.problem.Severity;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.RecordReading;
import saddlebar.model.work.Work;
import saddlebar.production.facts.CommissionFacts;
import saddlebar.production.facts.CommissionFacts.PlacedPanel;
import saddlebar.production.facts.FactsReader;
import saddlebar.production.facts.LayerFacts;
import saddlebar.production.make.LongPieces;
import saddlebar.production.make.Making;
import saddlebar.production.make.Outlines;
import saddlebar.production.opening.OpeningBook;
import saddlebar.stencil.ScreeningMethods;

/** Finds every problem of a commission: in the model, the artwork, the cutline, the recipes and the records. */
@Component(service = Checking.class)
public final class Checking {
    /** Units of work that {@link #check} tells. */
    public static final int WORK_UNITS = 100;

    private final Making making;
    private final ScreeningMethods methods;

    @Activate
    public Checking(@Reference Making making, @Reference ScreeningMethods methods) {
        this.making = making;
        this.methods = methods;
    }

    /** @return worst first */
    public List<Problem> check(CommissionFolder folder, Work work) throws IOException {
        CommissionFacts facts = FactsReader.read(folder.commission(), folder.path(), List.of());
        Set<Problem> problems = new LinkedHashSet<>(facts.problems());
        List<PlacedPanel> panels = facts.panels().toList();
        Work ours = work.part(WORK_UNITS, Math.max(1, 100L * panels.size()));
        for (PlacedPanel panel : panels) {
            recipes(panel, problems);
            if (panel.panel().art().isPresent() && !panel.panel().cutlineLayer().isEmpty()) {
                try {
                    problems.addAll(making.problemsOf(panel, ours));
                } catch (Refusal refusal) {
                    problems.add(Problem.of("artwork-refused", Severity.ERROR, panel.label(), refusal.getMessage()));
                }
            }
        }
        folder.windows().forEach(window -> problems.addAll(OpeningBook.problems(window)));
        folder.windows().forEach(window -> window.getPanels().forEach(panel -> longPieces(window, panel, problems)));
        try (RecordReading records = folder.records().read()) {
            records.forEach(record -> {}, Work.UNWATCHED);
            problems.addAll(records.problems());
        }
        List<Problem> sorted = new ArrayList<>(problems);
        sorted.sort(Problem.WORST_FIRST);
        return sorted;
    }

    /** Of the pieces on which stencils print, as last made. */
    private static void longPieces(Window window, Panel panel, Set<Problem> problems) {
        Set<Piece> painted = new LinkedHashSet<>();
        panel.getLayers().forEach(layer -> layer.getStencils().stream().filter(stencil -> !stencil.isRetired())
                .forEach(stencil -> stencil.getPieces().forEach(entry -> painted.add(entry.getPiece()))));
        String name = window.getPanels().size() == 1 || panel.getName() == null || panel.getName().isBlank()
                ? window.getName()
                : window.getName() + " " + panel.getName();
        painted.stream().filter(piece -> piece != null && !piece.isRetired() && piece.getNet() != null)
                .forEach(piece -> LongPieces.caution(name + "/" + piece.getNumber(), Outlines.polygon(piece.getNet())).ifPresent(problems::add));
    }

    private void recipes(PlacedPanel panel, Set<Problem> problems) {
        for (LayerFacts layer : panel.panel().layers()) {
            String where = panel.label() + " " + layer.name();
            try {
                for (Problem advice : methods.method(layer.recipe().screening().method()).advice(layer.recipe().screening())) {
                    problems.add(new Problem(advice.code(), advice.severity(), where, advice.at(), advice.message()));
                }
            } catch (Refusal unknown) {
                problems.add(Problem.of("bad-recipe", Severity.ERROR, where, unknown.getMessage()));
            }
        }
    }
}
