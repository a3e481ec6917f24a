package saddlebar.production.studio;

import java.time.LocalDate;
import java.util.List;

import saddlebar.model.commission.Printer;
import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Units;
import saddlebar.stencil.printer.TonerJudgement;
import saddlebar.stencil.sheet.PrinterFit;

/** Enters in the model what was measured on a printer's test page. Changes the model only; the caller saves. */
public final class PrinterBook {
    private PrinterBook() {
    }

    /** Every sheet made from now on is bent the other way. */
    public static void measured(Printer printer, PrinterFit fit, LocalDate day) {
        printer.setScaleX(fit.acrossScale());
        printer.setScaleY(fit.downScale());
        printer.setSkew(fit.skew());
        printer.setMeasured(day);
    }

    /** What the model holds, as it compensates. */
    public static PrinterFit fit(Printer printer) {
        return new PrinterFit(printer.getScaleX(), printer.getScaleY(), printer.getSkew());
    }

    /**
     * The distances of bands that somebody saw on the even strip; they take the place of what was there.
     *
     * @param periodsMm each 0.2 to 200 mm; none: no bands were seen
     */
    public static void bands(Printer printer, List<Double> periodsMm) {
        for (double period : periodsMm) {
            if (!(period >= 0.2 && period <= 200)) {
                throw new Refusal("bands", Units.plain(period) + " mm is no distance of bands", "take 0.2 to 200 mm, from the middle of one to the next");
            }
        }
        printer.getBandPeriodsMm().clear();
        printer.getBandPeriodsMm().addAll(periodsMm);
    }

    /** The solid of toner, judged. */
    public static void toner(Printer printer, TonerJudgement judgement) {
        printer.setSolidTransmittance(judgement.transmittance());
    }
}
