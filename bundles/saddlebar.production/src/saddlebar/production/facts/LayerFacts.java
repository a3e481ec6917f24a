package saddlebar.production.facts;

import java.util.LinkedHashMap;
import java.util.Map;
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

    /** All settings by the names that records use: what was taken that day, or is taken today. */
    public Map<String, Object> settings() {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("layer", name());
        all.put("role", role().getLiteral());
        all.put("paint", paint());
        all.put("face", face().getLiteral());
        all.put("frame", frame().name());
        all.put("mesh", frame().mesh());
        all.put("bleedMm", bleedMm());
        all.put("sightLine", sightLine().getLiteral());
        all.put("sightLineMm", sightLineMm());
        all.put("method", recipe.screening().method());
        all.put("dpi", recipe.screening().dpi());
        all.put("lpi", recipe.screening().lpi());
        all.put("angleDeg", recipe.screening().angleDeg());
        all.put("dot", recipe.screening().dot());
        all.put("dotMm", recipe.screening().dotMm());
        all.put("filter", recipe.screening().filter());
        all.put("course", recipe.screening().course());
        all.put("courseLayer", recipe.courseLayer());
        all.put("noiseSide", recipe.screening().noiseSide());
        all.put("clump", recipe.screening().clump());
        all.put("supercell", recipe.screening().supercell());
        all.put("toneMode", recipe.tone().mode().getLiteral());
        all.put("toneFrom", recipe.tone().from());
        recipe.tone().to().ifPresent(to -> all.put("toneTo", to));
        all.put("endLow", recipe.tone().endLow());
        all.put("endHigh", recipe.tone().endHigh());
        all.put("endRule", recipe.tone().endRule().getLiteral());
        all.put("curve", recipe.tone().curve());
        all.put("calibration", recipe.tone().calibration());
        all.put("processKey", recipe.processKey());
        all.put("tonerSide", recipe.tonerSide().getLiteral());
        all.put("mirror", recipe.mirror().getLiteral());
        all.put("openMm", recipe.openMm());
        all.put("bridgeMm", recipe.bridgeMm());
        return all;
    }
}
