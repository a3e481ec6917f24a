package saddlebar.materials.metal;

import java.util.ArrayList;
import java.util.List;

import saddlebar.cartoon.opening.BarRule;
import saddlebar.model.units.Require;

/**
 * Bars across a panel, by a studio's rule of thumb: figures differ between studios and have no source. Wind load, safety glazing and fixing are for the
 * local code and a licensed professional.
 *
 * @param heightsMm of the bars, from the panel's top; empty if none
 * @param reason    why, or why not
 */
public record Reinforcement(List<Double> heightsMm, double barMm, String reason) {
    /** Stands wherever bars are told. */
    public static final String CAUTION = BarRule.CAUTION;
    /** Between 2 and 4 m in trade texts. */
    private static final double PERIMETER_MM = 3000;
    private static final double SHORT_MM = 600;
    private static final double LONG_MM = 900;
    /** One copper tie for so much of a bar (studio setting). */
    private static final double TIE_EVERY_MM = 150;

    public Reinforcement {
        heightsMm = List.copyOf(heightsMm);
    }

    public static Reinforcement of(double widthMm, double heightMm, BarRule rule) {
        Require.within("widthMm", widthMm, 1, 1e5);
        Require.within("heightMm", heightMm, 1, 1e5);
        boolean large = 2 * (widthMm + heightMm) > PERIMETER_MM || Math.min(widthMm, heightMm) > SHORT_MM || Math.max(widthMm, heightMm) > LONG_MM;
        if (!large) {
            return new Reinforcement(List.of(), widthMm, "small enough without bars");
        }
        int fields = (int) Math.max(2, Math.ceil(heightMm / rule.mostMm() - 1e-9));
        List<Double> heights = new ArrayList<>();
        for (int i = 1; i < fields; i++) {
            heights.add(heightMm * i / fields);
        }
        return new Reinforcement(heights, widthMm, "more than 3 m around, or larger than 600 x 900 mm");
    }

    /** Copper ties where bars are round. */
    public int ties() {
        return heightsMm.size() * (int) Math.max(2, Math.ceil(barMm / TIE_EVERY_MM));
    }
}
