package saddlebar.materials.job;

import java.util.Map;

/**
 * The site, and what lies on the shelf for it.
 *
 * @param roadKm    of all journeys there and back
 * @param glassOnM2 sheet glass on hand, by its name
 */
public record SiteJob(double roadKm, Map<String, Double> glassOnM2) {
    public static final SiteJob NONE = new SiteJob(0, Map.of());

    public SiteJob {
        glassOnM2 = Map.copyOf(glassOnM2);
    }
}
