package saddlebar.production.make;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Callable;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

import org.locationtech.jts.geom.Polygon;

import saddlebar.artwork.ArtworkReaders;
import saddlebar.cartoon.Cartoon;
import saddlebar.cartoon.CartoonPiece;
import saddlebar.cartoon.CutLimits;
import saddlebar.cartoon.Relief;
import saddlebar.cartoon.ReliefCuts;
import saddlebar.cartoon.mend.Mend;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.problem.Severity;
import saddlebar.model.work.Work;
import saddlebar.production.facts.ArtFile;
import saddlebar.production.facts.CommissionFacts;
import saddlebar.production.facts.CommissionFacts.PlacedPanel;
import saddlebar.production.facts.CutFacts;
import saddlebar.production.facts.LayerFacts;
import saddlebar.production.facts.WindowFacts;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.process.StencilProcesses;

/**
 * The main job: everything under {@code made/} from what the commission holds, and only what has changed. Each thing has a key, the hash of all it is
 * made from; a thing whose key and file are as they were is kept. The files do not depend on how many hands there are. Stopped or failed, every file
 * is whole: the new one, the old one, or none; what was finished is kept by the next making.
 */
@Component(service = Making.class)
public final class Making {
    /** Folder of made things within the commission. */
    public static final String FOLDER = "made";
    /** Units of work that {@link #make} tells in all. */
    public static final int WORK_UNITS = 1000;
    private static final int PIECES_SHARE = 50;
    private static final int PLAN_SHARE = 150;
    private static final int STENCILS_SHARE = 500;
    private static final int SHEETS_SHARE = 280;
    private static final String SOFTWARE = "Saddlebar 1";

    private final ArtworkReaders readers;
    private final ScreeningMethods methods;
    private final StencilProcesses processes;

    @Activate
    public Making(@Reference ArtworkReaders readers, @Reference ScreeningMethods methods, @Reference StencilProcesses processes) {
        this.readers = readers;
        this.methods = methods;
        this.processes = processes;
    }

    /**
     * Makes what is asked for. Changes no model and writes no record: {@link MakeBook} does, with the result.
     *
     * @param commission all windows of the commission, also those that are not asked for: what they share is planned over all
     * @param work       told {@link #WORK_UNITS}
     * @throws Refusal if a window is asked for that is not there
     */
    public MakeResult make(CommissionFacts commission, MakeRequest request, Work work) throws IOException {
        requireWindows(commission, request);
        Path made = commission.folder().resolve(FOLDER);
        MadeIndex index = MadeIndex.read(made);
        try (OpenArtworks artworks = new OpenArtworks(readers); Crew crew = new Crew(request.hands())) {
            return new Run(commission, request, work, made, index, artworks, crew).all();
        } finally {
            index.write(); // also what was finished before a stop
        }
    }

    private static void requireWindows(CommissionFacts commission, MakeRequest request) {
        List<String> names = commission.windows().stream().map(WindowFacts::name).toList();
        for (String name : request.windows()) {
            if (!names.contains(name)) {
                throw new Refusal(name, "the commission has no window of this name",
                        names.isEmpty() ? "bring artwork for it first" : "take one of " + String.join(", ", names));
            }
        }
    }

    /** Pieces of one panel, for whoever brings artwork and needs them at once. */
    public PanelPieces pieces(PlacedPanel panel, Work work) {
        try (OpenArtworks artworks = new OpenArtworks(readers)) {
            return new PieceStep(artworks).run(panel, false, work);
        }
    }

    /** What could be mended in the cutline of one panel, beside what was agreed to. */
    public List<Mend> mends(PlacedPanel panel, Work work) throws IOException {
        OpenArtworks.requireAsBrought(panel.panel().art().orElseThrow());
        try (OpenArtworks artworks = new OpenArtworks(readers)) {
            return new PieceStep(artworks).proposals(panel.panel(), work);
        }
    }

    /** All that can be mended in the cutline of one panel, with what can be mended then, in the order in which it is done. */
    public List<Mend> allMends(PlacedPanel panel, Work work) throws IOException {
        OpenArtworks.requireAsBrought(panel.panel().art().orElseThrow());
        try (OpenArtworks artworks = new OpenArtworks(readers)) {
            return new PieceStep(artworks).allMends(panel.panel(), work);
        }
    }

