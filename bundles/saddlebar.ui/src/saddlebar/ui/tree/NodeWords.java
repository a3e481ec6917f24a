package saddlebar.ui.tree;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

import org.eclipse.osgi.util.NLS;

import saddlebar.model.commission.Commission;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.Kiln;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.Named;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.ScreenFrame;
import saddlebar.model.commission.Sheet;
import saddlebar.model.commission.Stencil;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.ui.Lengths;
import saddlebar.ui.Messages;
import saddlebar.ui.desk.OpenCommission;

/** What a node is called, and beside that where it stands. No widget, so that plain tests cover it. */
public final class NodeWords {
    private final Supplier<Optional<OpenCommission>> open;
    private final Supplier<Lengths> lengths;
    private final Supplier<MakingStates> states;

    public NodeWords(Supplier<Optional<OpenCommission>> open, Supplier<Lengths> lengths, Supplier<MakingStates> states) {
        this.open = open;
        this.lengths = lengths;
        this.states = states;
    }

    public String name(Object node) {
        if (node instanceof Commission commission) {
            return orElse(commission.getTitle(), Messages.Tree_untitled);
        }
        if (node instanceof WindowNode window) {
            return window(window).map(NodeWords::windowName).orElse(window.name());
        }
        if (node instanceof Panel panel) {
            return orElse(panel.getName(), Messages.Tree_panel);
        }
        if (node instanceof DesignLayer layer) {
            return orElse(layer.getName(), role(layer.getRole()));
        }
        if (node instanceof Piece piece) {
            return NLS.bind(Messages.Tree_piece, piece.getNumber());
        }
        if (node instanceof Stencil stencil) {
            return NLS.bind(Messages.Tree_stencil, stencil.getNumber());
        }
        if (node instanceof Sheet sheet) {
            return NLS.bind(Messages.Tree_sheet, sheet.getNumber());
        }
        if (node instanceof Studio studio) {
            return NLS.bind(Messages.Tree_studio, orElse(studio.getName(), "")).strip();
        }
        if (node instanceof GroupNode group) {
            return group(group.kind());
        }
        return node instanceof Named named ? orElse(named.getName(), Messages.Tree_untitled) : String.valueOf(node);
    }

    private static String windowName(Window window) {
        String title = orElse(window.getTitle(), "");
        return title.isEmpty() ? window.getName() : window.getName() + "  " + title;
    }

    /** Beside the name, in the quieter colour; empty if there is nothing to say. */
    public String state(Object node) {
        if (node instanceof WindowNode window) {
            return windowState(window);
        }
        if (node instanceof Panel panel) {
            return panel.getArtwork().isEmpty() ? Messages.State_noArtwork : pieces(panel.getPieces().stream());
        }
        if (node instanceof DesignLayer layer) {
            String paint = layer.getPaint() == null ? Messages.State_noPaint : orElse(layer.getPaint().getName(), "");
            return paint + Messages.List_comma + MakingWords.of(states.get().of(layer)) + (layer.isByHand() ? Messages.List_comma + Messages.State_byHand : "");
        }
        if (node instanceof Piece piece) {
            return (piece.getGlass() == null ? "" : orElse(piece.getGlass().getName(), "") + Messages.List_comma) + MakingWords.of(states.get().of(piece))
                    + (piece.getProblems().isEmpty() ? "" : Messages.List_comma + Messages.State_hasProblems);
        }
        if (node instanceof Stencil stencil) {
            return lengths.get().size(stencil.getWidthMm(), stencil.getHeightMm()) + Messages.List_comma
                    + NLS.bind(Messages.State_prints, stencil.getPrints());
        }
        if (node instanceof Sheet sheet) {
            return orElse(sheet.getPaper(), "") + Messages.List_comma + NLS.bind(Messages.State_stencils, sheet.getPlacements().size());
        }
        if (node instanceof GroupNode group) {
            return String.valueOf(CommissionContent.members(group).size());
        }
        return stockState(node);
    }

    private String stockState(Object node) {
        if (node instanceof ScreenFrame frame) {
            return frame.getMesh() == null ? "" : orElse(frame.getMesh().getName(), "");
        }
        if (node instanceof Paint paint) {
            return orElse(paint.getFamily(), "");
        }
        if (node instanceof GlassStock glass) {
            return orElse(glass.getFamily(), "");
        }
        return node instanceof Kiln kiln ? lengths.get().size(kiln.getShelfWidthMm(), kiln.getShelfDepthMm()) : "";
    }

    private String windowState(WindowNode node) {
        if (open.get().map(opened -> !opened.isLoaded(node.name())).orElse(true)) {
            return "";
        }
        try {
            Optional<Window> window = window(node);
            if (window.isEmpty() || window.get().getPanels().stream().allMatch(panel -> panel.getArtwork().isEmpty())) {
                return Messages.State_noArtwork;
            }
            return pieces(window.get().getPanels().stream().flatMap(panel -> panel.getPieces().stream()));
        } catch (Refusal e) {
            return Messages.State_unreadable;
        }
    }

    private String pieces(Stream<Piece> all) {
        List<Piece> pieces = all.filter(piece -> !piece.isRetired()).toList();
        return pieces.isEmpty() ? Messages.State_notMade : MakingWords.of(states.get().onTheirWay(pieces));
    }

    /** Only if it has been read already: a name is no reason to read. */
    private Optional<Window> window(WindowNode node) {
        return open.get().filter(opened -> opened.isLoaded(node.name())).flatMap(opened -> opened.window(node.name()));
    }

    public static String role(LayerRole role) {
        return switch (role) {
            case CUTLINE -> Messages.Role_cutline;
            case TRACE -> Messages.Role_trace;
            case MATT -> Messages.Role_matt;
            case LETTERING -> Messages.Role_lettering;
            case STAIN -> Messages.Role_stain;
            case ENAMEL -> Messages.Role_enamel;
        };
    }

    private static String group(GroupNode.Kind kind) {
        return switch (kind) {
            case PIECES -> Messages.Tree_pieces;
            case SHEETS -> Messages.Tree_sheets;
            case FRAMES -> Messages.Tree_frames;
            case PAINTS -> Messages.Tree_paints;
            case GLASS -> Messages.Tree_glass;
            case KILNS -> Messages.Tree_kilns;
        };
    }

    static String orElse(String text, String other) {
        return text == null || text.isBlank() ? other : text;
    }
}
