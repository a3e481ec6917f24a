package saddlebar.production.light;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import saddlebar.model.art.OutlineMm;
import saddlebar.model.commission.ArtworkReference;
import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.Commission;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.GlassChoice;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.JoinKind;
import saddlebar.model.commission.JoinStock;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.RoleAssignment;
import saddlebar.model.commission.StencilRecipe;
import saddlebar.model.commission.ToneMode;
import saddlebar.model.commission.Window;
import saddlebar.production.facts.CutFacts;
import saddlebar.production.light.WindowSketch.ArtPlace;
import saddlebar.production.light.WindowSketch.LayerSketch;
import saddlebar.production.light.WindowSketch.PanelSketch;
import saddlebar.production.light.WindowSketch.PieceSketch;

/** Takes a window's sketch out of the model. On the thread that owns the model; reads no file. */
public final class WindowSketcher {
    /** What 7/32 in foil, folded about 3 mm glass, leaves on each face (common practice, no source). */
    private static final double USUAL_FOIL_COVER_MM = 1.3;
    /** Half of a 6 mm face less half of the heart (common practice, no source). */
    private static final double USUAL_CAME_FACE_MM = 6;
    private static final double USUAL_GLASS_MM = 3;
    private static final double MOST_COVER_MM = 20;

    private final Path folder;
    private final Commission commission;

    /** @param folder the commission's folder, from which artwork is named */
    public WindowSketcher(Path folder, Commission commission) {
        this.folder = folder;
        this.commission = commission;
    }

    public WindowSketch sketch(Window window) {
        List<String> names = window.getColourways().stream().map(Colourway::getName).map(name -> name == null ? "" : name).toList();
        return new WindowSketch(orEmpty(window.getId()), orEmpty(window.getName()), window.getPanels().stream().map(p -> panel(window, p)).toList(),
                names.isEmpty() ? List.of("") : names);
    }

    private PanelSketch panel(Window window, Panel panel) {
        Optional<ArtworkReference> art = panel.getArtwork().stream().max(Comparator.comparingInt(ArtworkReference::getRevision));
        String cutline = art.flatMap(a -> a.getRoles().stream().filter(role -> role.getRole() == LayerRole.CUTLINE)
                .map(RoleAssignment::getArtLayer).findFirst()).orElse("");
        boolean ownJoin = panel.eIsSet(CommissionPackage.Literals.PANEL__JOIN);
        boolean lead = (ownJoin ? panel.getJoin() : commission.getJoin()) == JoinKind.LEAD;
        double gapMm = panel.getGapMm() != null ? panel.getGapMm() : commission.getGapMm();
        List<PieceSketch> pieces = panel.getPieces().stream().filter(piece -> !piece.isRetired() && piece.getNet() != null && !piece.getNet().isEmpty())
                .sorted(Comparator.comparingInt(Piece::getNumber)).map(piece -> piece(window, piece)).toList();
        List<LayerSketch> layers = panel.getLayers().stream().filter(layer -> layer.getRole() != LayerRole.CUTLINE)
                .filter(layer -> layer.getArtLayer() != null && !layer.getArtLayer().isBlank())
                .sorted(Comparator.comparingInt(DesignLayer::getFiringOrder)).map(WindowSketcher::layer).toList();
        Optional<OutlineMm> outline = Optional.ofNullable(panel.getOutline()).filter(made -> !made.isEmpty());
        return new PanelSketch(panel.getXMm(), panel.getYMm(), outline,
                art.map(a -> new ArtPlace(folder.resolve(a.getFile()), a.getWidthMm(), Math.max(1, a.getPage()))), cutline, lead, gapMm,
                coverMm(panel.getJoinStock(), lead, gapMm), pieces, layers, orEmpty(panel.getId()), CutFacts.of(panel));
    }

