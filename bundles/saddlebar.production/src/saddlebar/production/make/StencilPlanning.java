package saddlebar.production.make;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;

import org.locationtech.jts.geom.Envelope;

import com.google.gson.Gson;
import com.google.gson.JsonParseException;

import saddlebar.model.file.PendingFile;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.problem.Severity;
import saddlebar.model.work.Work;
import saddlebar.production.facts.FrameFacts;
import saddlebar.production.facts.PaperFacts;
import saddlebar.production.plan.ImageArea;
import saddlebar.production.plan.PaintedPiece;
import saddlebar.production.plan.PlannedStencil;
import saddlebar.production.plan.StencilPlanner;
import saddlebar.stencil.sheet.Paper;
import saddlebar.stencil.sheet.RectMm;
import saddlebar.stencil.sheet.SheetFrame;

/**
 * Which stencils there are to make. Layers that are printed alike are planned together, so that identical pieces share a stencil over windows. A
 * plan is kept under {@code made/plans/} by the key of what it was made from, since finding painted pieces means rendering the artwork.
 */
final class StencilPlanning {
    static final String FOLDER = "plans";
    private static final Gson JSON = new Gson();

    private final Path plans;
    private final List<PaperFacts> papers;
    private final PaintedPieces painted;
    private final Crew crew;

    StencilPlanning(Path made, List<PaperFacts> papers, OpenArtworks artworks, Crew crew) {
        this.plans = made.resolve(FOLDER);
        this.papers = papers;
        this.painted = new PaintedPieces(artworks);
        this.crew = crew;
    }

    /** What there is to make, and the pieces that no frame can print. */
    record Planned(List<PlannedLayerStencil> stencils, List<Problem> problems) {
    }

    /** A plan as it is kept: layers by their place in the group, pieces by their labels. */
    private record KeptPlan(List<KeptStencil> stencils, List<String> tooLarge) {
    }

    private record KeptStencil(int layer, List<String> pieces, List<List<String>> alike) {
    }

    Planned plan(List<PaintedLayer> layers, boolean afresh, Work work) throws IOException {
        Map<String, List<PaintedLayer>> groups = new LinkedHashMap<>();
        layers.stream().sorted(Comparator.comparing(PaintedLayer::label))
                .forEach(layer -> groups.computeIfAbsent(layer.layer().printedAlike(), alike -> new ArrayList<>()).add(layer));
        List<PlannedLayerStencil> stencils = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        Set<String> keptKeys = new HashSet<>();
        for (List<PaintedLayer> group : groups.values()) {
            work.checkpoint();
            ImageArea area = imageArea(group.get(0).layer().frame());
            String key = ContentKey.of("plan", area, group.stream().map(layer -> layer.label() + " " + layer.paintedKey()).toList());
            keptKeys.add(key + ".json");
            KeptPlan plan = afresh ? null : kept(key);
            if (plan == null) {
                plan = planGroup(group, area, work);
                keep(key, plan);
            }
            enter(plan, group, area, stencils, problems);
            work.advance(group.size());
        }
        forgetOthers(keptKeys);
        return new Planned(unlike(stencils), problems);
    }

    /** The frame's area, or the part of it that the best sheet in use can carry. */
    private ImageArea imageArea(FrameFacts frame) {
        ImageArea ofFrame = new ImageArea(frame.printWidthMm(), frame.printHeightMm());
        return papers.stream().map(paper -> {
            RectMm usable = SheetFrame.of(new Paper(paper.name(), paper.widthMm(), paper.heightMm()), paper.marginMm()).usableMm();
            return ofFrame.within(new ImageArea(usable.widthMm(), usable.heightMm()));
        }).max(Comparator.comparingDouble(area -> area.widthMm() * area.heightMm())).orElse(ofFrame);
    }

