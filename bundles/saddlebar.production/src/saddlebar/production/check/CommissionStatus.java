package saddlebar.production.check;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import saddlebar.model.commission.Commission;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.MakingState;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Placement;
import saddlebar.model.commission.Sheet;
import saddlebar.model.commission.Stencil;
import saddlebar.model.commission.StencilPiece;
import saddlebar.model.commission.Window;
import saddlebar.model.store.CommissionFolder;

/**
 * Where everything stands, in the words of the trade: drawn, on sheet, on screen, printed, fired, glazed, in doubt, to remake. What lies on sheets is
 * read from the model; what was done with them from the records.
 *
 * @param title   the commission's
 * @param windows by name
 * @param next    what can be done next, the most pressing first
 * @param steps   the same, one for each sentence of {@code next}, for those who say it in other words
 */
public record CommissionStatus(String title, List<WindowStatus> windows, List<String> next, List<Step> steps) {
    /** A kind of next step. */
    public enum StepKind {
        FIRST_ARTWORK("Bring the artwork of a first window."), ARTWORK("bring its artwork."), MAKE("make its stencils and sheets."), PRINT(
                "print its sheets and fuse them to screens (hot press: gloves, hands clear, let it cool before peeling).");

        private final String words;

        StepKind(String words) {
            this.words = words;
        }
    }

    /**
     * What can be done next.
     *
     * @param window its name, empty if it is about none
     */
    public record Step(String window, StepKind kind) {
        String words() {
            return window.isEmpty() ? kind.words : window + ": " + kind.words;
        }
    }

    /** A window; its state is that of the piece that is farthest behind. */
    public record WindowStatus(String name, String title, String state, List<LayerStatus> layers, List<PieceStatus> pieces) {
    }

    /** A painted layer. */
    public record LayerStatus(String name, String role, boolean byHand, String state, int stencils, int prints) {
    }

    /** A piece; {@code layers} has its state in each layer that prints on it. */
    public record PieceStatus(int number, String state, Map<String, String> layers) {
    }

    public static CommissionStatus of(CommissionFolder folder) throws IOException {
        Commission commission = folder.commission();
        PrintedPieces printed = PrintedPieces.of(folder);
        List<WindowStatus> windows = new ArrayList<>();
        List<Step> next = new ArrayList<>();
        for (Window window : folder.windows().stream().sorted(Comparator.comparing(Window::getName)).toList()) {
            windows.add(window(window, commission, printed, next));
        }
        if (windows.isEmpty()) {
            next.add(new Step("", StepKind.FIRST_ARTWORK));
        }
        return new CommissionStatus(commission.getTitle() == null ? "" : commission.getTitle(), windows, next.stream().map(Step::words).toList(),
                List.copyOf(next));
    }

    private static WindowStatus window(Window window, Commission commission, PrintedPieces printed, List<Step> next) {
        List<LayerStatus> layers = new ArrayList<>();
        Map<Piece, Map<String, String>> byPiece = new HashMap<>();
        Map<Piece, MakingState> least = new HashMap<>();
        boolean toMake = false;
        for (Panel panel : window.getPanels()) {
            for (DesignLayer layer : panel.getLayers()) {
                if (layer.getRole() == LayerRole.CUTLINE) {
                    continue;
                }
                List<Stencil> stencils = layer.getStencils().stream().filter(stencil -> !stencil.isRetired()).toList();
                MakingState ofLayer = null;
                for (Stencil stencil : stencils) {
                    MakingState onSheet = isOnSheet(stencil, commission) ? MakingState.ON_SHEET : MakingState.DRAWN;
                    for (StencilPiece entry : stencil.getPieces()) {
                        Piece piece = entry.getPiece();
                        if (piece != null) {
                            MakingState state = printed.state(piece, layer.getId(), stencil.getId(), onSheet);
                            byPiece.computeIfAbsent(piece, p -> new TreeMap<>()).put(layer.getName(), state.getLiteral());
                            least.merge(piece, state, CommissionStatus::behind);
                            ofLayer = ofLayer == null ? state : behind(ofLayer, state);
                        }
                    }
                }
                toMake |= stencils.isEmpty() && !layer.isByHand();
                layers.add(new LayerStatus(layer.getName(), layer.getRole().getLiteral(), layer.isByHand(),
                        (ofLayer == null ? MakingState.DRAWN : ofLayer).getLiteral(), stencils.size(), stencils.stream().mapToInt(Stencil::getPrints).sum()));
            }
        }
        List<PieceStatus> pieces = new ArrayList<>();
        MakingState ofWindow = null;
        for (Panel panel : window.getPanels()) {
            for (Piece piece : panel.getPieces()) {
                if (!piece.isRetired()) {
                    MakingState state = printed.glazed(piece, least.getOrDefault(piece, MakingState.DRAWN));
                    ofWindow = ofWindow == null ? state : least.containsKey(piece) || state == MakingState.GLAZED ? behind(ofWindow, state) : ofWindow;
                    pieces.add(new PieceStatus(piece.getNumber(), state.getLiteral(), byPiece.getOrDefault(piece, Map.of())));
                }
            }
        }
        pieces.sort(Comparator.comparingInt(PieceStatus::number));
        if (pieces.isEmpty()) {
            next.add(new Step(window.getName(), StepKind.ARTWORK));
        } else if (toMake) {
            next.add(new Step(window.getName(), StepKind.MAKE));
        } else if (layers.stream().anyMatch(layer -> layer.state().equals(MakingState.ON_SHEET.getLiteral()))) {
            next.add(new Step(window.getName(), StepKind.PRINT));
        }
        return new WindowStatus(window.getName(), window.getTitle() == null ? "" : window.getTitle(),
                (ofWindow == null ? MakingState.DRAWN : ofWindow).getLiteral(), layers, pieces);
    }

    private static boolean isOnSheet(Stencil stencil, Commission commission) {
        for (Sheet sheet : commission.getSheets()) {
            for (Placement placement : sheet.getPlacements()) {
                if (placement.getStencil() == stencil) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The earlier of two states; doubt and a remake come before all. */
    static MakingState behind(MakingState one, MakingState other) {
        return rank(one) <= rank(other) ? one : other;
    }

    private static int rank(MakingState state) {
        return switch (state) {
            case TO_REMAKE -> -2;
            case IN_DOUBT -> -1;
            default -> state.getValue();
        };
    }
}
