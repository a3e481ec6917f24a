package saddlebar.materials.cost;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import saddlebar.model.commission.Commission;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.Quote;
import saddlebar.model.commission.QuoteLine;
import saddlebar.model.commission.QuoteState;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.RecordDraft;
import saddlebar.model.store.RecordKind;

/**
 * Freezes an estimate as a quote with a number of its own. The quote's lines are what the client is asked; its cost lines go into the records, so that
 * later prices change neither. A frozen quote is never changed; another one follows it.
 */
public final class QuoteBook {
    /** Days for which a quote stands (studio setting). */
    private static final int VALID_DAYS = 30;
    private static final Pattern NUMBER = Pattern.compile(".*-Q([0-9]{1,6})");

    private QuoteBook() {
    }

    /** Enters the quote, saves, and appends the records. */
    public static Quote freeze(CommissionFolder folder, Estimate estimate, LocalDate day) throws IOException {
        return freeze(folder, estimate, day, Optional.empty(), "");
    }

    /**
     * A change order: another quote in place of one that was frozen, which stays as it is.
     *
     * @param reason why, in the words of whoever asked for it
     * @throws Refusal if there is no quote to change, or no reason
     */
    public static Quote change(CommissionFolder folder, Estimate estimate, LocalDate day, String reason) throws IOException {
        List<Quote> quotes = folder.commission().getQuotes();
        if (quotes.isEmpty() || reason.isBlank()) {
            throw new Refusal(folder.path().toString(), quotes.isEmpty() ? "there is no quote to change" : "the change has no reason",
                    quotes.isEmpty() ? "freeze a quote first" : "say in words what was changed and who asked for it");
        }
        return freeze(folder, estimate, day, Optional.of(quotes.get(quotes.size() - 1)), reason.strip());
    }

    /** What a change order adds to the price before it; below 0 where it takes away. Empty for a first quote, and where the currency changed. */
    public static Optional<BigDecimal> added(Commission commission, Quote quote) {
        return commission.getQuotes().stream().filter(known -> known.getNumber() != null && known.getNumber().equals(quote.getChanges())
                && Objects.equals(known.getCurrency(), quote.getCurrency())).findFirst().map(before -> quote.getTotal().subtract(before.getTotal()));
    }

    private static Quote freeze(CommissionFolder folder, Estimate estimate, LocalDate day, Optional<Quote> before, String reason) throws IOException {
        if (estimate.total().signum() <= 0) {
            throw new Refusal(folder.path().toString(), "there is nothing to quote yet", "bring artwork and choose its glass and paint first");
        }
        Commission commission = folder.commission();
        Quote quote = CommissionFactory.eINSTANCE.createQuote();
        quote.setNumber(nextNumber(commission, day));
        quote.setName("Quote " + quote.getNumber());
        quote.setState(QuoteState.DRAFT);
        quote.setDated(day);
        quote.setValidUntil(day.plusDays(VALID_DAYS));
        quote.setCurrency(estimate.currency());
        quote.setTotal(estimate.total());
        before.ifPresent(known -> {
            quote.setChanges(known.getNumber());
            quote.setReason(reason);
        });
        estimate.priceLines().forEach(line -> quote.getLines().add(line(line.source(), line.source(), line.window(), line.amount())));
        estimate.taxes().stream().filter(group -> group.tax().signum() != 0)
                .forEach(group -> quote.getLines().add(line("tax " + percent(group.rate()), "tax", "", group.tax())));
        commission.getQuotes().add(quote);
        folder.save();
        folder.records().append(records(estimate, quote));
        return quote;
    }

    /** The commission's own number, or the year, and how many quotes there were before it. */
    private static String nextNumber(Commission commission, LocalDate day) {
        String stem = commission.getNumber() == null || commission.getNumber().isBlank() ? String.valueOf(day.getYear()) : commission.getNumber().strip();
        int highest = 0;
        for (Quote quote : commission.getQuotes()) {
            Matcher matcher = NUMBER.matcher(quote.getNumber() == null ? "" : quote.getNumber());
            if (matcher.matches()) {
                highest = Math.max(highest, Integer.parseInt(matcher.group(1)));
            }
        }
        return String.format(Locale.ROOT, "%s-Q%02d", stem, highest + 1);
    }

    private static String percent(BigDecimal rate) {
        return rate.scaleByPowerOfTen(2).stripTrailingZeros().toPlainString() + " %";
    }

    private static QuoteLine line(String text, String source, String window, BigDecimal amount) {
        QuoteLine line = CommissionFactory.eINSTANCE.createQuoteLine();
        line.setText(text);
        line.setSourceKey(source);
        line.setWindowName(window);
        line.setQuantity(1);
        line.setUnit("");
        line.setUnitPrice(amount);
        line.setAmount(amount);
        return line;
    }

    private static List<RecordDraft> records(Estimate estimate, Quote quote) {
        List<RecordDraft> drafts = new ArrayList<>();
        for (ReckonedLine line : estimate.lines()) {
            Map<String, Object> settings = new LinkedHashMap<>();
            settings.put("sourceKey", line.source());
            settings.put("what", line.what());
            if (!line.window().isEmpty()) {
                settings.put("window", line.window());
            }
            settings.put("estimate", true);
            settings.put("quantity", line.quantity().doubleValue());
            settings.put("unit", line.unit());
            settings.put("unitPrice", line.unitPrice().toPlainString());
            settings.put("amount", line.amount().toPlainString());
            settings.put("currency", estimate.currency());
            settings.put(BookedCosts.QUOTE, quote.getNumber());
            drafts.add(RecordDraft.of(RecordKind.COST).using(List.of(quote.getId())).with(settings));
        }
        return drafts;
    }
}
