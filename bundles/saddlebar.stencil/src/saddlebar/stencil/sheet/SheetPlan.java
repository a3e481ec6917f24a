package saddlebar.stencil.sheet;

import java.util.List;
import java.util.Objects;

import saddlebar.model.units.Require;
import saddlebar.stencil.process.StencilProcess;
import saddlebar.stencil.process.TonerSide;

/**
 * One sheet before it is drawn. Says nothing of time or place: same plan and bits, same sheet.
 *
 * @param paper    size of the sheet
 * @param dpi      device pixels an inch
 * @param marginMm border that the printer cannot reach, 0 to 30 mm on each side
 * @param process  gives the ground: toner where what prints is white, clear otherwise
 * @param touches  side of the mesh that the toner touches
 * @param label    what the sheet is called
 * @param stencils in any order; none may overlap another or leave {@link SheetFrame#usableMm()}
 */
public record SheetPlan(Paper paper, double dpi, double marginMm, StencilProcess process, TonerSide touches, SheetLabel label,
        List<PlacedStencil> stencils) {
    /** Common practice: office laser printers leave 4.3 mm on each side. */
    public static final double COMMON_MARGIN_MM = 4.3;

    public SheetPlan {
        Objects.requireNonNull(paper, "paper");
        Require.within("dpi", dpi, 50, 10_000);
        Require.within("marginMm", marginMm, 0, 30);
        Objects.requireNonNull(process, "process");
        Objects.requireNonNull(touches, "touches");
        Objects.requireNonNull(label, "label");
        stencils = List.copyOf(stencils);
    }

    public int widthPx() {
        return paper.widthPx(dpi);
    }

    public int heightPx() {
        return paper.heightPx(dpi);
    }

    /** What the sheet leaves for stencils. */
    public SheetFrame frame() {
        return SheetFrame.of(paper, marginMm);
    }

    /** Whether each stencil is mirrored as the process, the side of the mesh and the face ask; if not, somebody ordered it otherwise. */
    public boolean mirroredByRule() {
        return stencils.stream().allMatch(stencil -> stencil.mirrored() == process.mirrored(touches, stencil.face()));
    }
}
