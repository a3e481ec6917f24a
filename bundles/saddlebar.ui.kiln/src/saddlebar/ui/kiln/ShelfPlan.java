package saddlebar.ui.kiln;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import saddlebar.kiln.shelf.ShelfLoad;
import saddlebar.kiln.shelf.ShelfRows;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.FiringSchedule;
import saddlebar.model.commission.Kiln;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.production.kiln.FiredPiece;

/**
 * What lies on the shelf, and where. Immutable.
 *
 * @param load   boxes by the pieces' labels
 * @param pieces as records take them, in the order of the load
 * @param left   labels of what has no room
 */
public record ShelfPlan(ShelfLoad load, List<FiredPiece> pieces, List<String> left) {
    private static final double USUAL_MM = 3;
    private static final double LEAST_MM = 1;

    public ShelfPlan {
        pieces = List.copyOf(pieces);
        left = List.copyOf(left);
    }

    /** An empty shelf. */
    static ShelfPlan empty(Kiln kiln) {
        return new ShelfPlan(new ShelfLoad(side(kiln.getShelfWidthMm()), side(kiln.getShelfDepthMm()), List.of()), List.of(), List.of());
    }

    private static double side(double mm) {
        return Math.max(10, Math.min(10_000, mm));
    }

    /** Pieces laid in rows, with the layers of their panels that the schedule is for. */
    static ShelfPlan of(List<Piece> chosen, Kiln kiln, Optional<FiringSchedule> schedule) {
        Map<String, Piece> byLabel = new LinkedHashMap<>();
        chosen.stream().filter(piece -> !piece.isRetired() && piece.getPanel() != null && piece.getPanel().getWindow() != null)
                .forEach(piece -> byLabel.put(label(piece), piece));
        List<ShelfRows.Box> boxes = new ArrayList<>();
        byLabel.forEach((label, piece) -> boxes.add(box(label, piece)));
        ShelfRows rows = ShelfRows.of(boxes, side(kiln.getShelfWidthMm()), side(kiln.getShelfDepthMm()));
        List<FiredPiece> pieces = new ArrayList<>();
        for (ShelfLoad.Lay lay : rows.load().lays()) {
            Piece piece = byLabel.get(lay.piece());
            pieces.add(new FiredPiece(piece.getPanel().getWindow().getName(), String.valueOf(piece.getNumber()), piece.getId(), layers(piece, schedule),
                    place(lay, rows.load()), Optional.of(lay.xMm()), Optional.of(lay.yMm())));
        }
        return new ShelfPlan(rows.load(), pieces, rows.left());
    }

    /** What a record tells; pieces whose place was not measured are laid in rows, so that one sees what was in the kiln. */
    static ShelfPlan of(List<FiredPiece> recorded, Kiln kiln, Map<String, Piece> known) {
        Map<String, FiredPiece> byLabel = new LinkedHashMap<>();
        recorded.forEach(piece -> byLabel.putIfAbsent(piece.label(), piece));
        boolean measured = !byLabel.isEmpty() && byLabel.values().stream().allMatch(piece -> piece.xMm().isPresent() && piece.yMm().isPresent());
        List<ShelfRows.Box> boxes = byLabel.keySet().stream().map(label -> box(label, known.get(label))).toList();
        ShelfRows rows = ShelfRows.of(boxes, side(kiln.getShelfWidthMm()), side(kiln.getShelfDepthMm()));
        if (!measured) {
            return new ShelfPlan(rows.load(), List.copyOf(byLabel.values()), rows.left());
        }
        List<ShelfLoad.Lay> lays = boxes.stream().map(box -> new ShelfLoad.Lay(box.piece(), byLabel.get(box.piece()).xMm().get(),
                byLabel.get(box.piece()).yMm().get(), box.widthMm(), box.heightMm(), box.thicknessMm())).toList();
        return new ShelfPlan(new ShelfLoad(side(kiln.getShelfWidthMm()), side(kiln.getShelfDepthMm()), lays), List.copyOf(byLabel.values()), List.of());
    }

    static String label(Piece piece) {
        return piece.getPanel().getWindow().getName() + "/" + piece.getNumber();
    }

    private static ShelfRows.Box box(String label, Piece piece) {
        if (piece == null || piece.getNet() == null || piece.getNet().isEmpty()) {
            return new ShelfRows.Box(label, 50, 50, USUAL_MM);
        }
        double[] bounds = piece.getNet().boundsMm();
        double thickness = piece.getGlass() == null ? USUAL_MM : Math.max(0.5, Math.min(100, piece.getGlass().getThicknessMm()));
        return new ShelfRows.Box(label, Math.max(LEAST_MM, bounds[2] - bounds[0]), Math.max(LEAST_MM, bounds[3] - bounds[1]), thickness);
    }

    /** Painted layers of the piece's panel; those of the schedule's purpose where it has one. */
    private static List<String> layers(Piece piece, Optional<FiringSchedule> schedule) {
        return piece.getPanel().getLayers().stream().filter(layer -> layer.getRole() != LayerRole.CUTLINE && layer.getPaint() != null)
                .filter(layer -> schedule.isEmpty() || layer.getPaint().getKind() == schedule.get().getPurpose()).map(DesignLayer::getName).toList();
    }

    /** Row by letter from the front, place by number from the left, three to a side: 1 to 3, A to C. */
    static String place(ShelfLoad.Lay lay, ShelfLoad load) {
        int column = third(lay.middleXMm() / load.widthMm());
        int row = third(lay.middleYMm() / load.depthMm());
        return String.format(Locale.ROOT, "%c%d", 'A' + row, column + 1);
    }

    private static int third(double share) {
        return (int) Math.max(0, Math.min(2, Math.floor(3 * share)));
    }

    /** Every piece of windows that are loaded, by its label. */
    static Map<String, Piece> known(List<Window> windows) {
        Map<String, Piece> known = new LinkedHashMap<>();
        windows.forEach(window -> window.getPanels().forEach(panel -> panel.getPieces().forEach(piece -> known.putIfAbsent(label(piece), piece))));
        return known;
    }
}
