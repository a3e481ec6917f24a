package saddlebar.ui.screening;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import org.eclipse.emf.ecore.EObject;

import saddlebar.model.commission.ArtworkReference;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.Mesh;
import saddlebar.model.commission.MirrorRule;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.ProcessSetting;
import saddlebar.model.commission.ScreenFrame;
import saddlebar.model.commission.Stencil;
import saddlebar.model.commission.StencilRecipe;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.ToneCalibration;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.production.facts.RecipeReader;
import saddlebar.stencil.process.Face;
import saddlebar.stencil.process.StencilProcesses;
import saddlebar.stencil.process.TonerSide;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.production.light.WindowSketch.ArtPlace;

/** What belongs to a layer when it becomes dots: its artwork, its frame and mesh, which side its toner lies on. On the model's thread. */
public final class LayerScreen {
    private final OpenCommission open;
    private final DesignLayer layer;

    public LayerScreen(OpenCommission open, DesignLayer layer) {
        this.open = open;
        this.layer = layer;
    }

    /** The layer that a thing leads to: its own, that of a stencil, the matt of a piece, a panel, a window; else the first that has a recipe. */
    public static Optional<DesignLayer> layer(Object thing) {
        if (thing instanceof DesignLayer layer) {
            return Optional.of(layer);
        }
        if (thing instanceof Stencil stencil) {
            return Optional.ofNullable(stencil.getLayer());
        }
        if (thing instanceof Piece piece && piece.eContainer() instanceof Panel panel) {
            return layer(panel);
        }
        if (thing instanceof Panel panel) {
            return panel.getLayers().stream().filter(layer -> layer.getRecipe() != null && layer.getRole() != LayerRole.CUTLINE)
                    .min(Comparator.comparing((DesignLayer layer) -> layer.getRole() != LayerRole.MATT));
        }
        if (thing instanceof Window window) {
            return window.getPanels().stream().flatMap(panel -> layer(panel).stream()).findFirst();
        }
        return Optional.empty();
    }

    /** The frame it is sized for when made: the largest in use with the layer's mesh. */
    public Optional<ScreenFrame> frame() {
        return Optional.ofNullable(open.commission().getStudio()).flatMap(studio -> largest(studio, frame -> layer.getMesh() == null
                || frame.getMesh() == layer.getMesh()));
    }

    static Optional<ScreenFrame> largestFrame(Studio studio) {
        return largest(studio, frame -> true);
    }

    private static Optional<ScreenFrame> largest(Studio studio, Predicate<ScreenFrame> wanted) {
        return studio.getFrames().stream().filter(frame -> !frame.isOutOfUse() && frame.getMesh() != null).filter(wanted)
                .max(Comparator.comparingDouble((ScreenFrame frame) -> frame.getImageWidthMm() * frame.getImageHeightMm())
                        .thenComparing(ScreenFrame::getName, Comparator.reverseOrder()));
    }

    /** What the studio has found out about the recipe's process, if anything. */
    public Optional<ProcessSetting> process() {
        return open.commission().getStudio() == null || layer.getRecipe() == null
                ? Optional.empty()
                : open.commission().getStudio().getProcesses().stream().filter(p -> layer.getRecipe().getProcessKey().equals(p.getProcessKey())).findFirst();
    }

    /** The calibration that its recipe uses, if it asks for one and the studio has it. */
    public Optional<ToneCalibration> calibration() {
        return RecipeReading.kept(layer.getRecipe());
    }

    /** Whether left and right are exchanged on the sheet. */
    public boolean mirrored() {
        StencilRecipe recipe = layer.getRecipe();
        if (recipe.getMirror() != MirrorRule.AUTO) {
            return recipe.getMirror() == MirrorRule.YES;
        }
        TonerSide side = process().map(setting -> TonerSide.valueOf(setting.getTonerSide().name())).orElse(TonerSide.PRINT);
        return StencilProcesses.ownProcesses().process(recipe.getProcessKey()).mirrored(side, Face.valueOf(layer.getFace().name()));
    }

