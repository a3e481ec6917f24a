package saddlebar.stencil.sheet;

import java.util.Locale;

import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Require;

/**
 * What a printer makes of a sheet: x' = acrossScale x + skew y, y' = downScale y. Measured on a test page (any sheet of this program, with its register
 * marks) by the distances between the marks' middles: along the top, down the left side, and both diagonals.
 *
 * @param acrossScale printed over wanted, 0.95 to 1.05
 * @param downScale   likewise
 * @param skew        mm to the right for each mm down, -0.02 to 0.02
 */
public record PrinterFit(double acrossScale, double downScale, double skew) {
    public static final PrinterFit TRUE = new PrinterFit(1, 1, 0);

    public PrinterFit {
        within("across", acrossScale, 0.95, 1.05);
        within("down", downScale, 0.95, 1.05);
        within("skew", skew, -0.02, 0.02);
    }

    private static void within(String what, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new Refusal("printer", String.format(Locale.ROOT, "%s comes out as %.4f, which no printer does", what, value),
                    "print at full size, without fitting to the page, and measure between the middles of the register marks again");
        }
    }

    /**
     * From what was measured.
     *
     * @param wantedAcrossMm distance of the register marks in the file, along the top
     * @param wantedDownMm   likewise down the left side
     * @param acrossMm       measured along the top
     * @param downMm         measured down the left side
     * @param fallingMm      measured from top left to bottom right
     * @param risingMm       measured from bottom left to top right
     */
    public static PrinterFit measured(double wantedAcrossMm, double wantedDownMm, double acrossMm, double downMm, double fallingMm, double risingMm) {
        Require.within("wantedAcrossMm", wantedAcrossMm, 10, 3000);
        Require.within("wantedDownMm", wantedDownMm, 10, 3000);
        // with the left side's foot moved by s: falling^2 = (a + s)^2 + h^2, rising^2 = (a - s)^2 + h^2, so that falling^2 - rising^2 = 4 a s
        double moved = (fallingMm * fallingMm - risingMm * risingMm) / (4 * acrossMm);
        double height = Math.sqrt(Math.max(0, downMm * downMm - moved * moved));
        return new PrinterFit(acrossMm / wantedAcrossMm, height / wantedDownMm, moved / wantedDownMm);
    }

    /**
     * The same printer for a sheet that lies across, fed upright all the same. A lean of the one axis is a lean of the other the other way and a turn
     * of the whole sheet, which moves nothing within it.
     */
    public PrinterFit turned() {
        return new PrinterFit(downScale, acrossScale, -skew);
    }

    /** Whether sheets need no correction. */
    public boolean isTrue() {
        return equals(TRUE);
    }

    /** Distance of the register marks along the top of a sheet, in the file. */
    public static double wantedAcrossMm(SheetPlan plan) {
        return plan.frame().headMm().widthMm() - SheetFrame.REGISTER_MM;
    }

    /** Distance of the register marks down the left side of a sheet, in the file. */
    public static double wantedDownMm(SheetPlan plan) {
        return plan.frame().footMm().bottomMm() - SheetFrame.REGISTER_MM - plan.frame().headMm().yMm();
    }

    /** Where a place of the file comes out, mm. */
    public double[] printed(double xMm, double yMm) {
        return new double[] {acrossScale * xMm + skew * yMm, downScale * yMm};
    }
}
