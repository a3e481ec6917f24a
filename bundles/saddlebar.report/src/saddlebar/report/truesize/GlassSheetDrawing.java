package saddlebar.report.truesize;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import saddlebar.model.art.OutlineMm;

/** A sheet of glass with the pieces to be cut from it: numbers, flaws filled and crossed, off-cuts dashed with their size, and an arrow along the grain. */
public final class GlassSheetDrawing {
    private static final int INK = 0x000000;
    private static final int SHEET = 0x5A5A5A;
    private static final int FLAW = 0xD55E00; // colour-blind safe (Okabe, Ito)
    private static final int OFFCUT = 0x0072B2;
    private static final double ARROW_MM = 60;

    private GlassSheetDrawing() {
    }

    /**
     * @param sheet      its edge
     * @param flaws      on the sheet
     * @param pieces     where they lie on the sheet
     * @param offcuts    what is kept
     * @param alongWidth whether the grain runs across the page; else down
     */
    public static TrueSizeDrawing of(String title, OutlineMm sheet, List<OutlineMm> flaws, List<PatternPiece> pieces, List<OutlineMm> offcuts,
            boolean alongWidth) {
        double[] box = sheet.boundsMm();
        double border = CutlineDrawing.BORDER_MM;
        double dx = border - box[0];
        double dy = border - box[1];
        List<Ink> ink = new ArrayList<>();
        ink.add(Ink.Line.full(rings(sheet, dx, dy), true, 0.6, SHEET));
        for (OutlineMm flaw : flaws) {
            List<double[]> rings = rings(flaw, dx, dy);
            ink.add(new Ink.Area(rings, 0xF6D5BF));
            ink.add(Ink.Line.full(rings, true, 0.35, FLAW));
            double[] at = flaw.boundsMm();
            ink.add(Ink.Line.full(
                    List.of(new double[] {at[0] + dx, at[1] + dy, at[2] + dx, at[3] + dy}, new double[] {at[0] + dx, at[3] + dy, at[2] + dx, at[1] + dy}),
                    false, 0.35, FLAW));
        }
        for (OutlineMm offcut : offcuts) {
            ink.add(new Ink.Line(rings(offcut, dx, dy), true, 0.35, OFFCUT, new float[] {6, 3}));
            double[] at = offcut.boundsMm();
            double width = at[2] - at[0];
            double height = at[3] - at[1];
            ink.add(new Ink.Words(String.format(Locale.ROOT, "keep %.0f x %.0f", width, height), (at[0] + at[2]) / 2 + dx, (at[1] + at[3]) / 2 + dy,
                    Math.max(2, Math.min(7, width / 14)), OFFCUT));
        }
        for (PatternPiece piece : pieces) {
            ink.add(Ink.Line.full(piece.rings().stream().map(ring -> CutlineDrawing.moved(ring, dx, dy)).toList(), true, CutlineDrawing.CUT_LINE_MM, INK));
            CutlineDrawing.label(ink, piece, piece.labelXMm() + dx, piece.labelYMm() + dy);
        }
        arrow(ink, box[2] - box[0] + 2 * border + 4, border + 4, alongWidth);
        return new TrueSizeDrawing(title, box[2] - box[0] + 2 * border + (alongWidth ? ARROW_MM + 8 : 16), box[3] - box[1] + 2 * border, ink);
    }

    /** The grain beside the sheet, an arrow at both ends: the glass may stand on its head. */
    private static void arrow(List<Ink> ink, double x, double y, boolean alongWidth) {
        double[] shaft = alongWidth ? new double[] {x, y, x + ARROW_MM, y} : new double[] {x, y, x, y + ARROW_MM};
        double ux = alongWidth ? 1 : 0;
        double uy = alongWidth ? 0 : 1;
        List<double[]> lines = new ArrayList<>();
        lines.add(shaft);
        for (int end = 0; end < 2; end++) {
            double tipX = shaft[2 * end];
            double tipY = shaft[2 * end + 1];
            double in = end == 0 ? 5 : -5;
            lines.add(new double[] {tipX + ux * in + uy * 2, tipY + uy * in + ux * 2, tipX, tipY, tipX + ux * in - uy * 2, tipY + uy * in - ux * 2});
        }
        ink.add(Ink.Line.full(lines, false, 0.5, SHEET));
    }

    private static List<double[]> rings(OutlineMm outline, double dx, double dy) {
        List<double[]> rings = new ArrayList<>();
        for (int ring = 0; ring < outline.rings(); ring++) {
            rings.add(CutlineDrawing.moved(outline.ring(ring), dx, dy));
        }
        return rings;
    }
}
