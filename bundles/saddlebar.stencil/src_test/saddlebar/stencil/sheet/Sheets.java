package saddlebar.stencil.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import saddlebar.model.units.Units;
import saddlebar.stencil.BitBands;
import saddlebar.stencil.BitPicture;
import saddlebar.stencil.process.Face;
import saddlebar.stencil.process.StencilProcess;
import saddlebar.stencil.process.TonerSide;

/** Plans of sheets for tests; all names invented. */
final class Sheets {
    static final SheetLabel LABEL = new SheetLabel("Estuary reading room", 2, 5, "brown trace, mesh 220");

    private Sheets() {
    }

    /** Paint of a stencil that no turn or mirror leaves as it is: a fat F with a screen of growing dots below it. */
    static BitPicture paint(int widthPx, int heightPx) {
        BitPicture paint = new BitPicture(widthPx, heightPx);
        for (int y = 0; y < heightPx; y++) {
            for (int x = 0; x < widthPx; x++) {
                boolean stem = x > widthPx * 0.2 && x < widthPx * 0.32 && y > heightPx * 0.1 && y < heightPx * 0.9;
                boolean arms = x > widthPx * 0.2 && (y > heightPx * 0.1 && y < heightPx * 0.22 && x < widthPx * 0.8
                        || y > heightPx * 0.42 && y < heightPx * 0.54 && x < widthPx * 0.6);
                boolean dots = y > heightPx * 0.65 && x > widthPx * 0.4 && Math.floorMod(x, 8) + Math.floorMod(y, 8) < 8 * x / widthPx;
                paint.set(x, y, stem || arms || dots);
            }
        }
        return paint;
    }

    static PlacedStencil stencil(StencilProcess process, String label, double xMm, double yMm, int turns, double widthMm, double heightMm, double dpi,
            boolean mirrored) {
        BitPicture paint = paint(Units.pxOfMm(widthMm, dpi), Units.pxOfMm(heightMm, dpi));
        return new PlacedStencil("W1-" + label, label, xMm, yMm, turns, paint.widthPx(), paint.heightPx(), mirrored ? Face.EXTERIOR : Face.INTERIOR,
                mirrored, () -> process.toner(paint.bands(), mirrored));
    }

    /** Four stencils on a small sheet: as drawn, turned, mirrored, turned and mirrored. */
    static SheetPlan small(StencilProcess process, double dpi) {
        return plan(process, new Paper("small", 140, 120), dpi, List.of(
                stencil(process, "12", 4.3, 17.8, 0, 40, 28, dpi, false),
                stencil(process, "13", 50, 17.8, 1, 33, 25, dpi, false),
                stencil(process, "14", 4.3, 52, 0, 40, 28, dpi, true),
                stencil(process, "15", 50, 56, 3, 24, 33, dpi, true)));
    }

    static SheetPlan plan(StencilProcess process, Paper paper, double dpi, List<PlacedStencil> stencils) {
        return new SheetPlan(paper, dpi, SheetPlan.COMMON_MARGIN_MM, process, TonerSide.PRINT, LABEL, stencils);
    }

    /** A sheet filled with rows of equal stencils 5 mm apart. */
    static SheetPlan full(StencilProcess process, Paper paper, double dpi, double widthMm, double heightMm) {
        RectMm room = SheetFrame.of(paper, SheetPlan.COMMON_MARGIN_MM).usableMm();
        List<PlacedStencil> stencils = new ArrayList<>();
        for (double yMm = room.yMm(); yMm + heightMm <= room.bottomMm(); yMm += heightMm + 5) {
            for (double xMm = room.xMm(); xMm + widthMm <= room.rightMm(); xMm += widthMm + 5) {
                stencils.add(stencil(process, String.valueOf(stencils.size() + 1), xMm, yMm, 0, widthMm, heightMm, dpi, false));
            }
        }
        return plan(process, paper, dpi, stencils);
    }

    static BitPicture composed(SheetPlan plan) throws IOException {
        try (BitBands sheet = ComposedSheet.of(plan)) {
            return BitPicture.of(sheet);
        }
    }
}