    /** What is wrong with the artwork, the cutline and how the layers of one panel meet, found anew. */
    public List<Problem> problemsOf(PlacedPanel panel, Work work) throws IOException {
        ArtFile art = panel.panel().art().orElseThrow();
        OpenArtworks.requireAsBrought(art);
        try (OpenArtworks artworks = new OpenArtworks(readers)) {
            List<Problem> problems = new ArrayList<>(artworks.warnings(art));
            PanelPieces pieces = new PieceStep(artworks).run(panel, true, work);
            pieces.problems().forEach(problem -> problems.add(placed(panel.label(), problem)));
            problems.addAll(new LayerRegistration(artworks).problems(pieces, work));
            return problems;
        }
    }

    private static Problem placed(String where, Problem problem) {
        return new Problem(problem.code(), problem.severity(), problem.where().isEmpty() ? where : where + " " + problem.where(), problem.at(),
                problem.message());
    }

    /** One making, from pieces to lists. */
    private final class Run {
        private final CommissionFacts commission;
        private final MakeRequest request;
        private final Work work;
        private final Path made;
        private final MadeIndex index;
        private final OpenArtworks artworks;
        private final Crew crew;
        private final List<Problem> problems = new ArrayList<>();
        private final List<MadeThing> fresh = new ArrayList<>();
        private int kept;

        Run(CommissionFacts commission, MakeRequest request, Work work, Path made, MadeIndex index, OpenArtworks artworks, Crew crew) {
            this.commission = commission;
            this.request = request;
            this.work = work;
            this.made = made;
            this.index = index;
            this.artworks = artworks;
            this.crew = crew;
            problems.addAll(commission.problems());
        }

        MakeResult all() throws IOException {
            List<PanelPieces> panels = pieces();
            List<MadeList> lists = new ArrayList<>(drawings(panels));
            List<MadeStencil> stencils = List.of();
            List<MadeSheet> sheets = List.of();
            if (request.until().reaches(Stage.STENCILS)) {
                StencilPlanning.Planned planned = plan(panels);
                problems.addAll(planned.problems());
                longPieces(planned.stencils());
                stencils = stencils(planned.stencils());
                if (request.until().reaches(Stage.SHEETS)) {
                    sheets = sheets(planned.stencils(), stencils);
                }
                if (request.until().reaches(Stage.CARDS)) {
                    lists.addAll(cards(panels, planned.stencils(), stencils, sheets));
                }
            }
            return new MakeResult(fresh, kept, problems, panels, stencils, sheets, lists, index);
        }

        private List<PanelPieces> pieces() throws IOException {
            List<PlacedPanel> placed = commission.panels().filter(p -> p.panel().art().isPresent() && !p.panel().cutlineLayer().isEmpty()).toList();
            for (PlacedPanel panel : placed) {
                OpenArtworks.requireAsBrought(panel.panel().art().orElseThrow());
            }
            PieceStep step = new PieceStep(artworks);
            Work ours = work.part(PIECES_SHARE, Math.max(1, 100L * placed.size()));
            List<Callable<PanelPieces>> jobs = new ArrayList<>();
            placed.forEach(panel -> jobs.add(() -> step.run(panel, request.afresh() && request.wants(panel.window().name()), ours)));
            List<PanelPieces> panels = crew.all(jobs);
            for (PanelPieces panel : panels) {
                panel.problems().forEach(problem -> problems.add(placed(panel.placed().label(), problem)));
            }
            return panels;
        }

        /** The cutline of each panel with its numbers, at true size. */
        private List<MadeList> drawings(List<PanelPieces> panels) throws IOException {
            ListStep step = new ListStep(made, index);
            List<MadeList> drawn = new ArrayList<>();
            for (PanelPieces panel : panels) {
                if (request.wants(panel.placed().window().name())) {
                    String file = "pieces/" + FileNames.of(panel.placed().label()) + "-pieces.svg";
                    String text = CartoonSvg.text(panel.placed().label() + " " + panel.placed().window().title(), shapes(panel), List.of(), reliefs(panel));
                    enter(step.write("pieces", file, text, request.afresh()), drawn);
                }
            }
            return drawn;
        }

        private List<CartoonSvg.Shape> shapes(PanelPieces panel) {
            if (panel.cartoon().isPresent()) {
                Cartoon cartoon = panel.cartoon().get();
                return cartoon.pieces().stream().map(Making::shape).toList();
            }
            return panel.placed().panel().pieces().stream()
                    .map(piece -> new CartoonSvg.Shape(piece.number(), Outlines.polygon(piece.glass()), piece.label(), piece.inradiusMm())).toList();
        }

