package saddlebar.production.make;

import java.util.Map;

/**
 * A stencil that lies under {@code made/}, made now or kept.
 *
 * @param planned      what it is
 * @param key          content key
 * @param file         path of its TIFF under {@code made/}
 * @param sha256       of the file
 * @param sha256OfBits of its toner bits, whatever the file format
 * @param mirrored     whether the file is mirrored against the artwork
 * @param coverage     share of its px that prints
 * @param tooFine      openings finer than the mesh prints
 * @param bridgesLost  bridges finer than the mesh holds
 * @param fresh        whether it was made now
 * @param seconds      how long that took
 */
public record MadeStencil(PlannedLayerStencil planned, String key, String file, String sha256, String sha256OfBits, boolean mirrored, double coverage,
        long tooFine, long bridgesLost, boolean fresh, double seconds) {
    /** What the index keeps of it. */
    Map<String, String> facts() {
        return Map.of("sha256OfBits", sha256OfBits, "mirrored", String.valueOf(mirrored), "coverage", String.valueOf(coverage), "tooFine",
                String.valueOf(tooFine), "bridgesLost", String.valueOf(bridgesLost));
    }

    static MadeStencil kept(PlannedLayerStencil planned, MadeFileFacts facts, String file) {
        Map<String, String> found = facts.facts();
        return new MadeStencil(planned, facts.key(), file, facts.sha256(), found.get("sha256OfBits"), Boolean.parseBoolean(found.get("mirrored")),
                Double.parseDouble(found.get("coverage")), Long.parseLong(found.get("tooFine")), Long.parseLong(found.get("bridgesLost")), false, 0);
    }
}
