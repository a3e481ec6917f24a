package saddlebar.production.make;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import saddlebar.cartoon.CartoonPiece;
import saddlebar.model.art.OutlineMm;
import saddlebar.model.problem.PlaceMm;
import saddlebar.production.facts.PieceFacts;
import saddlebar.report.truesize.PatternPiece;

/** The pieces of a panel in the form that drawings at true size take. */
final class PatternPieces {
    private PatternPieces() {
    }

    /** @param faces as drawn; else as cut, with the allowance for foil or heart taken off */
    static List<PatternPiece> of(PanelPieces panel, boolean faces) {
        Map<Integer, String> stock = new HashMap<>();
        for (PieceFacts piece : panel.placed().panel().pieces()) {
            stock.put(piece.number(), piece.stock());
        }
        if (panel.cartoon().isPresent()) {
            return panel.cartoon().get().pieces().stream().map(piece -> pattern(piece, faces, stock.getOrDefault(piece.number(), ""))).toList();
        }
        return panel.placed().panel().pieces().stream()
                .map(piece -> pattern(piece.number(), faces ? piece.face() : piece.glass(), piece.label(), piece.inradiusMm(), piece.stock())).toList();
    }

    private static PatternPiece pattern(CartoonPiece piece, boolean faces, String stock) {
        OutlineMm outline = Outlines.outline(faces ? piece.face() : piece.glass());
        return pattern(piece.number(), outline, piece.label(), piece.inradiusMm(), stock);
    }

    private static PatternPiece pattern(int number, OutlineMm outline, PlaceMm label, double inradiusMm, String stock) {
        return new PatternPiece(String.valueOf(number), outline, label.xMm(), label.yMm(), inradiusMm, stock);
    }
}
