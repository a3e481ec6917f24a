package saddlebar.production.facts;

import java.util.List;
import java.util.Objects;

import saddlebar.model.units.Require;

/**
 * A window and its panels.
 *
 * @param inDoor whether it hangs in a door, which slams
 */
public record WindowFacts(String id, String name, String title, List<PanelFacts> panels, boolean inDoor) {
    public WindowFacts {
        Require.text("id", id);
        Require.text("name", name);
        Objects.requireNonNull(title, "title");
        panels = List.copyOf(panels);
    }

    /** A window that is in no door. */
    public WindowFacts(String id, String name, String title, List<PanelFacts> panels) {
        this(id, name, title, panels, false);
    }

    /** What people call a panel: the window's name, with the panel's where there are several. */
    public String label(PanelFacts panel) {
        return panels.size() == 1 || panel.name().isBlank() ? name : name + " " + panel.name();
    }

    /** What people call a piece, such as {@code W01/12}. */
    public String label(PanelFacts panel, int number) {
        return label(panel) + "/" + number;
    }
}
