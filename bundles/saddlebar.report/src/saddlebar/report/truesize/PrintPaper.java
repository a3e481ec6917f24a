package saddlebar.report.truesize;

import java.util.List;
import java.util.Locale;

import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Require;

/**
 * What is printed on: sheets, or a roll that is as long as needed. Letter and tabloid by ANSI/ASME Y14.1, A sizes by ISO 216.
 *
 * @param name     for people
 * @param widthMm  across, 100 to 2,000
 * @param heightMm down; of a roll the longest page wanted, up to {@value TrueSizeDrawing#MOST_MM} and the margins
 * @param roll     whether a page may be shorter
 * @param marginMm that the printer leaves white on each side, 0 to 50 and less than a quarter of the width
 */
public record PrintPaper(String name, double widthMm, double heightMm, boolean roll, double marginMm) {
    /** What common printers leave white (common practice, no source). */
    public static final double USUAL_MARGIN_MM = 6;
    private static final double LONGEST_ROLL_MM = TrueSizeDrawing.MOST_MM + 200;

    public PrintPaper {
        Require.text("name", name);
        Require.within("widthMm", widthMm, 100, 2_000);
        Require.within("heightMm", heightMm, 100, LONGEST_ROLL_MM);
        Require.within("marginMm", marginMm, 0, Math.min(50, Math.min(widthMm, heightMm) / 4));
    }

    public static PrintPaper sheet(String name, double widthMm, double heightMm) {
        return new PrintPaper(name, widthMm, heightMm, false, USUAL_MARGIN_MM);
    }

    public static PrintPaper roll(double widthMm) {
        return new PrintPaper("roll of " + Math.round(widthMm) + " mm", widthMm, LONGEST_ROLL_MM, true, USUAL_MARGIN_MM);
    }

    public static List<PrintPaper> common() {
        return List.of(sheet("letter", 215.9, 279.4), sheet("tabloid", 279.4, 431.8), sheet("a4", 210, 297), sheet("a3", 297, 420), sheet("a2", 420, 594),
                sheet("a1", 594, 841), sheet("a0", 841, 1189));
    }

    /**
     * One of {@link #common()} by name, {@code WxH} in mm, or {@code roll:W} in mm.
     *
     * @throws Refusal for other words or sizes
     */
    public static PrintPaper of(String words) {
        String wanted = words.strip().toLowerCase(Locale.ROOT);
        for (PrintPaper paper : common()) {
            if (paper.name.equals(wanted)) {
                return paper;
            }
        }
        try {
            if (wanted.startsWith("roll:")) {
                return roll(Double.parseDouble(wanted.substring("roll:".length())));
            }
            String[] sides = wanted.split("x", -1);
            if (sides.length == 2) {
                return sheet(wanted, Double.parseDouble(sides[0]), Double.parseDouble(sides[1]));
            }
        } catch (IllegalArgumentException e) {
            throw new Refusal("paper " + words, "its sides must be numbers of 100 to 2000 mm", "give a name such as a3, WIDTHxHEIGHT in mm, or roll:WIDTH", e);
        }
        throw new Refusal("paper " + words, "there is no paper of that name", "give letter, tabloid, a4, a3, a2, a1, a0, WIDTHxHEIGHT in mm, or roll:WIDTH");
    }

    /** The same sheet with its other side across; a roll stays as it is. */
    public PrintPaper turned() {
        return roll ? this : new PrintPaper(name, heightMm, widthMm, false, marginMm);
    }
}
