package saddlebar.production.colourway;

import java.util.List;

import saddlebar.production.light.LightBehind;

/**
 * The words under a vidimus, so that it speaks the reader's language; {@code {0}} and so on stand for what is put in.
 *
 * @param colourway   {0} its name
 * @param approved    {0} the day, {1} by whom
 * @param notApproved if nobody has agreed yet
 * @param lights      one for each {@link LightBehind}, in its order
 * @param size        {0} width and {1} height in mm
 * @param pieces      {0} number of pieces of a glass; for one piece {@code onePiece}
 * @param unchosen    pieces of which no glass is chosen
 * @param stronger    {0} pieces whose colour is stronger than the picture; for one piece {@code oneStronger}
 * @param caution     what a picture on a screen cannot tell
 */
public record VidimusWords(String colourway, String approved, String notApproved, List<String> lights, String size, String pieces, String onePiece,
        String unchosen, String stronger, String oneStronger, String caution) {
    public static final VidimusWords ENGLISH = new VidimusWords("Colourway {0}", "approved on {0} by {1}", "not approved yet",
            List.of("north light by day (D65)", "lamp light (A)", "dusk"), "{0} x {1} mm", "{0} pieces", "1 piece", "no glass chosen",
            "{0} pieces are stronger in colour than a screen can show.", "1 piece is stronger in colour than a screen can show.",
            "Colours are reckoned; glass itself varies from sheet to sheet.");

    public VidimusWords {
        lights = List.copyOf(lights);
        if (lights.size() != LightBehind.values().length) {
            throw new IllegalArgumentException("lights must name " + LightBehind.values().length + " lights but names " + lights.size());
        }
    }

    String light(LightBehind behind) {
        return lights.get(behind.ordinal());
    }
}
