package saddlebar.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;

import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.Studio;
import saddlebar.model.store.StudioLibrary;

/** Glasses and paints of the studio tables by their names, whatever the case of the letters. */
final class StudioColours {
    private final Studio studio = CommissionFactory.eINSTANCE.createStudio();

    StudioColours() throws IOException {
        Optional<StudioLibrary> tables = StudioLibrary.installed();
        if (tables.isPresent()) {
            tables.get().fill(studio);
        }
    }

    Optional<GlassStock> glass(String name) {
        return studio.getGlass().stream().filter(glass -> glass.getName().equalsIgnoreCase(name.strip())).findFirst();
    }

    Optional<Paint> paint(String name) {
        return studio.getPaints().stream().filter(paint -> paint.getName().equalsIgnoreCase(name.strip())).findFirst();
    }

    List<String> glassNames() {
        return studio.getGlass().stream().map(GlassStock::getName).toList();
    }

    List<String> paintNames() {
        return studio.getPaints().stream().map(Paint::getName).toList();
    }
}
