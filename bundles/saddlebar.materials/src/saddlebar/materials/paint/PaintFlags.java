package saddlebar.materials.paint;

import java.util.ArrayList;
import java.util.List;

/**
 * What is poisonous or dear in a paint, with the caution for who weighs it out. They defer to the maker's instructions, the local rules and licensed
 * practice.
 *
 * @param silica all vitreous powders hold silica unless the maker says otherwise
 */
public record PaintFlags(boolean lead, boolean cadmium, boolean silica, boolean gold) {

    public List<String> cautions() {
        List<String> cautions = new ArrayList<>();
        if (lead) {
            cautions.add("Lead: poisonous powder. Gloves and fitted respirator, wet-clean, wash before eating; children and pregnant people keep away; never on"
                    + " surfaces for food or drink.");
        }
        if (cadmium) {
            cautions.add("Cadmium: poisonous powder, and fumes in the kiln. Fitted respirator, vent the kiln; never on surfaces for food or drink.");
        }
        if (silica) {
            cautions.add("Silica dust: fitted respirator while weighing and sieving; wet-clean, never sweep or blow.");
        }
        if (!cautions.isEmpty()) {
            cautions.add("The maker's instructions, the local rules and licensed practice come before these cautions.");
        }
        return cautions;
    }
}
