package saddlebar.ui.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.osgi.util.NLS;

import saddlebar.model.problem.Refusal;
import saddlebar.stencil.printer.TonerJudgement;
import saddlebar.stencil.sheet.PrinterFit;
import saddlebar.ui.screening.ScreenWords;
import saddlebar.ui.screening.TypedNumber;

/**
 * What was measured on a test page, as it is typed.
 *
 * @param across  along the top
 * @param down    down the left side
 * @param falling diagonal from the top left; may be empty with {@code rising}
 * @param rising  diagonal from the bottom left
 * @param bands   distances of bands, parted by blanks or semicolons; may be empty
 * @param density of a solid; may be empty
 */
public record PrinterTyped(String across, String down, String falling, String rising, String bands, String density) {
    /** Whether lengths were typed at all. */
    public boolean hasLengths() {
        return !(across + down + falling + rising).isBlank();
    }

    /**
     * Scale and skew.
     *
     * @param wantedAcrossMm distance of the register marks in the file
     * @throws Refusal in words if it cannot be told
     */
    public PrinterFit fit(double wantedAcrossMm, double wantedDownMm) {
        double acrossMm = length(ScreenWords.Printer_across, across);
        double downMm = length(ScreenWords.Printer_down, down);
        if (falling.isBlank() != rising.isBlank()) {
            throw new Refusal(ScreenWords.Printer_diagonals, ScreenWords.Printer_oneDiagonal, ScreenWords.Printer_bothOrNone);
        }
        double straight = Math.hypot(acrossMm, downMm);
        return PrinterFit.measured(wantedAcrossMm, wantedDownMm, acrossMm, downMm, falling.isBlank() ? straight : length(ScreenWords.Printer_falling, falling),
                rising.isBlank() ? straight : length(ScreenWords.Printer_rising, rising));
    }

    /** Distances of bands in mm. */
    public List<Double> bandsMm() {
        List<Double> all = new ArrayList<>();
        for (String word : bands.strip().split("[;\\s]+")) {
            if (!word.isEmpty()) {
                all.add(length(ScreenWords.Printer_bands, word));
            }
        }
        return all;
    }

    /** The solid judged, if its density was typed. */
    public Optional<TonerJudgement> toner() {
        if (density.isBlank()) {
            return Optional.empty();
        }
        OptionalDouble typed = TypedNumber.PLAIN.read(density);
        if (typed.isEmpty() || typed.getAsDouble() < 0 || typed.getAsDouble() > 6) {
            throw new Refusal(ScreenWords.Printer_density, NLS.bind(ScreenWords.Tone_noNumber, density), ScreenWords.Printer_densityTry);
        }
        return Optional.of(TonerJudgement.ofDensity(typed.getAsDouble()));
    }

    private static double length(String where, String typed) {
        OptionalDouble mm = TypedNumber.FINE_LENGTH.read(typed);
        if (mm.isEmpty()) {
            throw new Refusal(where, NLS.bind(ScreenWords.Tone_noNumber, typed), ScreenWords.Printer_lengthTry);
        }
        return mm.getAsDouble();
    }
}
