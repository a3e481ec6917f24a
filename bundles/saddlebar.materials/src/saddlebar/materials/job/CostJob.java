package saddlebar.materials.job;

import java.util.List;

/**
 * A commission as far as it costs.
 *
 * @param sheets  as made; empty if they are not made yet
 * @param assumed what had to be guessed or is missing, in sentences
 * @param site    the way there, and what is on hand
 * @param hints   what others know better than a studio setting
 */
public record CostJob(String title, StudioJob studio, List<WindowJob> windows, List<SheetJob> sheets, List<String> assumed, SiteJob site, CostHints hints) {
    public CostJob {
        windows = List.copyOf(windows);
        sheets = List.copyOf(sheets);
        assumed = List.copyOf(assumed);
    }

    /** The same with what others know. */
    public CostJob with(CostHints known) {
        return new CostJob(title, studio, windows, sheets, assumed, site, known);
    }
}
