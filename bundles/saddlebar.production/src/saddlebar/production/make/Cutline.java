package saddlebar.production.make;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

import saddlebar.cartoon.CartoonSettings;
import saddlebar.cartoon.Join;
import saddlebar.cartoon.LocalJoin;
import saddlebar.cartoon.mend.MendSettings;
import saddlebar.cartoon.mend.MendedCutline;
import saddlebar.cartoon.mend.Mending;
import saddlebar.model.art.DrawnLine;
import saddlebar.model.commission.JoinKind;
import saddlebar.model.work.Work;
import saddlebar.production.facts.CutFacts;
import saddlebar.production.facts.CutFacts.AgreedMend;
import saddlebar.production.facts.CutFacts.PartJoin;

/**
 * A panel's cutline as it is made to pieces: the lines of its layer and of the layers that have a join of their own, agreed mends done.
 *
 * @param mended   the lines, and which mends found something to do
 * @param settings for making pieces of them
 */
public record Cutline(MendedCutline mended, CartoonSettings settings) {
    /**
     * @param layer the artwork's layer that is cut
     * @param lines reads a layer's lines in mm
     * @throws saddlebar.model.problem.Refusal as {@code lines} does, or if a layer is not there
     */
    public static Cutline of(String layer, JoinKind kind, double gapMm, CutFacts cut, Function<String, List<DrawnLine>> lines, Work work) {
        List<DrawnLine> drawn = new ArrayList<>(lines.apply(layer));
        List<int[]> ranges = new ArrayList<>();
        for (PartJoin part : cut.joins()) {
            int from = drawn.size();
            if (part.artLayer().equals(layer)) {
                from = 0;
            } else if (!part.artLayer().isEmpty()) {
                drawn.addAll(lines.apply(part.artLayer()));
            }
            ranges.add(new int[] {from, drawn.size()});
        }
        MendedCutline mended = cut.mends().isEmpty()
                ? MendedCutline.asDrawn(drawn)
                : Mending.acceptAgain(drawn, cut.mends().stream().map(AgreedMend::key).toList(), MendSettings.defaults(), work);
        List<LocalJoin> locals = new ArrayList<>();
        for (int i = 0; i < ranges.size(); i++) {
            PartJoin part = cut.joins().get(i);
            locals.add(part.artLayer().isEmpty()
                    ? LocalJoin.ofPieces(part.join(), part.first(), part.second())
                    : LocalJoin.alongLines(part.join(), mended.firstOf(ranges.get(i)[0]), mended.firstOf(ranges.get(i)[1])));
        }
        CartoonSettings settings = settings(kind, gapMm, cut).withLocalJoins(locals);
        return new Cutline(mended, cut.outlineElement().map(settings::withOutline).orElse(settings));
    }

    /** All but what needs the lines. */
    static CartoonSettings settings(JoinKind kind, double gapMm, CutFacts cut) {
        Join join = kind == JoinKind.LEAD ? Join.came(gapMm) : Join.gap(gapMm);
        return CartoonSettings.defaults().withJoin(join).withEdgeAllowance(cut.edgeAllowanceMm()).withLimitsByPiece(cut.limits());
    }
}
