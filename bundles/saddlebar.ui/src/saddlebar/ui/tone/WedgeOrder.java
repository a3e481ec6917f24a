package saddlebar.ui.tone;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import saddlebar.model.work.Work;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.code.BitonalSettings;
import saddlebar.stencil.code.SheetPdf;
import saddlebar.stencil.process.Face;
import saddlebar.stencil.process.StencilProcess;
import saddlebar.stencil.process.StencilProcesses;
import saddlebar.stencil.process.TonerSide;
import saddlebar.stencil.sheet.ComposedSheet;
import saddlebar.stencil.sheet.Paper;
import saddlebar.stencil.sheet.SheetPlan;
import saddlebar.stencil.wedge.WedgeLayout;
import saddlebar.stencil.wedge.WedgeSheet;

/**
 * A wedge sheet to be written for one recipe: plain values, taken from the model on the thread that owns it.
 *
 * @param screening  the recipe
 * @param processKey of the stencil process
 * @param side       of the mesh that the toner touches
 * @param face       of the glass
 * @param paper      to print on
 * @param note       paint and mesh, written on it
 */
record WedgeOrder(ScreeningRecipe screening, String processKey, TonerSide side, Face face, Paper paper, String note) {
    /** Work that {@link #write} tells. */
    long units() {
        return 2L * paper.heightPx(screening.dpi());
    }

    void write(Path target, Work work) throws IOException {
        StencilProcess process = StencilProcesses.ownProcesses().process(processKey);
        SheetPlan plan = WedgeSheet.plan(WedgeLayout.usual(), List.of(screening), ScreeningMethods.ownMethods(), paper, process, side, face,
                process.mirrored(side, face), "Step wedge", note);
        SheetPdf.write(ComposedSheet.of(plan), target, BitonalSettings.at(screening.dpi()).withTitle("Step wedge " + note).replacing(true), work);
    }
}