        /** From the form that the model holds, as the shapes are. */
        private List<Relief> reliefs(PanelPieces panel) {
            CutFacts cut = panel.placed().panel().cut();
            Map<Integer, Polygon> faces = new TreeMap<>();
            panel.cartoon().ifPresentOrElse(
                    cartoon -> cartoon.pieces().forEach(piece -> faces.put(piece.number(), Outlines.polygon(Outlines.outline(piece.face())))),
                    () -> panel.placed().panel().pieces().forEach(piece -> faces.put(piece.number(), Outlines.polygon(piece.face()))));
            List<Relief> reliefs = new ArrayList<>();
            faces.forEach((number, face) -> reliefs.addAll(ReliefCuts.of(number, face, cut.limits().getOrDefault(number, CutLimits.commonPractice()))));
            return reliefs;
        }

        private StencilPlanning.Planned plan(List<PanelPieces> panels) throws IOException {
            List<PaintedLayer> layers = new ArrayList<>();
            for (PanelPieces panel : panels) {
                ArtFile art = panel.placed().panel().art().orElseThrow();
                for (LayerFacts layer : panel.placed().panel().layers()) {
                    layers.add(new PaintedLayer(panel.placed(), layer, art, panel.pieces(), panel.key()));
                }
            }
            StencilPlanning planning = new StencilPlanning(made, commission.papers(), artworks, crew);
            return planning.plan(layers, request.afresh(), work.part(PLAN_SHARE, Math.max(1, layers.size())));
        }

        private void longPieces(List<PlannedLayerStencil> planned) {
            Set<String> seen = new HashSet<>();
            planned.forEach(stencil -> {
                for (int spot = 0; spot < stencil.pieces().size(); spot++) {
                    for (String label : stencil.alike().get(spot)) {
                        if (seen.add(label)) {
                            LongPieces.caution(label, stencil.pieces().get(spot).glass()).ifPresent(problems::add);
                        }
                    }
                }
            });
        }

        private List<MadeStencil> stencils(List<PlannedLayerStencil> planned) throws IOException {
            StencilStep step = new StencilStep(made, index, artworks, methods, processes, SOFTWARE);
            List<PlannedLayerStencil> wanted = planned.stream().filter(s -> request.wants(s.layer().placed().window().name())).toList();
            long rows = wanted.stream().mapToLong(s -> s.place().heightPx()).sum();
            Work ours = work.part(STENCILS_SHARE, Math.max(1, rows * StencilStep.UNITS_A_ROW));
            List<Callable<MadeStencil>> jobs = new ArrayList<>();
            wanted.forEach(stencil -> jobs.add(() -> step.run(stencil, request.afresh(), ours)));
            List<MadeStencil> stencils = crew.all(jobs);
            Set<String> files = new HashSet<>();
            planned.forEach(stencil -> files.add(stencil.file() + ".tif"));
            index.forgetOthers("stencils/", files);
            for (MadeStencil stencil : stencils) {
                if (stencil.fresh()) {
                    fresh.add(new MadeThing("stencil", FOLDER + "/" + stencil.file(), stencil.sha256(), stencil.seconds()));
                } else {
                    kept++;
                }
                limits(stencil);
            }
            return stencils;
        }

        private void limits(MadeStencil stencil) {
            if (stencil.tooFine() > 0 || stencil.bridgesLost() > 0) {
                problems.add(Problem.of("too-fine-for-mesh", Severity.NOTE, stencil.planned().label(),
                        stencil.tooFine() + " openings are finer than mesh " + stencil.planned().facts().frame().mesh() + " prints and " + stencil.bridgesLost()
                                + " bridges are finer than it holds (" + stencil.looseIslands() + " of these are islands with nothing beside them); a coarser"
                                + " ruling or dot, or a finer mesh, holds them; single places can be widened in Dots"));
            }
            if (stencil.mendsLost() > 0) {
                problems.add(Problem.of("widened-place-gone", Severity.NOTE, stencil.planned().label(), stencil.mendsLost()
                        + " places of its recipe that were to be widened are no longer too narrow; look at them in Dots and take them out of the recipe"));
            }
        }

