package saddlebar.production.make;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import saddlebar.cartoon.Cartoon;
import saddlebar.cartoon.CartoonMaker;
import saddlebar.cartoon.NumberedFace;
import saddlebar.cartoon.mend.Mend;
import saddlebar.cartoon.mend.MendSettings;
import saddlebar.cartoon.mend.Mending;
import saddlebar.model.problem.PlaceMm;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.model.work.Work;
import saddlebar.production.facts.ArtFile;
import saddlebar.production.facts.CommissionFacts.PlacedPanel;
import saddlebar.production.facts.CutFacts.AgreedMend;
import saddlebar.production.facts.PanelFacts;

/** From the cutline to numbered pieces; numbers that a piece once had it keeps. */
final class PieceStep {
    /** Code of the note that an agreed mend found nothing to do. */
    static final String MEND_DROPPED = "mend-dropped";

    private final OpenArtworks artworks;

    PieceStep(OpenArtworks artworks) {
        this.artworks = artworks;
    }

    /** Only for panels that have artwork and a cutline. */
    PanelPieces run(PlacedPanel placed, boolean afresh, Work work) {
        PanelFacts panel = placed.panel();
        ArtFile art = panel.art().orElseThrow();
        String key = ContentKey.of("pieces", art, panel.cutlineLayer(), Cutline.settings(panel.join(), panel.gapMm(), panel.cut()), panel.cut());
        if (!afresh && key.equals(panel.piecesKey()) && !panel.pieces().isEmpty()) {
            List<CutPiece> kept = panel.pieces().stream().filter(piece -> !piece.glass().isEmpty())
                    .map(piece -> new CutPiece(placed.window().label(panel, piece.number()), piece.number(), Outlines.polygon(piece.glass()))).toList();
            return new PanelPieces(placed, key, Optional.empty(), kept, List.of(), List.of());
        }
        work.say(placed.label() + ": pieces");
        Cutline cutline = cutline(panel, art, work);
        List<NumberedFace> before = panel.pieces().stream().map(piece -> new NumberedFace(piece.number(), Outlines.polygon(piece.face()),
                panel.cut().locked().contains(piece.number()))).toList();
        Cartoon cartoon = CartoonMaker.make(cutline.mended().lines(), cutline.settings(), before, panel.highestEver() + 1, work);
        List<CutPiece> pieces = cartoon.pieces().stream().filter(piece -> !piece.glass().isEmpty())
                .map(piece -> new CutPiece(placed.window().label(panel, piece.number()), piece.number(), piece.glass())).toList();
        List<Problem> problems = new ArrayList<>(cartoon.problems());
        List<String> dropped = cutline.mended().undone();
        panel.cut().mends().stream().filter(mend -> dropped.contains(mend.key())).forEach(mend -> problems.add(dropped(mend)));
        problems.sort(Problem.WORST_FIRST);
        return new PanelPieces(placed, key, Optional.of(cartoon), pieces, problems, dropped);
    }

    /** What could still be mended, agreed mends done. */
    List<Mend> proposals(PanelFacts panel, Work work) {
        return Mending.propose(cutline(panel, panel.art().orElseThrow(), work).mended().lines(), MendSettings.defaults(), work);
    }

    /** All that can be mended, and what can be mended then. */
    List<Mend> allMends(PanelFacts panel, Work work) {
        return Mending.acceptAll(cutline(panel, panel.art().orElseThrow(), work).mended().lines(), MendSettings.defaults(), work).done();
    }

    private Cutline cutline(PanelFacts panel, ArtFile art, Work work) {
        return Cutline.of(panel.cutlineLayer(), panel.join(), panel.gapMm(), panel.cut(), layer -> artworks.lines(art, layer), work);
    }

    private static Problem dropped(AgreedMend mend) {
        return new Problem(MEND_DROPPED, Severity.NOTE, "", Optional.of(new PlaceMm(mend.xMm(), mend.yMm())),
                "A mend that was agreed to is not needed any more and was dropped: " + mend.words());
    }
}
