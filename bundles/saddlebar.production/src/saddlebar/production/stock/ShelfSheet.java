package saddlebar.production.stock;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import saddlebar.model.art.OutlineMm;
import saddlebar.model.commission.GlassFlaw;
import saddlebar.model.commission.StockSheet;
import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Require;

/**
 * A sheet or off-cut as it stands on the shelf.
 *
 * @param id         empty for one that is still to be bought
 * @param name       chalked on it
 * @param outline    of an off-cut that is no rectangle
 * @param alongWidth whether its grain runs along its width; else along its height
 * @param offcut     left of another sheet
 * @param flaws      places to keep clear
 */
public record ShelfSheet(String id, String name, double widthMm, double heightMm, Optional<OutlineMm> outline, boolean alongWidth, boolean offcut,
        List<OutlineMm> flaws) {
    public ShelfSheet {
        Objects.requireNonNull(id, "id");
        Require.text("name", name);
        Require.within("widthMm", widthMm, 1, 10_000);
        Require.within("heightMm", heightMm, 1, 10_000);
        flaws = List.copyOf(flaws);
    }

    /** @throws Refusal if its size is out of range or its grain runs askew */
    static ShelfSheet of(StockSheet sheet) {
        double grain = ((sheet.getGrainDeg() % 180) + 180) % 180;
        boolean along = grain < 0.01 || grain > 179.99;
        if (!along && Math.abs(grain - 90) > 0.01) {
            throw new Refusal("sheet " + sheet.getName(), "its grain runs at " + grain + " degrees", "enter 0 (along its width) or 90 (along its height)");
        }
        if (!(sheet.getWidthMm() >= 1 && sheet.getWidthMm() <= 10_000 && sheet.getHeightMm() >= 1 && sheet.getHeightMm() <= 10_000)) {
            throw new Refusal("sheet " + sheet.getName(), "it is " + sheet.getWidthMm() + " x " + sheet.getHeightMm() + " mm", "enter sides of 1 to 10000 mm");
        }
        return new ShelfSheet(sheet.getId() == null ? "" : sheet.getId(), sheet.getName() == null || sheet.getName().isBlank() ? "unnamed" : sheet.getName(),
                sheet.getWidthMm(), sheet.getHeightMm(), Optional.ofNullable(sheet.getOutline()).filter(outline -> !outline.isEmpty()), along, sheet.isOffcut(),
                sheet.getFlaws().stream().map(GlassFlaw::getOutline).filter(outline -> outline != null && !outline.isEmpty()).toList());
    }

    public double areaMm2() {
        return widthMm * heightMm;
    }
}
