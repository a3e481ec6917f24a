package saddlebar.stencil.sheet;

import java.awt.Color;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.util.List;
import java.util.Map;

/** Draws what must be taped, each kind by its own hatch: never by colour alone. */
final class TapeDrawing {
    static final Color INK = new Color(0x20, 0x20, 0x20);
    static final Color TAPE = new Color(0xD0, 0x3A, 0x1E);
    static final Color GLASS = new Color(0xE4, 0xE8, 0xEC);

    private TapeDrawing() {
    }

    /**
     * Hatches the areas of a plan.
     *
     * @param scale   mm of the drawing a mm of the sheet
     * @param pitchMm distance of the hatch lines in the drawing; what lies under them must still be seen
     */
    static void areas(PlanDrawing drawing, List<TapeArea> areas, double xMm, double yMm, double scale, double pitchMm) {
        for (TapeArea area : areas) {
            RectMm a = area.areaMm();
            RectMm box = new RectMm(xMm + a.xMm() * scale, yMm + a.yMm() * scale, a.widthMm() * scale, a.heightMm() * scale);
            hatch(drawing, box, area.kind(), pitchMm);
        }
    }

    private static void hatch(PlanDrawing drawing, RectMm box, TapeArea.Kind kind, double pitchMm) {
        double strokeMm = Math.min(0.2, pitchMm / 6);
        Path2D lines = new Path2D.Double(Path2D.WIND_NON_ZERO);
        if (kind != TapeArea.Kind.HEAD && kind != TapeArea.Kind.FOOT) {
            diagonals(lines, box, pitchMm, strokeMm, true);
        }
        if (kind != TapeArea.Kind.EDGE) {
            diagonals(lines, box, pitchMm, strokeMm, false);
        }
        drawing.fill(lines, TAPE);
        drawing.frame(box, strokeMm, TAPE);
    }

    /** Lines x + y = const (rising) or x - y = const (falling), cut at the box, as thin slanted quads. */
    private static void diagonals(Path2D lines, RectMm box, double pitchMm, double strokeMm, boolean rising) {
        double half = strokeMm / Math.sqrt(2);
        for (double at = pitchMm / 2; at < box.widthMm() + box.heightMm(); at += pitchMm) {
            double startX = Math.min(at, box.widthMm());
            double startY = at - startX;
            double endY = Math.min(at, box.heightMm());
            double endX = at - endY;
            double fromX = rising ? box.xMm() + startX : box.rightMm() - startX;
            double toX = rising ? box.xMm() + endX : box.rightMm() - endX;
            double sign = rising ? 1 : -1;
            lines.moveTo(fromX - half / 2 * sign, box.yMm() + startY);
            lines.lineTo(fromX + half / 2 * sign, box.yMm() + startY);
            lines.lineTo(toX + half / 2 * sign, box.yMm() + endY);
            lines.lineTo(toX - half / 2 * sign, box.yMm() + endY);
            lines.closePath();
        }
    }

    /** A small box of each kind's hatch with its sentence, then notes and cautions. Gives where the words end. */
    static double words(PlanDrawing drawing, TapePlan plan, double xMm, double yMm, double emMm, double mostMm) throws IOException {
        double lineMm = yMm;
        double sampleMm = 3 * emMm;
        for (Map.Entry<TapeArea.Kind, String> kind : plan.whatToDo().entrySet()) {
            hatch(drawing, new RectMm(xMm, lineMm - 0.85 * emMm, sampleMm, emMm), kind.getKey(), emMm / 2.2);
            lineMm = drawing.paragraph(kind.getValue(), xMm + sampleMm + emMm, lineMm, emMm, mostMm - sampleMm - emMm, INK) + 0.3 * emMm;
        }
        for (String note : plan.notes()) {
            lineMm = drawing.paragraph(note, xMm, lineMm, emMm, mostMm, INK) + 0.3 * emMm;
        }
        lineMm += 0.3 * emMm;
        for (String caution : plan.cautions()) {
            double endMm = drawing.paragraph(caution, xMm + 1.2 * emMm, lineMm, emMm, mostMm - 1.2 * emMm, INK);
            drawing.fill(new RectMm(xMm, lineMm - emMm, 0.5 * emMm, endMm - lineMm), TAPE);
            lineMm = endMm + 0.5 * emMm;
        }
        return lineMm;
    }
}
