package saddlebar.materials.metal;

import java.util.List;

/**
 * Stock lengths cut to order.
 *
 * @param lowerBound stock lengths that no plan can do without
 */
public record CuttingPlan(long stockHmm, long kerfHmm, List<CutPattern> patterns, int lowerBound) {
    public CuttingPlan {
        patterns = List.copyOf(patterns);
    }

    /** Stock lengths used. */
    public int stocks() {
        return patterns.stream().mapToInt(CutPattern::times).sum();
    }

    /** Whether no plan can use fewer. */
    public boolean proven() {
        return stocks() == lowerBound;
    }
}
