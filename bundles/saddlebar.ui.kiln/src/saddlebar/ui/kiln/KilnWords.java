package saddlebar.ui.kiln;

import java.text.NumberFormat;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.Image;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;

import saddlebar.kiln.chart.ChartWords;
import saddlebar.kiln.fire.Firing;
import saddlebar.kiln.log.LogReview;
import saddlebar.model.problem.Problem;
import saddlebar.production.kiln.KilnHistory;
import saddlebar.production.kiln.ReviewedFiring;

/** What the bench says in the language of whoever sits at it. */
final class KilnWords {
    private KilnWords() {
    }

    static Locale locale() {
        return Locale.getDefault(Locale.Category.FORMAT);
    }

    static String number(double value, int digits) {
        NumberFormat numbers = NumberFormat.getNumberInstance(locale());
        numbers.setGroupingUsed(false);
        numbers.setMinimumFractionDigits(digits);
        numbers.setMaximumFractionDigits(digits);
        return numbers.format(value);
    }

    static String day(Instant when) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.SHORT).withLocale(locale()).format(when.atZone(ZoneId.systemDefault()));
    }

    static ChartWords chart() {
        return new ChartWords(Messages.Chart_temperature, Messages.Chart_lag, Messages.Chart_stress, Messages.Chart_hours, Messages.Chart_annealing,
                Messages.Chart_scheduled, Messages.Chart_kiln, Messages.Chart_core, Messages.Chart_measured, Messages.Chart_face, Messages.Chart_centre);
    }

    static String facts(Firing firing) {
        return NLS.bind(Messages.Schedule_facts, new Object[] {number(firing.hours(), 1), number(firing.hoursToOpen(), 1), number(firing.peakC(), 0),
                number(firing.energy().kWh(), 1), number(firing.coreLagMaxK(), 1), number(firing.tensionMaxMpa(), 2),
                firing.annealing().annealed() ? Messages.Schedule_annealed : Messages.Schedule_notAnnealed});
    }

    static String verdict(LogReview.Verdict verdict) {
        return switch (verdict) {
            case AS_SCHEDULED -> Messages.Verdict_asScheduled;
            case HOT -> Messages.Verdict_hot;
            case COLD -> Messages.Verdict_cold;
            case UNUSABLE -> Messages.Verdict_unusable;
        };
    }

    static String review(ReviewedFiring one) {
        if (one.log().isEmpty()) {
            return one.firing().logFile().isEmpty() ? Messages.Firings_noLog : Messages.Firings_badLog;
        }
        if (one.review().isEmpty()) {
            return Messages.Firings_noSchedule;
        }
        LogReview review = one.review().get();
        return NLS.bind(Messages.Firings_review, new Object[] {verdict(review.verdict()), number(review.heatWorkRatio(), 2),
                one.shiftK().map(shift -> number(shift, 1)).orElse("?"), number(review.overshootK(), 1), number(review.minutesNearPeak(), 0),
                String.valueOf(one.log().get().gaps().size())});
    }

    static String months(KilnHistory.KilnFacts kiln) {
        String drift = kiln.drift().map(found -> NLS.bind(found.clear() ? Messages.Firings_driftClear : Messages.Firings_drift, new Object[] {
                signed(found.kPerMonth()), number(found.standardError(), 1), signed(found.nowK()), String.valueOf(found.firings())}))
                .orElse(Messages.Firings_noDrift);
        String energy = kiln.energy().map(model -> NLS.bind(Messages.Firings_energy, number(model.kWh(650, 18), 1))).orElse(Messages.Firings_noEnergy);
        return drift + " " + energy;
    }

    static String signed(double value) {
        return (value >= 0 ? "+" : "\u2212") + number(Math.abs(value), 1);
    }

    /** The problem's words with the picture of how much it matters. */
    static ColumnLabelProvider problems() {
        return new ColumnLabelProvider() {
            @Override
            public String getText(Object element) {
                Problem problem = (Problem) element;
                return problem.where().isEmpty() ? problem.message() : problem.where() + ": " + problem.message();
            }

            @Override
            public Image getImage(Object element) {
                return PlatformUI.getWorkbench().getSharedImages().getImage(switch (((Problem) element).severity()) {
                    case ERROR -> ISharedImages.IMG_OBJS_ERROR_TSK;
                    case WARNING -> ISharedImages.IMG_OBJS_WARN_TSK;
                    case NOTE -> ISharedImages.IMG_OBJS_INFO_TSK;
                });
            }

            @Override
            public String getToolTipText(Object element) {
                return getText(element);
            }
        };
    }

    static String text(Optional<Double> value, int digits) {
        return value.map(found -> number(found, digits)).orElse("");
    }
}
