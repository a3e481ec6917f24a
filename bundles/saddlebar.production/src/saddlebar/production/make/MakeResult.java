package saddlebar.production.make;

import java.util.List;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;

/**
 * What a making brought about. The files are there; {@link MakeBook} enters them in the model and the records.
 *
 * @param made     files made now, in the order of the work
 * @param kept     files that were still good
 * @param problems worst first
 * @param pieces   pieces of every panel that has some
 * @param stencils all stencils of the windows that were wanted
 * @param sheets   all sheets that are complete
 * @param lists    cutting lists and the making record
 * @param index    what lies under {@code made/}
 */
public record MakeResult(List<MadeThing> made, int kept, List<Problem> problems, List<PanelPieces> pieces, List<MadeStencil> stencils, List<MadeSheet> sheets,
        List<MadeList> lists, MadeIndex index) {
    public MakeResult {
        made = List.copyOf(made);
        problems = problems.stream().sorted(Problem.WORST_FIRST).toList();
        pieces = List.copyOf(pieces);
        stencils = List.copyOf(stencils);
        sheets = List.copyOf(sheets);
        lists = List.copyOf(lists);
    }

    /** Whether somebody should look at something. */
    public boolean needsAttention() {
        return problems.stream().anyMatch(problem -> problem.severity() != Severity.NOTE);
    }
}
