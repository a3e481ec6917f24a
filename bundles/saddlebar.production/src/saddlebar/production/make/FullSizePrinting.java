package saddlebar.production.make;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

import saddlebar.artwork.ArtworkReaders;
import saddlebar.cartoon.opening.BarRule;
import saddlebar.model.problem.LockedException;
import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;
import saddlebar.nesting.Effort;
import saddlebar.production.facts.CommissionFacts;
import saddlebar.production.facts.CommissionFacts.PlacedPanel;
import saddlebar.production.facts.PanelFacts;
import saddlebar.report.truesize.BarsDrawing;
import saddlebar.report.truesize.CutlineDrawing;
import saddlebar.report.truesize.Ink;
import saddlebar.report.truesize.LaidDrawing;
import saddlebar.report.truesize.OutlineFile;
import saddlebar.report.truesize.PatternPiece;
import saddlebar.report.truesize.PatternSheets;
import saddlebar.report.truesize.TrueSizeDrawing;
import saddlebar.report.truesize.TrueSizePdf;

/** Cartoon, cutline, patterns, bars and bare outlines of each panel at full size, on whatever is printed on. Changes no model and writes no record. */
@Component(service = FullSizePrinting.class)
public final class FullSizePrinting {
    /** Units of work that {@link #print} tells in all. */
    public static final int WORK_UNITS = 1000;
    private static final Effort EFFORT = Effort.rounds(1);
    private static final double BAR_SEEN_MM = 10;
    private static final String SOFTWARE = "Saddlebar 1";

    private final ArtworkReaders readers;

    @Activate
    public FullSizePrinting(@Reference ArtworkReaders readers) {
        this.readers = readers;
    }

    /**
     * @param work told {@link #WORK_UNITS}
     * @throws Refusal         if a window is asked for that is not there, or none has pieces
     * @throws LockedException if a file is there already and may not be replaced; nothing is written then
     */
    public List<FullSizeFile> print(CommissionFacts commission, FullSizeRequest request, Work work) throws IOException {
        List<PlacedPanel> panels = commission.panels().filter(placed -> request.windows().isEmpty() || request.windows().contains(placed.window().name()))
                .filter(placed -> placed.panel().art().isPresent() && !placed.panel().cutlineLayer().isEmpty()).toList();
        if (panels.isEmpty()) {
            throw new Refusal(commission.title(), "it has no panel with a cutline yet", "bring artwork for a window first");
        }
        for (PlacedPanel panel : panels) {
            for (FullSizeKind kind : request.kinds()) {
                for (Path file : files(panel, kind, request)) {
                    if (Files.exists(file) && !request.replace()) {
                        throw new LockedException(file + " exists already; nothing was written. Give --replace to replace it, or another folder.");
                    }
                }
            }
        }
        Files.createDirectories(request.folder());
        List<FullSizeFile> files = new ArrayList<>();
        Work ours = work.part(WORK_UNITS, panels.size() * request.kinds().size());
        try (OpenArtworks artworks = new OpenArtworks(readers)) {
            PieceStep step = new PieceStep(artworks);
            for (PlacedPanel placed : panels) {
                PanelPieces panel = step.run(placed, false, new StopOnly(work));
                for (FullSizeKind kind : request.kinds()) {
                    work.say(placed.label() + ": " + kind.word());
                    files.addAll(one(panel, kind, request, artworks, new StopOnly(work)));
                    ours.advance(1);
                }
            }
        }
        return files;
    }

    private static List<Path> files(PlacedPanel panel, FullSizeKind kind, FullSizeRequest request) {
        String name = FileNames.of(panel.label()) + "-" + kind.word();
        return kind == FullSizeKind.OUTLINES
                ? List.of(request.folder().resolve(name + ".svg"), request.folder().resolve(name + ".pdf"))
                : List.of(request.folder().resolve(name + ".pdf"));
    }

    private static List<FullSizeFile> one(PanelPieces panel, FullSizeKind kind, FullSizeRequest request, OpenArtworks artworks, Work work)
            throws IOException {
        PlacedPanel placed = panel.placed();
        String title = (placed.label() + " " + placed.window().title()).strip();
        List<PatternPiece> faces = PatternPieces.of(panel, true);
        List<PatternPiece> glasses = PatternPieces.of(panel, false).stream().filter(piece -> !piece.outline().isEmpty()).toList();
        List<Path> files = files(placed, kind, request);
        if (kind == FullSizeKind.OUTLINES) {
            OutlineFile outlines = OutlineFile.of(title, glasses, request.kerfMm());
            outlines.writeSvg(files.get(0));
            outlines.writePdf(files.get(1), SOFTWARE);
            return files.stream().map(file -> new FullSizeFile(placed.label(), kind, file, outlines.widthMm(), outlines.heightMm(), 1)).toList();
        }
        List<LaidDrawing> laid = switch (kind) {
            case CARTOON -> {
                Optional<Ink.Picture> tone = new PaintedTone(artworks).of(panel, work);
                yield tiled(CutlineDrawing.of(title + ", cartoon", tone.stream().toList(), glasses), request);
            }
            case CUTLINE -> tiled(CutlineDrawing.of(title + ", cutline", faces), request);
            case PATTERNS -> PatternSheets.of(title + allowance(placed.panel()), glasses, request.paper(), EFFORT, work);
            case BARS -> tiled(bars(title, placed, faces), request);
            case OUTLINES -> throw new IllegalStateException("outlines are no drawing on pages");
        };
        TrueSizePdf.write(title, laid, files.get(0), SOFTWARE, work);
        TrueSizeDrawing first = laid.get(0).drawing();
        return List
                .of(new FullSizeFile(placed.label(), kind, files.get(0), first.widthMm(), first.heightMm(), laid.stream().mapToInt(LaidDrawing::pages).sum()));
    }

    private static List<LaidDrawing> tiled(TrueSizeDrawing drawing, FullSizeRequest request) {
        return List.of(LaidDrawing.of(drawing, request.paper(), request.overlapMm()));
    }

    private static String allowance(PanelFacts panel) {
        return String.format(Locale.ROOT, ", %.2f mm between pieces taken off for %s", panel.gapMm(), panel.join().getLiteral());
    }

    private static TrueSizeDrawing bars(String title, PlacedPanel placed, List<PatternPiece> faces) {
        BarRule rule = placed.window().inDoor() ? BarRule.DOOR : BarRule.EXTERIOR;
        BarPlan plan = BarPlan.of(faces, rule);
        List<String> words = List.of(
                String.format(Locale.ROOT, "%s: %s. Bars at most %.0f mm apart (studio rule of thumb, no source).",
                        plan.bars().isEmpty() ? "No bars" : plan.bars().size() == 1 ? "1 bar" : plan.bars().size() + " bars", plan.reason(), rule.mostMm()),
                "Crosses: ties or solder where a bar crosses a joint. Lengths are between the glass edges; add what the frame takes in.",
                "Soldering: lead and hot flux. Ventilate, wash before you eat, keep children and the pregnant away.", BarRule.CAUTION);
        return BarsDrawing.of(title + ", reinforcement", faces, plan.bars(), BAR_SEEN_MM, words);
    }
}
