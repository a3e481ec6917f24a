package saddlebar.nesting;

import java.util.List;
import java.util.function.Consumer;

import saddlebar.model.work.Work;

/** Shapes on sheets: fewest sheets, then least area of the sheets, then the shortest last sheet, then fewest turned shapes. */
public final class SheetNesting {
    /** Units that {@link #place} tells its {@link Work} in all. */
    public static final int WORK_UNITS = 100;

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
        throw new UnsupportedOperationException("being written");
    }
}
