package saddlebar.nesting;

import java.util.List;
import java.util.function.Consumer;

import saddlebar.model.units.Require;
import saddlebar.model.work.Work;
import saddlebar.nesting.rectangle.RectangleSearch;
import saddlebar.nesting.search.Budget;

/** Shapes along a strip of given height: shortest length, then fewest turned shapes. The strip runs along x. */
public final class StripNesting {
    /** Units that {@link #place} tells its {@link Work} in all. */
    public static final int WORK_UNITS = 100;

    private StripNesting() {
    }

    /**
     * @param items         ids all different
     * @param stripHeightMm height along y
     * @param gapMm         least distance between two shapes, at least 0; not kept to the border of the strip
     * @param effort        when to stop
     * @param work          told {@link #WORK_UNITS}; asked whether to stop
     * @param better        told each better layout, the first within about a second
     * @return the best layout found
     * @throws saddlebar.model.problem.Refusal             if an item is higher than the strip at every allowed angle
     * @throws java.util.concurrent.CancellationException if stopped; {@link BestSoFar} keeps what was found
     */
    public static Nested place(List<NestItem> items, double stripHeightMm, double gapMm, Effort effort, Work work,
            Consumer<? super Nested> better) {
        Require.within("gapMm", gapMm, 0, SheetArea.LARGEST_MM);
        SheetArea reach = new SheetArea(SheetArea.LARGEST_MM, stripHeightMm);
        Fit.requireDistinctIds(items);
        Fit.requireInStrip(items, stripHeightMm);
        Candidates candidates = new Candidates(items, gapMm, better);
        if (items.stream().allMatch(item -> GridRectangles.takes(item, List.of(reach)))) {
            placeRectangles(items, reach, gapMm, effort, work, candidates);
        } else {
            placeOutlines(items, reach, gapMm, effort, work, candidates);
        }
        return candidates.best();
    }

    private static void placeOutlines(List<NestItem> items, SheetArea reach, double gapMm, Effort effort, Work work,
            Candidates candidates) {
        Budget budget = new Budget(effort, work, WORK_UNITS, Outlines.STEPS_PER_ROUND);
        Outlines outlines = new Outlines(items, List.of(reach));
        double area = items.stream().mapToDouble(i -> i.areaMm2() * i.quantity()).sum();
        outlines.job(gapMm).strip(reach.heightMm(), area / reach.heightMm(), budget, found -> candidates.offer(outlines.placements(found),
                List.of(new SheetArea(found.length(), reach.heightMm())), found.length(), Outlines.METHOD));
        budget.finish();
    }

    private static void placeRectangles(List<NestItem> items, SheetArea reach, double gapMm, Effort effort, Work work,
            Candidates candidates) {
        GridRectangles grid = GridRectangles.of(items, gapMm);
        Budget budget = new Budget(effort, work, WORK_UNITS, RectangleSearch.stepsPerRound(grid.set.width().length));
        RectangleSearch.strip(grid.set, grid.bin(0, reach), budget, layout -> candidates.offer(grid.placements(layout),
                List.of(new SheetArea(grid.lengthMm(layout), reach.heightMm())), grid.lengthMm(layout), SheetNesting.RECTANGLES));
        budget.finish();
    }
}
