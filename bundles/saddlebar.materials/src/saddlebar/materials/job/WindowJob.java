package saddlebar.materials.job;

import java.util.List;

import saddlebar.cartoon.opening.BarRule;
import saddlebar.model.units.Require;

/**
 * A window to make.
 *
 * @param alike openings that get the same window
 */
public record WindowJob(String id, String name, int alike, boolean overhead, boolean inDoor, List<PanelJob> panels) {
    public WindowJob {
        Require.within("alike", alike, 1, 10_000);
        panels = List.copyOf(panels);
    }

    /** Windows of buildings stand in their outer walls unless they are in a door. */
    public BarRule barRule() {
        return inDoor ? BarRule.DOOR : BarRule.EXTERIOR;
    }
}
