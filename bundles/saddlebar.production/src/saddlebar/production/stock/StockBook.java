package saddlebar.production.stock;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

import saddlebar.model.art.OutlineMm;
import saddlebar.model.commission.Commission;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.GlassFlaw;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.StockSheet;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.RecordDraft;
import saddlebar.model.store.RecordKind;
import saddlebar.production.facts.PieceFacts;

/**
 * The shelf of glass in the studio's model: what comes in, what is found on it, what is cut up. Changes objects only; whoever calls saves, or makes the
 * change a step that can be taken back.
 */
public final class StockBook {
    private final Studio studio;

    public StockBook(Studio studio) {
        this.studio = studio;
    }

    /** @throws Refusal if the studio has no glass of this name */
    public GlassStock glass(String name) {
        return studio.getGlass().stream().filter(glass -> name.equals(glass.getName())).findFirst().orElseThrow(() -> new Refusal("glass " + name,
                "the studio has no glass of this name", "take one of " + String.join(", ", studio.getGlass().stream().map(GlassStock::getName).toList())));
    }

    /** @throws Refusal if there is no such sheet at hand */
    public StockSheet sheet(String name) {
        return sheets().stream().filter(sheet -> name.equals(sheet.getName()) && !sheet.isUsedUp()).findFirst().orElseThrow(() -> new Refusal("sheet " + name,
                "there is no sheet of this name at hand", sheets().isEmpty()
                        ? "add it first"
                        : "take one of "
                                + String.join(", ", sheets().stream().filter(sheet -> !sheet.isUsedUp()).map(StockSheet::getName).sorted().toList())));
    }

    private List<StockSheet> sheets() {
        return studio.getGlass().stream().flatMap(glass -> glass.getSheets().stream()).toList();
    }

    public List<ShelfGlass> shelf() {
        return studio.getGlass().stream().map(ShelfGlass::of).toList();
    }

    /**
     * Puts a sheet on the shelf.
     *
     * @param name    empty for the next free one
     * @param outline of an off-cut that is no rectangle
     * @throws Refusal if the name is taken or the size makes no sense
     */
    public StockSheet add(GlassStock glass, String name, double widthMm, double heightMm, Optional<OutlineMm> outline, boolean grainAlongWidth,
            boolean offcut) {
        if (!(widthMm >= 10 && widthMm <= 10_000 && heightMm >= 10 && heightMm <= 10_000)) {
            throw new Refusal("sheet", "its sides are " + widthMm + " x " + heightMm + " mm", "give sides of 10 to 10000 mm");
        }
        if (!name.isBlank() && sheets().stream().anyMatch(sheet -> name.equals(sheet.getName()))) {
            throw new Refusal("sheet " + name, "there is or was a sheet of this name", "chalk another name on it");
        }
        StockSheet sheet = CommissionFactory.eINSTANCE.createStockSheet();
        sheet.setId(UUID.randomUUID().toString());
        sheet.setName(name.isBlank() ? nextName() : name);
        sheet.setWidthMm(widthMm);
        sheet.setHeightMm(heightMm);
        outline.ifPresent(sheet::setOutline);
        sheet.setGrainDeg(grainAlongWidth ? 0 : 90);
        sheet.setOffcut(offcut);
        glass.getSheets().add(sheet);
        return sheet;
    }

    private String nextName() {
        int next = sheets().size() + 1;
        while (taken("G" + next)) {
            next++;
        }
        return "G" + next;
    }

    private boolean taken(String name) {
        return sheets().stream().anyMatch(sheet -> name.equals(sheet.getName()));
    }

    /** @throws Refusal if the flaw lies off the sheet */
    public GlassFlaw flaw(StockSheet sheet, String kind, OutlineMm outline) {
        double[] box = outline.boundsMm();
        if (outline.isEmpty() || box[2] <= 0 || box[3] <= 0 || box[0] >= sheet.getWidthMm() || box[1] >= sheet.getHeightMm()) {
            throw new Refusal("sheet " + sheet.getName(), "the flaw does not lie on it",
                    "give its place in mm from the sheet's top left, within " + sheet.getWidthMm() + " x " + sheet.getHeightMm() + " mm");
        }
        GlassFlaw flaw = CommissionFactory.eINSTANCE.createGlassFlaw();
        flaw.setKind(kind);
        flaw.setOutline(outline);
        sheet.getFlaws().add(flaw);
        return flaw;
    }

    /** A round flaw, 24 corners around it, nothing of the circle left out. */
    public static OutlineMm round(double xMm, double yMm, double radiusMm) {
        double around = radiusMm / Math.cos(Math.PI / 24);
        double[] ring = new double[48];
        for (int i = 0; i < 24; i++) {
            ring[2 * i] = xMm + around * Math.cos(i * Math.PI / 12);
            ring[2 * i + 1] = yMm + around * Math.sin(i * Math.PI / 12);
        }
        return OutlineMm.of(ring);
    }

    /** Pieces of the windows as they are to be cut, that have a glass in the chosen colourway. */
    public static List<WantedPiece> wanted(List<Window> windows) {
        List<WantedPiece> wanted = new ArrayList<>();
        for (Window window : windows) {
            for (Panel panel : window.getPanels()) {
                String label = window.getPanels().size() == 1 || panel.getName() == null || panel.getName().isBlank()
                        ? window.getName()
                        : window.getName() + " " + panel.getName();
                for (Piece piece : panel.getPieces()) {
                    if (!piece.isRetired() && piece.getNet() != null && !piece.getNet().isEmpty()) {
                        String glass = PieceFacts.of(piece).stock();
                        if (!glass.isEmpty()) {
                            wanted.add(new WantedPiece(label + "/" + piece.getNumber(), glass, piece.getNet()));
                        }
                    }
                }
            }
        }
        return wanted;
    }

    /** A sheet of a layout, cut: used up, its off-cuts on the shelf. The ids of the off-cuts. */
    public List<String> cut(LaidGlass laid) {
        StockSheet sheet = sheet(laid.sheet().name());
        List<String> ids = new ArrayList<>();
        int next = 1;
        for (LaidGlass.Offcut left : laid.offcuts()) {
            while (taken(sheet.getName() + "." + next)) {
                next++;
            }
            StockSheet offcut = add(sheet.getGlass(), sheet.getName() + "." + next, left.widthMm(), left.heightMm(), Optional.empty(), sheet.getGrainDeg() == 0,
                    true);
            offcut.setCutFrom(sheet.getId());
            ids.add(offcut.getId());
        }
        sheet.setUsedUp(true);
        return ids;
    }

    /** The record of it: which sheet, what was cut from it, what went back. Written into the studio's records. */
    public void record(CommissionFolder folder, LaidGlass laid, List<String> offcutIds) throws IOException {
        Commission commission = folder.commission();
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("itemId", glass(laid.glass()).getId());
        settings.put("quantity", -(laid.sheet().areaMm2() - laid.offcuts().stream().mapToDouble(LaidGlass.Offcut::areaMm2).sum()) / 1e6);
        settings.put("unit", "m2");
        settings.put("reason", "cut");
        settings.put("glass", laid.glass());
        settings.put("sheet", laid.sheet().name());
        settings.put("commission", commission.getTitle() == null ? "" : commission.getTitle());
        settings.put("pieces", laid.pieces().stream().map(LaidPiece::label).toList());
        folder.studioFolder().records().append(RecordDraft.of(RecordKind.STOCK).using(List.of(laid.sheet().id())).making(offcutIds).with(settings));
    }
}
