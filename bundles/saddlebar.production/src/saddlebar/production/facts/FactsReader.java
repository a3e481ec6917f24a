package saddlebar.production.facts;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import saddlebar.model.commission.ArtworkReference;
import saddlebar.model.commission.Commission;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.JoinKind;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.PaperSize;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Printer;
import saddlebar.model.commission.ProcessSetting;
import saddlebar.model.commission.RoleAssignment;
import saddlebar.model.commission.ScreenFrame;
import saddlebar.model.commission.StencilRecipe;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.ToneCalibration;
import saddlebar.model.commission.ToneMode;
import saddlebar.model.commission.TonerSide;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.problem.Severity;
import saddlebar.stencil.mesh.Mesh;
import saddlebar.stencil.sheet.PrinterFit;
import saddlebar.stencil.tone.DrawnCurve;

/** Reads the facts out of the model. What cannot be made as it stands becomes a problem with its place, and the rest goes on. */
public final class FactsReader {
    /** What office laser printers leave white (common practice, no source), where the studio has no printer yet. */
    private static final double USUAL_MARGIN_MM = 4.3;
    private static final double USUAL_SHEET_GAP_MM = 5;

    private final Commission commission;
    private final Path folder;
    private final List<Problem> problems = new ArrayList<>();

    private FactsReader(Commission commission, Path folder) {
        this.commission = commission;
        this.folder = folder;
    }

    /**
     * @param windows names of the windows wanted; empty for all
     * @throws Refusal if a window of that name does not exist
     */
    public static CommissionFacts read(Commission commission, Path folder, List<String> windows) {
        return new FactsReader(commission, folder).read(windows);
    }

    private CommissionFacts read(List<String> wanted) {
        List<String> names = commission.getWindows().stream().map(Window::getName).toList();
        for (String name : wanted) {
            if (!names.contains(name)) {
                throw new Refusal(name, "the commission has no window of this name", "take one of " + String.join(", ", names));
            }
        }
        List<WindowFacts> windows = commission.getWindows().stream().filter(w -> wanted.isEmpty() || wanted.contains(w.getName())).map(this::window)
                .sorted(Comparator.comparing(WindowFacts::name)).toList();
        return new CommissionFacts(folder, orElse(commission.getTitle(), "Untitled"), orElse(commission.getNumber(), ""), papers(), printer(),
                commission.getSheetGapMm() > 0 ? commission.getSheetGapMm() : USUAL_SHEET_GAP_MM, windows, problems);
    }

    private List<PaperFacts> papers() {
        Studio studio = commission.getStudio();
        List<PaperFacts> papers = new ArrayList<>();
        if (studio != null) {
            double marginMm = studio.getPrinters().stream().mapToDouble(Printer::getMarginMm).max().orElse(USUAL_MARGIN_MM);
            for (PaperSize paper : studio.getPapers()) {
                if (commission.getPapers().isEmpty() ? paper.isInUse() : commission.getPapers().contains(paper.getName())) {
                    papers.add(new PaperFacts(paper.getName(), paper.getWidthMm(), paper.getHeightMm(), marginMm));
                }
            }
        }
        if (papers.isEmpty()) {
            tell("no-paper", commission.getTitle(), "no sheet size is in use, so no sheet can be laid out; name one, for instance letter or a4");
        }
        return papers;
    }

    /** The studio's first printer: the one that is meant where none is chosen. */
    private PrinterFacts printer() {
        Studio studio = commission.getStudio();
        if (studio == null || studio.getPrinters().isEmpty()) {
            return PrinterFacts.TRUE;
        }
        Printer printer = studio.getPrinters().get(0);
        try {
            PrinterFit fit = new PrinterFit(printer.getScaleX(), printer.getScaleY(), printer.getSkew());
            return new PrinterFacts(orElse(printer.getName(), ""), fit.acrossScale(), fit.downScale(), fit.skew());
        } catch (Refusal refusal) {
            throw new Refusal("printer " + printer.getName(), refusal.what(), refusal.remedy(), refusal);
        }
    }

