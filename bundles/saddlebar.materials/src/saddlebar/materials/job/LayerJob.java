package saddlebar.materials.job;

import java.util.List;

import saddlebar.materials.paint.PrintedArea;

/**
 * A painted layer.
 *
 * @param paintId     empty if no paint was chosen
 * @param material    what its stencils are printed on: fused film, positive film
 * @param firingOrder layers of one number share a firing
 * @param byHand      no stencils; the area is the pieces' and the coverage is assumed
 * @param prints      one for each stencil
 * @param assumed     the coverage is a guess: its stencils are not made yet, or it is painted by hand
 */
public record LayerJob(String name, String paintId, String material, int firingOrder, boolean byHand, List<PrintedArea> prints, boolean assumed) {
    public LayerJob {
        prints = List.copyOf(prints);
    }

    public int screens() {
        return byHand ? 0 : prints.size();
    }

    public int pulls() {
        return byHand ? 0 : prints.stream().mapToInt(PrintedArea::prints).sum();
    }
}
