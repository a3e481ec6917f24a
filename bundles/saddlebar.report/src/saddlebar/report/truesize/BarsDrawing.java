package saddlebar.report.truesize;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import saddlebar.model.problem.Refusal;

/**
 * The reinforcement plan: the joints of a panel drawn light, bars over them with their lengths and heights, and a mark wherever a bar is tied. Under it
 * the reason in words and the caution, which is part of the drawing so that no cutting apart loses it.
 */
public final class BarsDrawing {
    private static final int INK = 0x000000;
    private static final int QUIET = 0x8C8C8C;
    private static final int BAR = 0x0072B2; // colour-blind safe blue (Okabe, Ito)
    private static final double WORDS_MM = 3;
    private static final double SIZES_MM = 4;
    private static final double MARGIN_MM = 34;
    private static final double TIE_MM = 3;
    private static final double LEAST_WIDTH_MM = 150;

    private BarsDrawing() {
    }

    /**
     * @param pieces  as drawn
     * @param bars    from the top
     * @param barMm   height of a bar as it is seen, 1 to 100
     * @param words   lines that say why, by which rule, and the caution
     * @throws Refusal if there is no piece
     */
    public static TrueSizeDrawing of(String title, List<PatternPiece> pieces, List<BarPlace> bars, double barMm, List<String> words) {
        if (pieces.stream().allMatch(piece -> piece.outline().isEmpty())) {
            throw new Refusal(title, "it has no pieces yet", "make its pieces first");
        }
        double[] box = PatternPiece.boxOf(pieces);
        double dx = MARGIN_MM - box[0];
        double dy = CutlineDrawing.BORDER_MM - box[1];
        double widthMm = Math.max(box[2] - box[0] + MARGIN_MM + CutlineDrawing.BORDER_MM, LEAST_WIDTH_MM);
        List<String> lines = folded(words, widthMm - 2 * CutlineDrawing.BORDER_MM);
        List<Ink> ink = new ArrayList<>();
        for (PatternPiece piece : pieces) {
            ink.add(Ink.Line.full(piece.rings().stream().map(ring -> CutlineDrawing.moved(ring, dx, dy)).toList(), true, CutlineDrawing.CUT_LINE_MM, QUIET));
        }
        double topMm = box[1];
        double before = topMm;
        for (BarPlace bar : bars) {
            draw(ink, bar, barMm, dx, dy);
            height(ink, before, bar.yMm(), dy);
            before = bar.yMm();
        }
        if (!bars.isEmpty()) {
            height(ink, before, box[3], dy);
        }
        double y = box[3] + dy + 3 * WORDS_MM;
        for (String line : lines) {
            ink.add(new Ink.Words(line, widthMm / 2, y, WORDS_MM * 0.8, INK));
            y += 1.7 * WORDS_MM;
        }
        return new TrueSizeDrawing(title, widthMm, y + CutlineDrawing.BORDER_MM, ink);
    }

    private static void draw(List<Ink> ink, BarPlace bar, double barMm, double dx, double dy) {
        double y = bar.yMm() + dy;
        double half = barMm / 2;
        double from = bar.fromMm() + dx;
        double to = bar.toMm() + dx;
        ink.add(Ink.Line.full(List.of(new double[] {from, y - half, to, y - half, to, y + half, from, y + half}), true, 0.35, BAR));
        ink.add(new Ink.Line(List.of(new double[] {from, y, to, y}), false, 0.15, BAR, new float[] {8, 2, 1, 2}));
        List<double[]> ties = new ArrayList<>();
        for (double tie : bar.tiesMm()) {
            double x = tie + dx;
            ties.add(new double[] {x - TIE_MM, y - half - TIE_MM, x + TIE_MM, y + half + TIE_MM});
            ties.add(new double[] {x - TIE_MM, y + half + TIE_MM, x + TIE_MM, y - half - TIE_MM});
        }
        if (!ties.isEmpty()) {
            ink.add(Ink.Line.full(ties, false, 0.5, INK));
        }
        ink.add(new Ink.Words(String.format(Locale.ROOT, "%.1f mm clear, %d ties", bar.clearMm(), bar.tiesMm().size()), (from + to) / 2,
                y - half - TIE_MM - SIZES_MM, SIZES_MM, BAR));
    }

    /** The height from one level to the next, on the left. */
    private static void height(List<Ink> ink, double fromMm, double toMm, double dy) {
        double x = MARGIN_MM - 6;
        ink.add(Ink.Line.full(List.of(new double[] {x, fromMm + dy, x, toMm + dy}, new double[] {x - 2, fromMm + dy, x + 2, fromMm + dy},
                new double[] {x - 2, toMm + dy, x + 2, toMm + dy}), false, 0.2, QUIET));
        ink.add(new Ink.Words(String.format(Locale.ROOT, "%.1f", toMm - fromMm), x - 13, (fromMm + toMm) / 2 + dy, SIZES_MM, INK));
    }

    /** Words in lines that fit, by the font's usual width of a letter. */
    private static List<String> folded(List<String> words, double roomMm) {
        int most = (int) Math.max(20, roomMm / (0.68 * WORDS_MM));
        List<String> lines = new ArrayList<>();
        for (String sentence : words) {
            StringBuilder line = new StringBuilder();
            for (String word : sentence.split(" ")) {
                if (line.length() > 0 && line.length() + 1 + word.length() > most) {
                    lines.add(line.toString());
                    line.setLength(0);
                }
                line.append(line.length() > 0 ? " " : "").append(word);
            }
            lines.add(line.toString());
        }
        return lines;
    }
}
