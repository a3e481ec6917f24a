package saddlebar.stencil.wedge;

import java.io.IOException;

import saddlebar.model.units.Units;
import saddlebar.stencil.BitPicture;
import saddlebar.stencil.ScreeningMethod;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.sheet.RectMm;
import saddlebar.stencil.sheet.SheetLettering;

/** One wedge as bits, 1 = paint prints: frame, patches screened each by itself, and their figures in per cent. */
public final class WedgeStrip {
    private static final double FIGURE_EM_MM = 2.6;

    private WedgeStrip() {
    }

    public static BitPicture bits(WedgeLayout layout, ScreeningMethod method, ScreeningRecipe recipe) throws IOException {
        double dpi = recipe.dpi();
        BitPicture bits = new BitPicture(Units.pxOfMm(layout.widthMm(), dpi), Units.pxOfMm(layout.heightMm(), dpi));
        double frameMm = layout.frameMm();
        fill(bits, new RectMm(0, 0, layout.widthMm(), frameMm), dpi);
        fill(bits, new RectMm(0, layout.heightMm() - frameMm, layout.widthMm(), frameMm), dpi);
        fill(bits, new RectMm(0, 0, frameMm, layout.heightMm()), dpi);
        fill(bits, new RectMm(layout.widthMm() - frameMm, 0, frameMm, layout.heightMm()), dpi);
        int patchPx = Units.pxOfMm(layout.patchMm(), dpi);
        try (SheetLettering letters = new SheetLettering()) {
            for (int step = 0; step < layout.steps().size(); step++) {
                double coverage = layout.steps().get(step);
                RectMm patch = layout.patch(step);
                bits.put(FlatTone.bits(method, recipe, coverage, patchPx, patchPx), Units.pxOfMm(patch.xMm(), dpi), Units.pxOfMm(patch.yMm(), dpi));
                RectMm figures = layout.figures(step);
                BitPicture words = letters.bits(Units.plain(Math.round(coverage * 1000) / 10.0), FIGURE_EM_MM, figures.widthMm(), figures.heightMm(), dpi);
                bits.put(words, Units.pxOfMm(figures.xMm(), dpi), Units.pxOfMm(figures.yMm(), dpi));
            }
        }
        return bits;
    }

    private static void fill(BitPicture bits, RectMm box, double dpi) {
        int right = Math.min(bits.widthPx(), Units.pxOfMm(box.rightMm(), dpi));
        int bottom = Math.min(bits.heightPx(), Units.pxOfMm(box.bottomMm(), dpi));
        for (int y = Units.pxOfMm(box.yMm(), dpi); y < bottom; y++) {
            for (int x = Units.pxOfMm(box.xMm(), dpi); x < right; x++) {
                bits.set(x, y, true);
            }
        }
    }
}