    private WindowFacts window(Window window) {
        List<PanelFacts> panels = window.getPanels().stream().map(panel -> panel(window, panel)).toList();
        return new WindowFacts(window.getId(), window.getName(), orElse(window.getTitle(), ""), panels,
                window.getOpening() != null && window.getOpening().isInDoor());
    }

    private PanelFacts panel(Window window, Panel panel) {
        Optional<ArtworkReference> art = panel.getArtwork().stream().max(Comparator.comparingInt(ArtworkReference::getRevision));
        if (art.isEmpty()) {
            tell("no-artwork", window.getName(), "no artwork was brought yet; bring one");
        }
        String cutline = art.flatMap(a -> a.getRoles().stream().filter(r -> r.getRole() == LayerRole.CUTLINE).map(RoleAssignment::getArtLayer)
                .findFirst()).orElse("");
        if (art.isPresent() && cutline.isEmpty()) {
            tell("no-cutline", window.getName(), "no layer of the artwork is named as its cutline; bring it again with its role");
        }
        JoinKind join = panel.eIsSet(CommissionPackage.Literals.PANEL__JOIN) ? panel.getJoin() : commission.getJoin();
        double gapMm = panel.getGapMm() != null ? panel.getGapMm() : commission.getGapMm();
        List<PieceFacts> pieces = panel.getPieces().stream().filter(piece -> !piece.isRetired() && piece.getNet() != null).map(PieceFacts::of)
                .sorted(Comparator.comparingInt(PieceFacts::number)).toList();
        int highest = panel.getPieces().stream().mapToInt(Piece::getNumber).max().orElse(0);
        List<LayerFacts> layers = panel.getLayers().stream().filter(layer -> layer.getRole() != LayerRole.CUTLINE && !layer.isByHand())
                .sorted(Comparator.comparingInt(DesignLayer::getFiringOrder)).flatMap(layer -> layer(window, layer).stream()).toList();
        return new PanelFacts(panel.getId(), orElse(panel.getName(), ""),
                art.map(a -> new ArtFile(folder.resolve(a.getFile()), a.getFile(), a.getSha256(), a.getWidthMm())), cutline, join, gapMm, pieces,
                highest, orElse(panel.getContentKey(), ""), layers, CutFacts.of(panel));
    }

    private Optional<LayerFacts> layer(Window window, DesignLayer layer) {
        String where = window.getName() + " " + layer.getName();
        if (layer.getPaint() == null) {
            tell("no-paint", where, "the layer has no paint, so it gets no stencils; choose a paint");
            return Optional.empty();
        }
        if (layer.getRecipe() == null) {
            tell("no-recipe", where, "the layer has no stencil recipe, so it gets no stencils; give it one or mark it as made by hand");
            return Optional.empty();
        }
        Optional<ScreenFrame> frame = frame(layer);
        if (frame.isEmpty()) {
            tell("no-frame", where, "the studio has no screen frame for its mesh, so it gets no stencils; add a frame");
            return Optional.empty();
        }
        try {
            return Optional.of(new LayerFacts(layer.getId(), layer.getName(), layer.getRole(), layer.getArtLayer(), layer.getFace(),
                    layer.getPaint().getName(), layer.getPaint().getId(), frameFacts(frame.get()), layer.getBleedMm(), layer.getSightLine(),
                    layer.getSightLineMm(), recipe(layer, frame.get())));
        } catch (Refusal refusal) { // a recipe that was edited to nonsense stops its own layer only
            tell("bad-recipe", where, refusal.getMessage());
            return Optional.empty();
        }
    }

