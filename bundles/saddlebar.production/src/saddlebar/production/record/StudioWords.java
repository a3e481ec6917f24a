package saddlebar.production.record;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.PaintLot;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Sheet;
import saddlebar.model.commission.Stencil;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.Window;
import saddlebar.model.store.CommissionFolder;

/**
 * Joins a person's words for things of the studio to these things, by their names. A word for what the studio does not have stays a word: an old notebook
 * speaks of frames that are long gone.
 */
final class StudioWords {
    private final CommissionFolder folder;

    StudioWords(CommissionFolder folder) {
        this.folder = folder;
    }

    void name(Deed deed, Map<String, Object> settings) throws IOException {
        Studio studio = folder.studio();
        id(deed, "screen", "frameId", settings,
                studio.getFrames().stream().filter(frame -> deed.word("screen").equals(frame.getName())).map(frame -> frame.getId())
                        .findFirst());
        Optional<Paint> paint = studio.getPaints().stream().filter(one -> deed.word("paint").equals(one.getName())).findFirst();
        id(deed, "paint", "paintId", settings, paint.map(Paint::getId));
        List<PaintLot> lots = paint.map(one -> List.copyOf(one.getLots()))
                .orElseGet(() -> studio.getPaints().stream().flatMap(one -> one.getLots().stream()).toList());
        id(deed, "lot", "lotId", settings, lots.stream().filter(lot -> deed.word("lot").equals(lot.getName())).map(PaintLot::getId).findFirst());
        id(deed, "medium", "mediumId", settings, studio.getMedia().stream().filter(one -> deed.word("medium").equals(one.getName())).map(one -> one.getId())
                .findFirst());
        id(deed, "schedule", "scheduleId", settings, studio.getSchedules().stream().filter(one -> deed.word("schedule").equals(one.getName()))
                .map(one -> one.getId()).findFirst());
        id(deed, "sheet", "sheetId", settings,
                folder.commission().getSheets().stream().filter(sheet -> deed.word("sheet").equals(String.valueOf(sheet.getNumber())))
                        .map(Sheet::getId).findFirst());
        if (!deed.word("stencil").isEmpty() && !deed.word("window").isEmpty()) {
            id(deed, "stencil", "stencilId", settings, folder.window(deed.word("window")).flatMap(window -> stencil(window, deed)));
        }
    }

    private static void id(Deed deed, String column, String name, Map<String, Object> settings, Optional<String> id) {
        if (!deed.word(column).isEmpty()) {
            id.ifPresent(found -> settings.put(name, found));
        }
    }

    /** By its number within the layer, or by layer and number as on the sheet. */
    private static Optional<String> stencil(Window window, Deed deed) {
        for (Panel panel : window.getPanels()) {
            for (DesignLayer layer : panel.getLayers()) {
                if (deed.word("layer").isEmpty() || deed.word("layer").equalsIgnoreCase(layer.getName())) {
                    for (Stencil stencil : layer.getStencils()) {
                        String number = String.valueOf(stencil.getNumber());
                        if (deed.word("stencil").equals(number) && !deed.word("layer").isEmpty()
                                || deed.word("stencil").endsWith(layer.getName() + "/" + number)
                                || deed.word("stencil").endsWith(layer.getName() + "-" + number)
                                || deed.word("stencil").endsWith(layer.getName() + " " + number)) {
                            return Optional.of(stencil.getId());
                        }
                    }
                }
            }
        }
        return Optional.empty();
    }
}