        private List<MadeSheet> sheets(List<PlannedLayerStencil> planned, List<MadeStencil> stencils) throws IOException {
            List<LaidSheet> laid = SheetLayout.lay(commission, planned, work);
            Map<String, MadeStencil> byLabel = new LinkedHashMap<>();
            stencils.forEach(stencil -> byLabel.put(stencil.planned().label(), stencil));
            StencilStep stencilStep = new StencilStep(made, index, artworks, methods, processes, SOFTWARE);
            for (PlannedLayerStencil stencil : planned) { // of windows that were not asked for now, but made before
                if (!byLabel.containsKey(stencil.label())) {
                    stencilStep.keptOnly(stencil).ifPresent(found -> byLabel.put(stencil.label(), found));
                }
            }
            List<LaidSheet> complete = new ArrayList<>();
            for (LaidSheet sheet : laid) {
                if (sheet.stencils().stream().allMatch(s -> byLabel.containsKey(s.stencil().label()))) {
                    complete.add(sheet);
                } else {
                    problems.add(Problem.of("sheet-waits", Severity.NOTE, "sheet " + sheet.number(),
                            "it also carries stencils of windows that were not asked for and are not made yet; make the whole commission to get it"));
                }
            }
            SheetStep step = new SheetStep(made, index, processes, SOFTWARE);
            Work ours = work.part(SHEETS_SHARE, Math.max(1, complete.stream().mapToLong(SheetStep::units).sum()));
            List<Callable<MadeSheet>> jobs = new ArrayList<>();
            complete.forEach(sheet -> jobs.add(() -> step.run(commission, sheet, byLabel, request.afresh(), ours)));
            List<MadeSheet> sheets = crew.all(jobs);
            Set<String> files = new HashSet<>();
            for (MadeSheet sheet : sheets) {
                files.addAll(sheet.files());
                for (int i = 0; i < sheet.files().size(); i++) {
                    if (sheet.fresh()) {
                        fresh.add(new MadeThing("sheet", FOLDER + "/" + sheet.files().get(i), sheet.sha256s().get(i), i == 0 ? sheet.seconds() : 0));
                    } else {
                        kept++;
                    }
                }
            }
            index.forgetOthers("sheets/", files);
            return sheets;
        }

        private List<MadeList> cards(List<PanelPieces> panels, List<PlannedLayerStencil> planned, List<MadeStencil> stencils, List<MadeSheet> sheets)
                throws IOException {
            ListStep step = new ListStep(made, index);
            List<MadeList> cards = new ArrayList<>();
            Map<String, List<String>> painted = new LinkedHashMap<>();
            for (PlannedLayerStencil stencil : planned) {
                stencil.alike().forEach(alike -> alike.forEach(label -> {
                    List<String> layers = painted.computeIfAbsent(label, piece -> new ArrayList<>());
                    if (!layers.contains(stencil.facts().name())) {
                        layers.add(stencil.facts().name());
                    }
                }));
            }
            for (PanelPieces panel : panels) {
                if (request.wants(panel.placed().window().name())) {
                    String file = "cards/" + FileNames.of(panel.placed().label()) + "-cutting-list.csv";
                    enter(step.write("cutting list", file, CuttingList.text(panel, painted, reliefs(panel)), request.afresh()), cards);
                }
            }
            TrueSizeStep trueSize = new TrueSizeStep(made, index, commission.papers(), SOFTWARE);
            List<Callable<MadeList>> printed = new ArrayList<>();
            panels.stream().filter(panel -> request.wants(panel.placed().window().name()))
                    .forEach(panel -> printed.addAll(trueSize.jobs(panel, request.afresh(), work)));
            BedStep beds = new BedStep(made, index, SOFTWARE);
            planned.stream().filter(stencil -> request.wants(stencil.layer().placed().window().name()))
                    .forEach(stencil -> printed.add(() -> beds.run(stencil, request.afresh())));
            for (MadeList list : crew.all(printed)) {
                enter(list, cards);
            }
            index.forgetOthers("beds/", new HashSet<>(planned.stream().map(BedStep::file).toList()));
            if (request.windows().isEmpty()) {
                enter(step.write("making record", "cards/making-record.txt", MakingRecord.text(commission, panels, stencils, sheets, processes),
                        request.afresh()), cards);
            }
            work.advance(WORK_UNITS - PIECES_SHARE - PLAN_SHARE - STENCILS_SHARE - SHEETS_SHARE);
            return cards;
        }

        private void enter(MadeList list, List<MadeList> into) {
            into.add(list);
            if (list.fresh()) {
                fresh.add(new MadeThing(list.what(), FOLDER + "/" + list.file(), list.sha256(), list.seconds()));
            } else {
                kept++;
            }
        }
    }

    /** Through the form that the model holds, so that the drawing is the same whether the pieces come from the cartoon or from the model. */
    private static CartoonSvg.Shape shape(CartoonPiece piece) {
        return new CartoonSvg.Shape(piece.number(), Outlines.polygon(Outlines.outline(piece.glass())), piece.label(), piece.inradiusMm());
    }
}
