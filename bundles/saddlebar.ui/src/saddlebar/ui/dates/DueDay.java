package saddlebar.ui.dates;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;

import saddlebar.model.commission.Approval;
import saddlebar.model.commission.Commission;
import saddlebar.model.commission.Milestone;
import saddlebar.model.commission.Quote;
import saddlebar.ui.colourway.ColourWords;

/**
 * A date of a commission.
 *
 * @param what is due
 * @param due  day, empty if none was set
 * @param done day on which it was done
 */
record DueDay(String what, Optional<LocalDate> due, Optional<LocalDate> done) {
    /** All dates, the next one first; what is done stands last. */
    static List<DueDay> of(Commission commission) {
        List<DueDay> days = new ArrayList<>();
        for (Milestone milestone : commission.getMilestones()) {
            days.add(new DueDay(text(milestone.getName()), Optional.ofNullable(milestone.getDue()), Optional.ofNullable(milestone.getDone())));
        }
        for (Quote quote : commission.getQuotes()) {
            if (quote.getValidUntil() != null) {
                days.add(new DueDay(NLS.bind(ColourWords.Dates_quote, text(quote.getNumber())), Optional.of(quote.getValidUntil()), Optional.empty()));
            }
        }
        for (Approval approval : commission.getApprovals()) {
            if (approval.getOn() != null) {
                days.add(new DueDay(NLS.bind(ColourWords.Dates_approved, text(approval.getName()), text(approval.getBy())), Optional.of(approval.getOn()),
                        Optional.of(approval.getOn())));
            }
        }
        days.sort(Comparator.comparing((DueDay day) -> day.done.isPresent()).thenComparing(day -> day.due.orElse(LocalDate.MAX)));
        return days;
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }

    String dueWords() {
        return due.map(DueDay::day).orElse(ColourWords.Dates_noDay);
    }

    /** How it stands on a day. */
    String stateWords(LocalDate today) {
        if (done.isPresent()) {
            return NLS.bind(ColourWords.Dates_done, day(done.get()));
        }
        if (due.isEmpty()) {
            return "";
        }
        long days = ChronoUnit.DAYS.between(today, due.get());
        if (days == 0) {
            return ColourWords.Dates_today;
        }
        if (days < 0) {
            return days == -1 ? ColourWords.Dates_lateOne : NLS.bind(ColourWords.Dates_late, -days);
        }
        return days == 1 ? ColourWords.Dates_inOne : NLS.bind(ColourWords.Dates_in, days);
    }

    private static String day(LocalDate day) {
        return day.format(DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM));
    }
}
