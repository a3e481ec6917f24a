package saddlebar.production.make;

import java.util.List;
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
 * @param looseIslands those of them beside which nothing is left
 * @param mended       what was widened, a step in words each
 * @param mendsLost    places of the recipe at which nothing was too narrow
 * @param fresh        whether it was made now
 * @param seconds      how long that took
 */
public record MadeStencil(PlannedLayerStencil planned, String key, String file, String sha256, String sha256OfBits, boolean mirrored, double coverage,
        long tooFine, long bridgesLost, long looseIslands, List<String> mended, int mendsLost, boolean fresh, double seconds) {
    /** What the index keeps of it. */
    Map<String, String> facts() {
        return Map.of("looseIslands", String.valueOf(looseIslands), "mended", String.join("\n", mended), "mendsLost", String.valueOf(mendsLost),
                "sha256OfBits", sha256OfBits, "mirrored", String.valueOf(mirrored), "coverage", String.valueOf(coverage), "tooFine",
                String.valueOf(tooFine), "bridgesLost", String.valueOf(bridgesLost));
    }

    static MadeStencil kept(PlannedLayerStencil planned, MadeFileFacts facts, String file) {
        Map<String, String> found = facts.facts();
        return new MadeStencil(planned, facts.key(), file, facts.sha256(), found.get("sha256OfBits"), Boolean.parseBoolean(found.get("mirrored")),
                Double.parseDouble(found.get("coverage")), Long.parseLong(found.get("tooFine")), Long.parseLong(found.get("bridgesLost")),
                Long.parseLong(found.getOrDefault("looseIslands", "0")), lines(found.getOrDefault("mended", "")),
                Integer.parseInt(found.getOrDefault("mendsLost", "0")), false, 0);
    }

    private static List<String> lines(String text) {
        return text.isEmpty() ? List.of() : List.of(text.split("\n"));
    }
}
