package saddlebar.production.colourway;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.util.EcoreUtil;

import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.GlassChoice;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;

/**
 * Changes of a window's colourways. A colourway that was approved is frozen: whatever would change it is refused in a sentence. On the thread that owns the
 * model; saves nothing.
 */
public final class Colourways {
    private static final int LONGEST_NAME = 80;

    private Colourways() {
    }

    /** Pieces that are in the drawing now, in all panels, by number. */
    public static List<Piece> pieces(Window window) {
        return window.getPanels().stream().flatMap(panel -> panel.getPieces().stream()).filter(piece -> !piece.isRetired())
                .sorted((one, other) -> Integer.compare(one.getNumber(), other.getNumber())).toList();
    }

    /** Layers that are painted, in the order of firing. */
    public static List<DesignLayer> paintedLayers(Window window) {
        return window.getPanels().stream().flatMap(panel -> panel.getLayers().stream())
                .filter(layer -> layer.getRole() != saddlebar.model.commission.LayerRole.CUTLINE)
                .sorted((one, other) -> Integer.compare(one.getFiringOrder(), other.getFiringOrder())).toList();
    }

    /** @throws Refusal if the window has none of that name; whatever the case of its letters */
    public static Colourway named(Window window, String name) {
        return find(window, name).orElseThrow(() -> new Refusal(window.getName(), "it has no colourway '" + name.strip() + "'",
                window.getColourways().isEmpty() ? "make one first" : "it has " + String.join(", ", names(window))));
    }

    private static Optional<Colourway> find(Window window, String name) {
        return window.getColourways().stream().filter(colourway -> name(colourway).equalsIgnoreCase(name.strip())).findFirst();
    }

    private static List<String> names(Window window) {
        return window.getColourways().stream().map(Colourways::name).toList();
    }

    public static String name(Colourway colourway) {
        return colourway.getName() == null ? "" : colourway.getName();
    }

    /** What a piece is cut from in a colourway: what was chosen there, else the piece's usual glass. */
    public static Optional<GlassStock> glass(Piece piece, Colourway colourway) {
        return choice(piece, colourway).map(GlassChoice::getGlass).or(() -> Optional.ofNullable(piece.getGlass()));
    }

    private static Optional<GlassChoice> choice(Piece piece, Colourway colourway) {
        return piece.getChoices().stream().filter(choice -> choice.getColourway() == colourway).findFirst();
    }

    /** A new one in which nothing is chosen yet; a window's first one is the one that is made. */
    public static Colourway create(Window window, String name) {
        Colourway colourway = CommissionFactory.eINSTANCE.createColourway();
        colourway.setId(java.util.UUID.randomUUID().toString());
        colourway.setName(requireFree(window, name, null));
        window.getColourways().add(colourway);
        if (window.getChosen() == null) {
            window.setChosen(colourway);
        }
        return colourway;
    }

    /** A new one that begins as another; the copy of a frozen one is not frozen. */
    public static Colourway copy(Colourway from, String name) {
        Window window = from.getWindow();
        Colourway copy = create(window, name);
        for (Piece piece : pieces(window)) {
            choice(piece, from).map(GlassChoice::getGlass).ifPresent(glass -> choose(piece, copy, glass));
        }
        return copy;
    }

    public static void rename(Colourway colourway, String name) {
        requireOpen(colourway);
        colourway.setName(requireFree(colourway.getWindow(), name, colourway));
    }

    /** Takes it away with all its choices. If it was the one that is made, the first of the others is. */
    public static void delete(Colourway colourway) {
        requireOpen(colourway);
        Window window = colourway.getWindow();
        for (GlassChoice choice : List.copyOf(colourway.getChoices())) {
            choice.setPiece(null);
        }
        boolean chosen = window.getChosen() == colourway;
        EcoreUtil.remove(colourway);
        if (chosen) {
            window.setChosen(window.getColourways().isEmpty() ? null : window.getColourways().get(0));
        }
    }

    /** Says which one is made. */
    public static void make(Colourway colourway) {
        colourway.getWindow().setChosen(colourway);
    }

    /**
     * Pieces are cut from a glass.
     *
     * @param glass empty: from what the piece is usually cut from
     */
    public static void cut(Colourway colourway, List<Piece> pieces, Optional<GlassStock> glass) {
        requireOpen(colourway);
        for (Piece piece : pieces) {
            if (glass.isPresent()) {
                choose(piece, colourway, glass.get());
            } else {
                choice(piece, colourway).ifPresent(Colourways::forget);
            }
        }
    }

    private static void choose(Piece piece, Colourway colourway, GlassStock glass) {
        GlassChoice choice = choice(piece, colourway).orElseGet(() -> {
            GlassChoice fresh = CommissionFactory.eINSTANCE.createGlassChoice();
            colourway.getChoices().add(fresh);
            fresh.setPiece(piece);
            return fresh;
        });
        choice.setGlass(glass);
    }

    private static void forget(GlassChoice choice) {
        choice.setPiece(null);
        choice.setColourway(null);
    }

    /**
     * A layer is painted with a paint, in all colourways.
     *
     * @throws Refusal if a colourway of the window is approved: its look holds for the paint too
     */
    public static void paint(DesignLayer layer, Optional<Paint> paint) {
        Window window = layer.getPanel().getWindow();
        approved(window).ifPresent(frozen -> {
            throw frozen(frozen, "its paints stay as they are");
        });
        layer.setPaint(paint.orElse(null));
    }

    /** The frozen one, if any. */
    public static Optional<Colourway> approved(Window window) {
        return window.getColourways().stream().filter(Colourway::isApproved).findFirst();
    }

    /** Every choice written down, so that no later change of a piece's usual glass changes it. */
    static void writeOut(Colourway colourway) {
        for (Piece piece : pieces(colourway.getWindow())) {
            glass(piece, colourway).ifPresent(glass -> choose(piece, colourway, glass));
        }
    }

    static void requireOpen(Colourway colourway) {
        if (colourway.isApproved()) {
            throw frozen(colourway, "it stays as it is");
        }
    }

    private static Refusal frozen(Colourway colourway, String so) {
        return new Refusal(colourway.getWindow().getName() + " " + name(colourway), "it was approved"
                + (colourway.getApprovedOn() == null ? "" : " on " + colourway.getApprovedOn()) + ": " + so,
                "copy it and change the copy, or withdraw the approval");
    }

    private static String requireFree(Window window, String name, Colourway own) {
        String clean = name == null ? "" : name.strip();
        if (clean.isEmpty() || clean.length() > LONGEST_NAME || clean.chars().anyMatch(Character::isISOControl)) {
            throw new Refusal(window.getName(), "a colourway needs a name", "give 1 to " + LONGEST_NAME + " letters");
        }
        Stream<Colourway> others = window.getColourways().stream().filter(other -> other != own);
        if (others.anyMatch(other -> name(other).equalsIgnoreCase(clean))) {
            throw new Refusal(window.getName(), "it has a colourway '" + clean + "' already", "give another name");
        }
        return clean;
    }
}
