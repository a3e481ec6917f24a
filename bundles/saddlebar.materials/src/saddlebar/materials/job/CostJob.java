package saddlebar.materials.job;

import java.util.List;
import java.util.Map;

import saddlebar.model.units.Require;

/**
 * A commission as far as it costs.
 *
 * @param sheets  as made; empty if they are not made yet
 * @param assumed what had to be guessed or is missing, in sentences
 * @param yields  share of the sheets that becomes pieces, by glass, where the pieces were laid on glass; others take the price book's
 */
public record CostJob(String title, StudioJob studio, List<WindowJob> windows, List<SheetJob> sheets, List<String> assumed, Map<String, Double> yields) {
    public CostJob {
        windows = List.copyOf(windows);
        sheets = List.copyOf(sheets);
        assumed = List.copyOf(assumed);
        yields = Map.copyOf(yields);
        yields.values().forEach(yield -> Require.within("yields", yield, 0.01, 1));
    }

    /** Of a commission whose pieces are not laid on glass yet. */
    public CostJob(String title, StudioJob studio, List<WindowJob> windows, List<SheetJob> sheets, List<String> assumed) {
        this(title, studio, windows, sheets, assumed, Map.of());
    }

    public CostJob withYields(Map<String, Double> laid) {
        return new CostJob(title, studio, windows, sheets, assumed, laid);
    }
}
