package saddlebar.stencil.wedge;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Units;
import saddlebar.stencil.BitPicture;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.process.Face;
import saddlebar.stencil.process.StencilProcess;
import saddlebar.stencil.process.TonerSide;
import saddlebar.stencil.sheet.Paper;
import saddlebar.stencil.sheet.PlacedStencil;
import saddlebar.stencil.sheet.RectMm;
import saddlebar.stencil.sheet.SheetFrame;
import saddlebar.stencil.sheet.SheetLabel;
import saddlebar.stencil.sheet.SheetPlan;

/** A sheet of wedges, one below the other, one for each recipe: to be printed with one paint on one mesh, fired and measured. */
public final class WedgeSheet {
    private WedgeSheet() {
    }

    /**
     * The plan of the sheet.
     *
     * @param title   commission or test, shown in the head
     * @param note    paint and mesh, shown in the head
     * @param recipes one wedge each, all at the same dpi
     * @throws Refusal if they do not fit
     */
    public static SheetPlan plan(WedgeLayout layout, List<ScreeningRecipe> recipes, ScreeningMethods methods, Paper paper, StencilProcess process,
            TonerSide touches, Face face, boolean mirrored, String title, String note) throws IOException {
        double dpi = recipes.get(0).dpi();
        RectMm room = SheetFrame.of(paper, SheetPlan.COMMON_MARGIN_MM).usableMm();
        double stepMm = layout.heightMm() + SheetFrame.CAPTION_MM + 1;
        int fit = (int) ((room.heightMm() - layout.heightMm()) / stepMm) + 1;
        if (layout.widthMm() > room.widthMm() || recipes.size() > fit) {
            throw new Refusal("wedge", recipes.size() + " wedges of " + mm(layout.widthMm()) + " x " + mm(layout.heightMm()) + " mm do not fit on "
                    + paper.name() + ", which has room for " + mm(room.widthMm()) + " x " + mm(room.heightMm()) + " mm",
                    "take a larger sheet, fewer recipes or fewer steps");
        }
        List<PlacedStencil> placed = new ArrayList<>();
        for (int i = 0; i < recipes.size(); i++) {
            ScreeningRecipe recipe = recipes.get(i);
            if (recipe.dpi() != dpi) {
                throw new Refusal("dpi", "the wedges of one sheet ask for " + Units.plain(dpi) + " and " + Units.plain(recipe.dpi()), "take one resolution");
            }
            BitPicture bits = WedgeStrip.bits(layout, methods.method(recipe.method()), recipe);
            double xMm = room.xMm() + (room.widthMm() - layout.widthMm()) / 2;
            placed.add(new PlacedStencil("wedge " + (i + 1), (i + 1) + " " + name(recipe), xMm, room.yMm() + i * stepMm, 0, bits.widthPx(), bits.heightPx(),
                    face, mirrored, () -> process.toner(bits.bands(), mirrored)));
        }
        return new SheetPlan(paper, dpi, SheetPlan.COMMON_MARGIN_MM, process, touches, new SheetLabel(title, 1, 1, note), placed);
    }

    private static String mm(double value) {
        return Units.plain(Math.round(value * 10) / 10.0);
    }

    /** What tells this recipe from another, in a few letters. */
    public static String name(ScreeningRecipe recipe) {
        return switch (recipe.method()) {
            case "am" -> "am " + Units.plain(recipe.lpi()) + "/" + Units.plain(recipe.angleDeg()) + " " + recipe.dot();
            case "hybrid", "stipple" -> recipe.method() + " " + Units.plain(recipe.lpi()) + " " + Units.plain(recipe.dotMm()) + " mm";
            case "lines" -> "lines " + Units.plain(recipe.lpi()) + " " + recipe.course();
            case "diffusion" -> recipe.filter() + " " + Units.plain(recipe.dotMm()) + " mm";
            case "solid" -> "solid";
            default -> recipe.method() + " " + Units.plain(recipe.dotMm()) + " mm";
        };
    }
}
