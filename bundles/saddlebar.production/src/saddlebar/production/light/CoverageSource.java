package saddlebar.production.light;

import saddlebar.model.work.Work;

/** Where a layer's picture can be had finer than it is held in memory: the drawing itself. Asked on the painters' threads, several at once. */
@FunctionalInterface
public interface CoverageSource {
    /**
     * A part of the layer.
     *
     * @param pxPerMm wanted fineness
     * @param work    asked whether to stop
     * @return what covers at least {@code part}
     */
    Coverage read(RectMm part, double pxPerMm, Work work);
}
