package saddlebar.production.facts;

import saddlebar.model.units.Require;

/**
 * The frame that a layer's stencils are made for.
 *
 * @param name          what the studio calls it
 * @param mesh          name of its mesh
 * @param printWidthMm  image area less the squeegee margin on both sides
 * @param printHeightMm likewise
 */
public record FrameFacts(String name, String mesh, double printWidthMm, double printHeightMm) {
    public FrameFacts {
        Require.text("name", name);
        Require.text("mesh", mesh);
        Require.within("printWidthMm", printWidthMm, 1, 10_000);
        Require.within("printHeightMm", printHeightMm, 1, 10_000);
    }
}
