package saddlebar.materials.cost;

import java.util.List;

import saddlebar.materials.job.CostJob;
import saddlebar.materials.money.Prices;

/** One thing that costs. Another is added as a service of this type; no list is edited. No state between calls. */
public interface CostSource {
    /** Stable word that stands in quotes and records. */
    String key();

    /** Sources are asked in this order, then by key. */
    int order();

    /**
     * What it costs.
     *
     * @param before lines of the sources asked before, for those that reckon on them
     * @throws saddlebar.model.problem.Refusal if a price that it needs is missing
     */
    List<ReckonedLine> reckon(CostJob job, Prices prices, List<ReckonedLine> before);
}