    private KeptPlan planGroup(List<PaintedLayer> group, ImageArea area, Work work) throws IOException {
        Map<String, Integer> layerById = new HashMap<>();
        List<Callable<List<PaintedPiece>>> jobs = new ArrayList<>();
        for (int i = 0; i < group.size(); i++) {
            PaintedLayer layer = group.get(i);
            layerById.put(layer.layer().id(), i);
            jobs.add(() -> painted.of(layer, work));
        }
        List<PaintedPiece> pieces = crew.all(jobs).stream().flatMap(List::stream).toList();
        StencilPlanner.Plan plan = new StencilPlanner(area).plan(pieces);
        List<KeptStencil> stencils = new ArrayList<>();
        for (PlannedStencil stencil : plan.stencils()) {
            stencils.add(new KeptStencil(layerById.get(stencil.layerId()), labels(stencil.pieces()),
                    stencil.alike().stream().map(StencilPlanning::labels).toList()));
        }
        stencils.sort(Comparator.comparingInt(KeptStencil::layer)); // ids are chance, places in the group are not; the sort is stable
        return new KeptPlan(stencils, labels(plan.tooLarge()));
    }

    private static List<String> labels(List<PaintedPiece> pieces) {
        return pieces.stream().map(PaintedPiece::label).toList();
    }

    private void enter(KeptPlan plan, List<PaintedLayer> group, ImageArea area, List<PlannedLayerStencil> stencils, List<Problem> problems) {
        int[] numbers = new int[group.size()];
        for (KeptStencil kept : plan.stencils()) {
            PaintedLayer layer = group.get(kept.layer());
            List<CutPiece> pieces = kept.pieces().stream().map(label -> layer.piece(label).orElseThrow()).toList();
            Envelope box = new Envelope();
            pieces.forEach(piece -> box.expandToInclude(SightLineMask.printed(piece.glass(), layer.layer()).getEnvelopeInternal()));
            stencils.add(new PlannedLayerStencil(layer, ++numbers[kept.layer()], pieces, kept.alike(),
                    RasterPlace.around(box, layer.layer().recipe().screening().dpi())));
        }
        for (String label : plan.tooLarge()) {
            problems.add(Problem.of("piece-too-large", Severity.ERROR, label + " " + group.get(0).layer().name(),
                    String.format(Locale.ROOT, "the painted piece is larger than one print of %.0f x %.0f mm (frame %s and the sheets in use); "
                            + "take a larger frame or sheet, or divide the piece", area.widthMm(), area.heightMm(), group.get(0).layer().frame().name())));
        }
    }

    /** Two names that give one file name would overwrite each other. */
    private static List<PlannedLayerStencil> unlike(List<PlannedLayerStencil> stencils) {
        Set<String> seen = new HashSet<>();
        for (PlannedLayerStencil stencil : stencils) {
            if (!seen.add(stencil.file().toLowerCase(Locale.ROOT))) {
                throw new Refusal(stencil.label(), "two layers or windows have names that give the same file name "
                        + stencil.file(), "rename one of them");
            }
        }
        return stencils;
    }

    private KeptPlan kept(String key) throws IOException {
        Path file = plans.resolve(key + ".json");
        if (!Files.exists(file)) {
            return null;
        }
        try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            return JSON.fromJson(in, KeptPlan.class);
        } catch (JsonParseException damaged) {
            return null; // it is made again
        }
    }

    private void keep(String key, KeptPlan plan) throws IOException {
        try (PendingFile pending = PendingFile.beside(plans.resolve(key + ".json"))) {
            pending.out().write(JSON.toJson(plan).getBytes(StandardCharsets.UTF_8));
            pending.commit();
        }
    }

    private void forgetOthers(Set<String> wanted) throws IOException {
        if (Files.isDirectory(plans)) {
            try (var files = Files.list(plans)) {
                for (Path file : files.toList()) {
                    if (!wanted.contains(file.getFileName().toString())) {
                        Files.deleteIfExists(file);
                    }
                }
            }
        }
    }
}
