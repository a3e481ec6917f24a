package saddlebar.report.truesize;

import java.util.ArrayList;
import java.util.List;

import saddlebar.model.problem.Refusal;

/** The cutline of a panel with the numbers of its pieces, to lie under the glass. */
public final class CutlineDrawing {
    /** A pen's line that a cutter can follow on either edge (common practice, no source). */
    static final double CUT_LINE_MM = 0.35;
    static final double BORDER_MM = 4;
    private static final double MOST_NUMBER_MM = 8;
    private static final double LEAST_NUMBER_MM = 1.4;
    private static final double GLASS_NAME_MM = 1.8;
    private static final double ROOM_FOR_NAME_MM = 14;
    private static final int INK = 0x000000;
    private static final int QUIET = 0x6E6E6E;

    private CutlineDrawing() {
    }

    /**
     * @param pieces as drawn, or as cut where the gap is to show
     * @throws Refusal if there is none
     */
    public static TrueSizeDrawing of(String title, List<PatternPiece> pieces) {
        return of(title, List.of(), pieces);
    }

    /**
     * The full cartoon: what is painted as a light tone, and the cutline with its numbers over it.
     *
     * @param painted pictures in mm of the panel, light enough that lines and numbers stay legible on them
     */
    public static TrueSizeDrawing of(String title, List<Ink.Picture> painted, List<PatternPiece> pieces) {
        if (pieces.stream().allMatch(piece -> piece.outline().isEmpty())) {
            throw new Refusal(title, "it has no pieces yet", "make its pieces first");
        }
        double[] box = PatternPiece.boxOf(pieces);
        double dx = BORDER_MM - box[0];
        double dy = BORDER_MM - box[1];
        List<Ink> ink = new ArrayList<>();
        painted.forEach(picture -> ink.add(picture.moved(dx, dy)));
        for (PatternPiece piece : pieces) {
            ink.add(Ink.Line.full(piece.rings().stream().map(ring -> moved(ring, dx, dy)).toList(), true, CUT_LINE_MM, INK));
        }
        for (PatternPiece piece : pieces) {
            if (!piece.outline().isEmpty()) {
                label(ink, piece, piece.labelXMm() + dx, piece.labelYMm() + dy);
            }
        }
        return new TrueSizeDrawing(title, box[2] - box[0] + 2 * BORDER_MM, box[3] - box[1] + 2 * BORDER_MM, ink);
    }

    static void label(List<Ink> ink, PatternPiece piece, double x, double y) {
        double number = Math.max(LEAST_NUMBER_MM, Math.min(MOST_NUMBER_MM, 0.6 * piece.inradiusMm() * 2 / Math.max(1.6, 0.75 * piece.label().length())));
        ink.add(new Ink.Words(piece.label(), x, y, number, INK));
        if (!piece.glass().isEmpty() && piece.inradiusMm() >= ROOM_FOR_NAME_MM) {
            ink.add(new Ink.Words(piece.glass(), x, y + number / 2 + 1.6 * GLASS_NAME_MM, GLASS_NAME_MM, QUIET));
        }
    }

    static double[] moved(double[] xy, double dx, double dy) {
        double[] moved = new double[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            moved[i] = xy[i] + dx;
            moved[i + 1] = xy[i + 1] + dy;
        }
        return moved;
    }
}
