package saddlebar.production.facts;

import java.util.Objects;

import saddlebar.model.commission.Face;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.SightLineRule;
import saddlebar.model.units.Require;

/**
 * A painted layer of a panel that is made with stencils.
 *
 * @param id          the layer's id in the model: names it for results and records, goes into no made file
 * @param name        what the maker calls it
 * @param artLayer    the layer of the artwork that shows it
 * @param paint       name of its paint
 * @param paintId     id of its paint, for records
 * @param bleedMm     how far paint runs past the cut edge
 * @param sightLine   what it does under the line that foil or came covers
 * @param sightLineMm how much of each edge is covered
 */
public record LayerFacts(String id, String name, LayerRole role, String artLayer, Face face, String paint, String paintId, FrameFacts frame,
        double bleedMm, SightLineRule sightLine, double sightLineMm, RecipeFacts recipe) {
    public LayerFacts {
        Require.text("id", id);
        Require.text("name", name);
        Objects.requireNonNull(role, "role");
        Require.text("artLayer", artLayer);
        Objects.requireNonNull(face, "face");
        Require.text("paint", paint);
        Objects.requireNonNull(paintId, "paintId");
        Objects.requireNonNull(frame, "frame");
        Require.within("bleedMm", bleedMm, 0, 50);
        Objects.requireNonNull(sightLine, "sightLine");
        Require.within("sightLineMm", sightLineMm, 0, 50);
        Objects.requireNonNull(recipe, "recipe");
    }

    /** Where the layer prints on a piece: what decides which pieces carry it. */
    public String printedPlace() {
        return artLayer + " " + bleedMm + " " + sightLine + " " + sightLineMm;
    }

    /** Layers with equal settings are printed alike and may share stencils, also over windows. */
    public String printedAlike() {
        return paint + " " + face + " " + frame + " " + bleedMm + " " + sightLine + " " + sightLineMm + " " + recipe;
    }
}
