package saddlebar.nesting;

import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;

import saddlebar.model.units.Require;
import saddlebar.model.work.Work;
import saddlebar.nesting.rectangle.Bin;
import saddlebar.nesting.rectangle.RectangleSearch;
import saddlebar.nesting.search.Budget;

/** Shapes on sheets: fewest sheets, then least area of the sheets, then the shortest last sheet, then fewest turned shapes. */
public final class SheetNesting {
    /** Units that {@link #place} tells its {@link Work} in all. */
    public static final int WORK_UNITS = 100;

    static final String RECTANGLES = "skyline, order annealed towards a goal";

    private SheetNesting() {
    }

    /**
     * @param items      ids all different
     * @param sheetKinds kinds of sheets at hand, as many of each as needed
     * @param gapMm      least distance between two shapes, at least 0; not kept to the border of a sheet
     * @param effort     when to stop
     * @param work       told {@link #WORK_UNITS}; asked whether to stop
     * @param better     told each better layout, the first within about a second
     * @return the best layout found
     * @throws saddlebar.model.problem.Refusal             if an item fits no sheet
     * @throws java.util.concurrent.CancellationException if stopped; {@link BestSoFar} keeps what was found
     */
    public static Nested place(List<NestItem> items, List<SheetArea> sheetKinds, double gapMm, Effort effort, Work work,
            Consumer<? super Nested> better) {
        Require.within("gapMm", gapMm, 0, SheetArea.LARGEST_MM);
        Fit.requireDistinctIds(items);
        Fit.requireOnSheets(items, sheetKinds);
        Candidates candidates = new Candidates(items, gapMm, better);
        if (items.stream().allMatch(item -> GridRectangles.takes(item, sheetKinds))) {
            placeRectangles(items, sheetKinds, gapMm, effort, work, candidates);
        } else {
            placeOutlines(items, sheetKinds, gapMm, effort, work, candidates);
        }
        return candidates.best();
    }

    private static void placeOutlines(List<NestItem> items, List<SheetArea> sheetKinds, double gapMm, Effort effort, Work work,
            Candidates candidates) {
        Budget budget = new Budget(effort, work, WORK_UNITS, Outlines.STEPS_PER_ROUND);
        Outlines outlines = new Outlines(items, sheetKinds);
        outlines.job(gapMm).sheets(sheetKinds.stream().mapToDouble(SheetArea::widthMm).toArray(),
                sheetKinds.stream().mapToDouble(SheetArea::heightMm).toArray(),
                items.stream().mapToDouble(i -> i.areaMm2() * i.quantity()).sum(), budget,
                found -> candidates.offer(outlines.placements(found),
                        Arrays.stream(found.kinds()).mapToObj(sheetKinds::get).toList(), found.length(), Outlines.METHOD));
        budget.finish();
    }

    private static void placeRectangles(List<NestItem> items, List<SheetArea> sheetKinds, double gapMm, Effort effort, Work work,
            Candidates candidates) {
        GridRectangles grid = GridRectangles.of(items, gapMm);
        List<Bin> bins = IntStream.range(0, sheetKinds.size()).mapToObj(k -> grid.bin(k, sheetKinds.get(k))).toList();
        Budget budget = new Budget(effort, work, WORK_UNITS, RectangleSearch.stepsPerRound(grid.set.width().length));
        RectangleSearch.sheets(grid.set, bins, budget, layout -> candidates.offer(grid.placements(layout),
                layout.bins().stream().map(bin -> sheetKinds.get(bin.kind())).toList(), grid.lengthMm(layout), RECTANGLES));
        budget.finish();
    }
}
