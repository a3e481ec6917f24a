package saddlebar.report.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.GlassChoice;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Stencil;
import saddlebar.model.commission.Window;

/** What the model says of a piece, in words. */
final class PieceWords {
    private PieceWords() {
    }

    /** Glass of the chosen colouring, else the piece's own; empty if none. */
    static String glass(Piece piece) {
        Window window = piece.getPanel() == null ? null : piece.getPanel().getWindow();
        Optional<GlassStock> chosen = piece.getChoices().stream().filter(choice -> window != null && choice.getColourway() == window.getChosen())
                .map(GlassChoice::getGlass)
                .filter(glass -> glass != null).findFirst();
        GlassStock glass = chosen.orElse(piece.getGlass());
        return glass == null ? "" : Leaf.text(glass.getName());
    }

    /** Layers that print on it, in firing order. */
    static String layers(Piece piece) {
        List<String> names = new ArrayList<>();
        for (DesignLayer layer : piece.getPanel().getLayers()) {
            if (layer.getStencils().stream().filter(stencil -> !stencil.isRetired())
                    .anyMatch(stencil -> stencil.getPieces().stream().anyMatch(entry -> entry.getPiece() == piece))) {
                names.add(Leaf.text(layer.getName()));
            }
        }
        return String.join(", ", names);
    }

    static String sheet(ReportMatter matter, Window window, Piece piece) {
        return matter.sheets().stream()
                .filter(sheet -> sheet.pieces().stream().anyMatch(label -> label.startsWith(window.getName()) && label.endsWith("/" + piece.getNumber())))
                .map(ReportMatter.GlassSheet::name).findFirst().orElse("\u2013");
    }

    static String stencil(Stencil stencil) {
        DesignLayer layer = stencil.getLayer();
        return layer == null ? String.valueOf(stencil.getNumber()) : layer.getPanel().getWindow().getName() + " " + layer.getName() + " " + stencil.getNumber();
    }
}
