package saddlebar.stencil.printer;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

import saddlebar.stencil.BitPicture;
import saddlebar.stencil.ScreeningMethod;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.process.Face;
import saddlebar.stencil.process.FilmPositiveProcess;
import saddlebar.stencil.process.TonerSide;
import saddlebar.stencil.sheet.Paper;
import saddlebar.stencil.sheet.PlacedStencil;
import saddlebar.stencil.sheet.PrinterFit;
import saddlebar.stencil.sheet.RectMm;
import saddlebar.stencil.sheet.SheetFrame;
import saddlebar.stencil.sheet.SheetLabel;
import saddlebar.stencil.sheet.SheetLettering;
import saddlebar.stencil.sheet.SheetPlan;
import saddlebar.stencil.wedge.FlatTone;
import saddlebar.stencil.wedge.WedgeLayout;
import saddlebar.stencil.wedge.WedgeStrip;
import saddlebar.model.units.Units;

/**
 * A page to measure a laser printer with. Its register marks give the scale along both axes and the skew; a solid of toner in a framed wedge gives
 * the toner's density, by instrument or by photograph; a strip of even tone down the page, with a scale in mm beside it, shows the bands of the
 * engine. Toner is black on it, whatever the studio's process. Sizes are ours.
 */
public final class PrinterTestPage {
    /** The wedge on the page: bare, quarters, solid. */
    public static final WedgeLayout WEDGE = new WedgeLayout(List.of(0.0, 0.25, 0.5, 0.75, 1.0), 14, 4, 2, 10);
    /** Tone of the strip: bands show best where dots are far apart and still many. */
    private static final double STRIP_TONE = 0.3;
    private static final double STRIP_MM = 40;
    private static final double SCALE_MM = 9;
    private static final double TICK_STEP_MM = 5;
    private static final double TICK_MM = 0.15;
    private static final double EM_MM = 2.4;

    private PrinterTestPage() {
    }

    /**
     * The page as a sheet.
     *
     * @param printer its name, shown in the head
     * @throws saddlebar.model.problem.Refusal if the paper is too small for it
     */
    public static SheetPlan plan(String printer, Paper paper, double marginMm, double dpi, ScreeningMethods methods) throws IOException {
        SheetFrame frame = SheetFrame.of(paper, marginMm);
        RectMm room = frame.usableMm();
        SheetPlan empty = empty(printer, paper, marginMm, dpi);
        String note = String.format(Locale.ROOT, "from middle to middle: %.2f mm across, %.2f mm down", PrinterFit.wantedAcrossMm(empty),
                PrinterFit.wantedDownMm(empty));
        BitPicture bits = bits(room, dpi, methods);
        PlacedStencil pattern = new PlacedStencil("test page", "test", room.xMm(), room.yMm(), 0, bits.widthPx(), bits.heightPx(), Face.INTERIOR, false,
                bits::bands);
        return sheet(printer, note, paper, marginMm, dpi, List.of(pattern));
    }

    /** The page without its pattern: enough to know where its register marks are to lie. */
    public static SheetPlan empty(String printer, Paper paper, double marginMm, double dpi) {
        return sheet(printer, "", paper, marginMm, dpi, List.of());
    }

    private static SheetPlan sheet(String printer, String note, Paper paper, double marginMm, double dpi, List<PlacedStencil> placed) {
        return new SheetPlan(paper, dpi, marginMm, new FilmPositiveProcess(), TonerSide.PRINT, new SheetLabel(printer, 1, 1, note), placed);
    }

    private static BitPicture bits(RectMm room, double dpi, ScreeningMethods methods) throws IOException {
        BitPicture page = new BitPicture((int) Math.floor(room.widthMm() * dpi / Units.MM_PER_INCH) - 1,
                (int) Math.floor(room.heightMm() * dpi / Units.MM_PER_INCH) - 1);
        ScreeningRecipe recipe = ScreeningRecipe.withDefaults().withDpiAndLpi(dpi, Math.min(40, dpi / 15));
        ScreeningMethod am = methods.method("am");
        page.put(WedgeStrip.bits(WEDGE, am, recipe), px(SCALE_MM + STRIP_MM + 8, dpi), px(4, dpi));
        int height = page.heightPx() - px(2, dpi);
        page.put(FlatTone.bits(methods.method("diffusion"), recipe.withDotMm(Math.max(recipe.dotMm(), 0.1)), STRIP_TONE, px(STRIP_MM, dpi), height),
                px(SCALE_MM, dpi), px(1, dpi));
        try (SheetLettering letters = new SheetLettering()) {
            for (int tick = 0; 1 + tick * TICK_STEP_MM < room.heightMm() - 2; tick++) {
                double yMm = 1 + tick * TICK_STEP_MM;
                double lengthMm = tick % 2 == 0 ? 2.4 : 1.2;
                for (int y = px(yMm, dpi); y < px(yMm + TICK_MM, dpi) && y < page.heightPx(); y++) {
                    for (int x = px(SCALE_MM - 0.6 - lengthMm, dpi); x < px(SCALE_MM - 0.6, dpi); x++) {
                        page.set(x, y, true);
                    }
                }
                if (tick % 2 == 0 && yMm > EM_MM / 2 && yMm < room.heightMm() - 3) {
                    BitPicture figure = letters.bits(String.valueOf(Math.round(tick * TICK_STEP_MM)), EM_MM, 5.4, EM_MM + 1, dpi);
                    page.put(figure, 0, Math.max(0, px(yMm - EM_MM / 2 - 0.5, dpi)));
                }
            }
        }
        return page;
    }

    private static int px(double mm, double dpi) {
        return Units.pxOfMm(mm, dpi);
    }
}
