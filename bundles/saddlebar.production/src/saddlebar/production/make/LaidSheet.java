package saddlebar.production.make;

import java.util.List;
import java.util.Locale;

import saddlebar.model.commission.TonerSide;
import saddlebar.production.facts.PaperFacts;

/**
 * A sheet as laid out, before its stencils are looked at.
 *
 * @param number     from 1 over the whole commission
 * @param of         sheets in all
 * @param paper      its size, upright or turned
 * @param processKey all its stencils go this way to the mesh
 * @param tonerSide  and touch it on this side
 * @param dpi        resolution of all
 * @param stencils   in reading order
 */
public record LaidSheet(int number, int of, PaperFacts paper, String processKey, TonerSide tonerSide, double dpi, List<LaidStencil> stencils) {
    public LaidSheet {
        stencils = List.copyOf(stencils);
    }

    String file() {
        return String.format(Locale.ROOT, "sheets/sheet-%02d", number);
    }
}
