package saddlebar.materials.job;

import java.util.List;

/**
 * A commission as far as it costs.
 *
 * @param sheets  as made; empty if they are not made yet
 * @param assumed what had to be guessed or is missing, in sentences
 */
public record CostJob(String title, StudioJob studio, List<WindowJob> windows, List<SheetJob> sheets, List<String> assumed) {
    public CostJob {
        windows = List.copyOf(windows);
        sheets = List.copyOf(sheets);
        assumed = List.copyOf(assumed);
    }
}
