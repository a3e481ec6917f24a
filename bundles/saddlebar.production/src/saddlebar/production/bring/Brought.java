package saddlebar.production.bring;

import java.util.List;
import java.util.Optional;

import saddlebar.model.commission.Window;
import saddlebar.model.problem.Problem;

/**
 * What bringing brought about.
 *
 * @param window     where it went
 * @param file       the artwork's path within the commission
 * @param sha256     of its bytes
 * @param revision   from 1
 * @param pieces     pieces of the panel
 * @param layers     painted layers, in words: role and artwork layer
 * @param colourways names of the colourways
 * @param roles      what each layer of the artwork is for, and who says so
 * @param revised    what a revision made of the pieces; empty for a first drawing
 * @param problems   worst first
 */
public record Brought(Window window, String file, String sha256, int revision, int pieces, List<String> layers, List<String> colourways,
        List<LayerPurpose> roles, Optional<Revised> revised, List<Problem> problems) {
    public Brought {
        layers = List.copyOf(layers);
        colourways = List.copyOf(colourways);
        roles = List.copyOf(roles);
        problems = problems.stream().sorted(Problem.WORST_FIRST).toList();
    }
}