    /** The largest frame in use with the layer's mesh, or of any mesh if the layer names none. */
    private Optional<ScreenFrame> frame(DesignLayer layer) {
        return commission.getStudio() == null
                ? Optional.empty()
                : commission.getStudio().getFrames().stream().filter(frame -> !frame.isOutOfUse() && frame.getMesh() != null)
                        .filter(frame -> layer.getMesh() == null || frame.getMesh() == layer.getMesh())
                        .max(Comparator.comparingDouble((ScreenFrame frame) -> frame.getImageWidthMm() * frame.getImageHeightMm())
                                .thenComparing(ScreenFrame::getName, Comparator.reverseOrder()));
    }

    private static FrameFacts frameFacts(ScreenFrame frame) {
        return new FrameFacts(frame.getName(), frame.getMesh().getName(), frame.getImageWidthMm() - 2 * frame.getSqueegeeMarginMm(),
                frame.getImageHeightMm() - 2 * frame.getSqueegeeMarginMm());
    }

    private RecipeFacts recipe(DesignLayer layer, ScreenFrame frame) {
        StencilRecipe recipe = layer.getRecipe();
        Mesh mesh = new Mesh(frame.getMesh().getThreadsPerInch(), frame.getMesh().getThreadUm());
        double openMm = recipe.getOpenMm() != null ? recipe.getOpenMm() : mesh.finestDotUm() / 1000;
        double bridgeMm = recipe.getBridgeMm() != null ? recipe.getBridgeMm() : mesh.finestBridgeUm() / 1000;
        return new RecipeFacts(RecipeReader.screening(recipe), RecipeReader.courseLayer(recipe).orElse(""), tone(layer, frame), recipe.getProcessKey(),
                tonerSide(recipe.getProcessKey()), recipe.getMirror(), openMm, bridgeMm, RecipeReader.mends(recipe), recipe.getTrapMm());
    }

    private ToneFacts tone(DesignLayer layer, ScreenFrame frame) {
        StencilRecipe recipe = layer.getRecipe();
        List<Double> points = new ArrayList<>();
        Optional<ToneCalibration> calibration = CalibrationChoice.of(layer, Optional.of(frame.getMesh()), Optional.ofNullable(commission.getStudio()));
        calibration.ifPresent(found -> CalibrationChoice.readings(found).forEach(reading -> {
            points.add(reading.nominal());
            points.add(reading.effective());
        }));
        if (recipe.getToneMode() == ToneMode.CALIBRATED && calibration.isEmpty()) {
            problems.add(Problem.of("no-calibration", Severity.NOTE, layer.getName(), "its recipe asks for calibrated tone, but the studio has measured no"
                    + " wedge of its paint, mesh and method; print one with saddlebar wedge, and keep its readings with saddlebar tone --keep"));
        }
        OptionalDouble to = recipe.getToneTo() == null ? OptionalDouble.empty() : OptionalDouble.of(recipe.getToneTo());
        String curve = DrawnCurve.parse(recipe.getCurve()).map(DrawnCurve::words).orElse("");
        return new ToneFacts(recipe.getToneMode(), recipe.getToneFrom(), to, curve, points, recipe.getEndLow(), recipe.getEndHigh(), recipe.getEndRule());
    }

    private TonerSide tonerSide(String processKey) {
        Optional<ProcessSetting> setting = commission.getStudio().getProcesses().stream().filter(p -> processKey.equals(p.getProcessKey())).findFirst();
        if (setting.isEmpty() || !setting.get().isConfirmed()) {
            String told = "nobody has said yet which side of the mesh the toner touches in " + processKey
                    + "; the print side is taken. Print one sheet on paper, try its reading mark against a frame, and say it once: make with --toner-side print or"
                    + " squeegee";
            if (problems.stream().noneMatch(problem -> problem.message().equals(told))) {
                problems.add(Problem.of("toner-side-unconfirmed", Severity.NOTE, processKey, told));
            }
        }
        return setting.map(ProcessSetting::getTonerSide).orElse(TonerSide.PRINT);
    }

    private void tell(String code, String where, String message) {
        problems.add(Problem.of(code, Severity.WARNING, where, message));
    }

    private static String orElse(String text, String other) {
        return text == null || text.isBlank() ? other : text;
    }

}