    private static double coverMm(JoinStock stock, boolean lead, double gapMm) {
        double cover = USUAL_FOIL_COVER_MM;
        if (lead) {
            cover = ((stock != null && stock.getFaceMm() > 0 ? stock.getFaceMm() : USUAL_CAME_FACE_MM) - gapMm) / 2;
        } else if (stock != null && stock.getFaceMm() > 0) {
            cover = (stock.getFaceMm() - gapMm) / 2;
        } else if (stock != null && stock.getWidthMm() > USUAL_GLASS_MM) {
            cover = (stock.getWidthMm() - USUAL_GLASS_MM) / 2;
        }
        return Math.max(0, Math.min(MOST_COVER_MM, cover));
    }

    private static PieceSketch piece(Window window, Piece piece) {
        List<GlassLook> looks = new ArrayList<>();
        for (Colourway colourway : window.getColourways()) {
            looks.add(glass(piece.getChoices().stream().filter(choice -> choice.getColourway() == colourway).map(GlassChoice::getGlass)
                    .filter(glass -> glass != null).findFirst().orElse(piece.getGlass())));
        }
        if (looks.isEmpty()) {
            looks.add(glass(piece.getGlass()));
        }
        return new PieceSketch(piece.getId(), piece.getNumber(), piece.getFace() == null ? piece.getNet() : piece.getFace(), piece.getNet(),
                piece.getLabelXMm(), piece.getLabelYMm(), piece.getInradiusMm(), looks);
    }

    private static GlassLook glass(GlassStock stock) {
        if (stock == null) {
            return GlassLook.UNCHOSEN;
        }
        return look(stock);
    }

    /** How a glass of the studio's stock looks. */
    public static GlassLook look(GlassStock stock) {
        double thickness = usable(stock.getThicknessMm()) ? stock.getThicknessMm() : USUAL_GLASS_MM;
        double measured = stock.getMeasuredMm() != null && usable(stock.getMeasuredMm()) ? stock.getMeasuredMm() : thickness;
        return new GlassLook(orEmpty(stock.getName()), ColourText.rgb(stock.getColour()).orElse(GlassLook.UNCHOSEN.rgb()),
                new SheetLook(measured, thickness, orEmpty(stock.getTransmittance())));
    }

    private static boolean usable(double mm) {
        return mm >= 0.1 && mm <= 100;
    }

    private static LayerSketch layer(DesignLayer layer) {
        StencilRecipe recipe = layer.getRecipe();
        boolean codeValues = recipe != null && recipe.getToneMode() == ToneMode.LINEAR;
        OptionalDouble to = recipe == null || recipe.getToneTo() == null ? OptionalDouble.empty() : OptionalDouble.of(recipe.getToneTo());
        String name = layer.getName() == null || layer.getName().isBlank() ? layer.getRole().getLiteral() : layer.getName();
        return new LayerSketch(orEmpty(layer.getId()), name, layer.getArtLayer(), paint(layer), film(layer), codeValues,
                recipe == null ? 0 : recipe.getToneFrom(), to);
    }

    /** By the paint's colour, else by its transmittance, else as such a layer usually looks. */
    private static PaintLook paint(DesignLayer layer) {
        Paint paint = layer.getPaint();
        if (paint != null) {
            Optional<PaintLook> known = ColourText.rgb(paint.getColour()).map(PaintLook::ofRgb);
            if (known.isPresent()) {
                return known.get();
            }
            if (paint.getSolidTransmittance() != null && paint.getSolidTransmittance() >= 0 && paint.getSolidTransmittance() <= 1) {
                double through = paint.getSolidTransmittance();
                return new PaintLook(through, through, through);
            }
        }
        return switch (layer.getRole()) {
            case STAIN -> new PaintLook(0.95, 0.62, 0.10);
            case MATT -> PaintLook.ofRgb(0x6B5444);
            case ENAMEL -> new PaintLook(0.5, 0.5, 0.5);
            default -> PaintLook.ofRgb(0x1E1713);
        };
    }

    private static FilmLook film(DesignLayer layer) {
        Paint paint = layer.getPaint();
        boolean coloured = paint != null && (ColourText.rgb(paint.getColour()).isPresent() || paint.getSolidTransmittance() != null);
        return new FilmLook(layer.getRole() == LayerRole.STAIN && !coloured, paint == null ? "" : orEmpty(paint.getTransmittance()));
    }

    private static String orEmpty(String text) {
        return text == null ? "" : text;
    }
}
