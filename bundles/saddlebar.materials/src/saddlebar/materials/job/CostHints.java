package saddlebar.materials.job;

import java.util.Map;
import java.util.Optional;

/**
 * What others know better than a studio setting: they are given in as values, since crafts do not see each other.
 *
 * @param firingKwh  of one firing, by the firing order of its layers, from the simulation of the schedule that it is fired by
 * @param glassYield share of the sheets of a glass that becomes pieces, by the glass's name, from sheets that were laid out
 * @param riskShare  pieces made again for each piece made, by the studio's own records
 */
public record CostHints(Map<Integer, Double> firingKwh, Map<String, Double> glassYield, Optional<Double> riskShare) {
    public static final CostHints NONE = new CostHints(Map.of(), Map.of(), Optional.empty());

    public CostHints {
        firingKwh = Map.copyOf(firingKwh);
        glassYield = Map.copyOf(glassYield);
        glassYield.forEach((glass, share) -> {
            if (!(share > 0 && share <= 1)) {
                throw new IllegalArgumentException("the yield of " + glass + " must be more than 0, up to 1, but is " + share);
            }
        });
    }
}
