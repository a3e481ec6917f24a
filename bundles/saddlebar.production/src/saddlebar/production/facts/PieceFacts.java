package saddlebar.production.facts;

import java.util.Objects;
import java.util.Optional;

import saddlebar.model.art.OutlineMm;
import saddlebar.model.commission.GlassChoice;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.PlaceMm;
import saddlebar.model.units.Require;

/**
 * A piece as the model holds it; the id goes into no made file.
 *
 * @param label      where its number stands
 * @param inradiusMm radius of the largest circle in it
 * @param stock      name of the glass it is cut from in the chosen colourway, empty if none was chosen
 */
public record PieceFacts(String id, int number, OutlineMm face, OutlineMm glass, PlaceMm label, double inradiusMm, String stock) {
    public PieceFacts {
        Require.text("id", id);
        Require.within("number", number, 1, 1_000_000);
        Objects.requireNonNull(face, "face");
        Objects.requireNonNull(glass, "glass");
        Objects.requireNonNull(label, "label");
        Require.within("inradiusMm", inradiusMm, 0, 1e6);
        Objects.requireNonNull(stock, "stock");
    }

    /** As the model holds it, with the glass of the window's chosen colourway, else the one the piece itself names. */
    public static PieceFacts of(Piece piece) {
        return new PieceFacts(piece.getId(), piece.getNumber(), piece.getFace(), piece.getNet(), new PlaceMm(piece.getLabelXMm(), piece.getLabelYMm()),
                piece.getInradiusMm(), glassOf(piece).map(GlassStock::getName).orElse(""));
    }

    /** The glass of the window's chosen colourway, else the one the piece itself names. */
    public static Optional<GlassStock> glassOf(Piece piece) {
        Window window = piece.getPanel() == null ? null : piece.getPanel().getWindow();
        Optional<GlassStock> chosen = piece.getChoices().stream().filter(choice -> window != null && choice.getColourway() == window.getChosen())
                .map(GlassChoice::getGlass).filter(Objects::nonNull).findFirst();
        return chosen.or(() -> Optional.ofNullable(piece.getGlass()));
    }
}
