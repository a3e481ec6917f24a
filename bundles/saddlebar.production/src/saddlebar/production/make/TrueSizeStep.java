package saddlebar.production.make;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;

import saddlebar.model.file.Hashes;
import saddlebar.model.work.Work;
import saddlebar.nesting.Effort;
import saddlebar.production.facts.PaperFacts;
import saddlebar.report.truesize.CutlineDrawing;
import saddlebar.report.truesize.LaidDrawing;
import saddlebar.report.truesize.PatternPiece;
import saddlebar.report.truesize.PatternSheets;
import saddlebar.report.truesize.PrintPaper;
import saddlebar.report.truesize.Tiling;
import saddlebar.report.truesize.TrueSizePdf;

/** What is printed on plain paper at true size: the cutline to lie under the glass, and the patterns that are cut out. */
final class TrueSizeStep {
    /** Patterns need no tighter ganging than this; every round costs each making of the pieces. */
    private static final Effort EFFORT = Effort.rounds(1);

    private final Path made;
    private final MadeIndex index;
    private final PrintPaper paper;
    private final String software;

    TrueSizeStep(Path made, MadeIndex index, List<PaperFacts> papers, String software) {
        this.made = made;
        this.index = index;
        this.paper = papers.stream().max(Comparator.comparingDouble(p -> p.widthMm() * p.heightMm()))
                .filter(p -> Math.min(p.widthMm(), p.heightMm()) >= 150 && Math.max(p.widthMm(), p.heightMm()) <= 2_000)
                .map(p -> new PrintPaper(p.name(), p.widthMm(), p.heightMm(), false, p.marginMm())).orElse(PrintPaper.of("a4"));
        this.software = software;
    }

    /** Both files of a panel; none if it has no pieces. */
    List<Callable<MadeList>> jobs(PanelPieces panel, boolean afresh, Work work) {
        String name = panel.placed().label();
        String title = (name + " " + panel.placed().window().title()).strip();
        List<PatternPiece> faces = PatternPieces.of(panel, true);
        List<PatternPiece> glasses = PatternPieces.of(panel, false).stream().filter(piece -> !piece.outline().isEmpty()).toList();
        if (glasses.isEmpty()) {
            return List.of();
        }
        Work quiet = new StopOnly(work);
        return List.of(
                () -> write("true-size cutline", "cards/" + FileNames.of(name) + "-cutline.pdf", title + ", cutline", faces, afresh, quiet,
                        of -> List.of(LaidDrawing.of(CutlineDrawing.of(of, faces), paper, Tiling.USUAL_OVERLAP_MM))),
                () -> write("pattern set", "cards/" + FileNames.of(name) + "-patterns.pdf", title, glasses, afresh, quiet,
                        of -> PatternSheets.of(of, glasses, paper, EFFORT, quiet)));
    }

    private interface Laying {
        List<LaidDrawing> of(String title);
    }

    private MadeList write(String what, String file, String title, List<PatternPiece> pieces, boolean afresh, Work work, Laying laying) throws IOException {
        long begun = System.nanoTime();
        String key = ContentKey.of("true size", what, title, paper, pieces, EFFORT);
        Optional<MadeFileFacts> kept = afresh ? Optional.empty() : index.kept(file, key);
        if (kept.isPresent()) {
            return new MadeList(what, file, key, kept.get().sha256(), false, 0);
        }
        work.say(title);
        Path target = made.resolve(file);
        TrueSizePdf.write(title, laying.of(title), target, software, work);
        String sha256 = Hashes.sha256(target);
        index.enter(file, key, sha256, Map.of());
        return new MadeList(what, file, key, sha256, true, (System.nanoTime() - begun) / 1e9);
    }
}