    /** Its mesh: its own, else that of the frame it is sized for. */
    public Optional<Mesh> mesh() {
        return Optional.ofNullable(layer.getMesh()).or(() -> frame().map(ScreenFrame::getMesh)).filter(mesh -> mesh.getThreadsPerInch() >= 1);
    }

    private List<Double> bandsMm() {
        return Optional.ofNullable(open.commission().getStudio()).flatMap(studio -> studio.getPrinters().stream().findFirst())
                .map(printer -> List.copyOf(printer.getBandPeriodsMm())).orElse(List.of());
    }

    /** What a study of mesh and ruling needs; empty where there is no mesh, or where mesh or recipe cannot be used as they stand. */
    Optional<MeshStudy.Ask> meshAsk() {
        try {
            double turnDeg = frame().map(ScreenFrame::getMeshTurnDeg).orElse(0.0);
            return layer.getRecipe() == null
                    ? Optional.empty()
                    : mesh().map(found -> MeshStudy.Ask.of(found.getThreadsPerInch(), found.getThreadUm(), turnDeg,
                            RecipeReading.screening(layer.getRecipe())).withBands(bandsMm())).filter(ask -> RecipeReading.isKnown(ask.screening().method()));
        } catch (Refusal e) {
            return Optional.empty();
        }
    }

    /**
     * What a preview needs; empty if the layer has no artwork or no recipe.
     *
     * @param place on the panel's page; empty: where there is most to see
     * @throws saddlebar.model.problem.Refusal if the recipe cannot be used as it stands
     */
    public Optional<PreviewAsk> ask(Optional<PreviewAsk.PlaceMm> place) {
        EObject holder = layer.eContainer();
        if (!(holder instanceof Panel panel) || layer.getRecipe() == null || layer.getArtLayer() == null || layer.getArtLayer().isBlank()) {
            return Optional.empty();
        }
        Optional<ArtworkReference> art = panel.getArtwork().stream().max(Comparator.comparingInt(ArtworkReference::getRevision));
        return art.map(found -> new PreviewAsk(new ArtPlace(open.path().resolve(found.getFile()), found.getWidthMm(), Math.max(1, found.getPage())),
                layer.getArtLayer(), RecipeReading.screening(layer.getRecipe()), RecipeReader.courseLayer(layer.getRecipe()),
                RecipeReading.tone(layer.getRecipe()), layer.getRecipe().getProcessKey(), mirrored(), box(panel), RecipeReader.mends(layer.getRecipe()),
                limits(), place));
    }

    /** Finest opening and bridge: the recipe's, else the mesh's. */
    public PreviewAsk.LimitsMm limits() {
        StencilRecipe recipe = layer.getRecipe();
        Optional<saddlebar.stencil.mesh.Mesh> woven = mesh().map(found -> new saddlebar.stencil.mesh.Mesh(found.getThreadsPerInch(), found.getThreadUm()));
        double openMm = recipe.getOpenMm() != null ? recipe.getOpenMm() : woven.map(found -> found.finestDotUm() / 1000).orElse(0.0);
        double bridgeMm = recipe.getBridgeMm() != null ? recipe.getBridgeMm() : woven.map(found -> found.finestBridgeUm() / 1000).orElse(0.0);
        return new PreviewAsk.LimitsMm(openMm, bridgeMm);
    }

    private static Optional<PreviewAsk.Box> box(Panel panel) {
        List<double[]> boxes = panel.getPieces().stream().filter(piece -> !piece.isRetired() && piece.getNet() != null && !piece.getNet().isEmpty())
                .map(piece -> piece.getNet().boundsMm()).toList();
        return boxes.stream().reduce((a, b) -> new double[] {Math.min(a[0], b[0]), Math.min(a[1], b[1]), Math.max(a[2], b[2]), Math.max(a[3], b[3])})
                .map(box -> new PreviewAsk.Box(box[0], box[1], box[2], box[3]));
    }
}
