package saddlebar.stencil.sheet;

import java.util.List;
import java.util.Locale;

import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Require;
import saddlebar.model.units.Units;

/**
 * A size of sheet. Letter and tabloid by ANSI/ASME Y14.1 (8.5 x 11 in, 11 x 17 in), A4 and A3 by ISO 216.
 *
 * @param name     what the studio calls it
 * @param widthMm  side that lies across, 50 to 2,000 mm
 * @param heightMm side that runs down, 50 to 2,000 mm
 */
public record Paper(String name, double widthMm, double heightMm) {
    public static final Paper LETTER = new Paper("letter", 215.9, 279.4);
    public static final Paper TABLOID = new Paper("tabloid", 279.4, 431.8);
    public static final Paper A4 = new Paper("a4", 210, 297);
    public static final Paper A3 = new Paper("a3", 297, 420);

    public Paper {
        Require.text("name", name);
        Require.within("widthMm", widthMm, 50, 2_000);
        Require.within("heightMm", heightMm, 50, 2_000);
    }

    public static List<Paper> common() {
        return List.of(LETTER, TABLOID, A4, A3);
    }

    /** One of {@link #common()} by name, or {@code WxH} in mm. */
    public static Paper of(String words) {
        String wanted = words.strip().toLowerCase(Locale.ROOT);
        for (Paper paper : common()) {
            if (paper.name.equals(wanted)) {
                return paper;
            }
        }
        String[] sides = wanted.split("x", -1);
        try {
            if (sides.length == 2) {
                return new Paper(wanted, Double.parseDouble(sides[0]), Double.parseDouble(sides[1]));
            }
        } catch (IllegalArgumentException e) {
            throw new Refusal("sheet " + words, "sides must be 50 to 2000 mm", "give letter, tabloid, a4, a3 or WIDTHxHEIGHT in mm", e);
        }
        throw new Refusal("sheet " + words, "there is no sheet of that name", "give letter, tabloid, a4, a3 or WIDTHxHEIGHT in mm");
    }

    /** The same paper with its long side across. */
    public Paper turned() {
        return new Paper(name, heightMm, widthMm);
    }

    public int widthPx(double dpi) {
        return Units.pxOfMm(widthMm, dpi);
    }

    public int heightPx(double dpi) {
        return Units.pxOfMm(heightMm, dpi);
    }

    /** Sides for a person: {@code 279.4 x 431.8 mm}. */
    public String sides() {
        return Sides.of(widthMm, heightMm);
    }
}
