package saddlebar.nesting;

import java.util.List;
import java.util.function.Consumer;

import saddlebar.model.work.Work;

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
        throw new UnsupportedOperationException("being written");
    }
}
