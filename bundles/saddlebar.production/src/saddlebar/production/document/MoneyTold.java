package saddlebar.production.document;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import saddlebar.materials.cost.CostSource;
import saddlebar.materials.cost.Estimate;
import saddlebar.materials.money.Deposits;
import saddlebar.materials.money.Rounding;
import saddlebar.model.commission.Quote;
import saddlebar.model.commission.QuoteLine;
import saddlebar.model.commission.QuoteState;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.work.Work;
import saddlebar.production.cost.CommissionCosts;
import saddlebar.production.cost.CostAsk;
import saddlebar.production.kiln.StudioHeat;
import saddlebar.report.document.ReportMatter.Money;

/** The price that a document tells: the last quote that was not declined, else an estimate of the day. */
final class MoneyTold {
    private MoneyTold() {
    }

    /** Empty if it cannot be reckoned or only some windows are shown; the reason is told. */
    static Optional<Money> of(CommissionFolder folder, List<CostSource> sources, LocalDate day, List<Window> windows, List<String> untold) throws IOException {
        Optional<Quote> quote = folder.commission().getQuotes().stream().filter(q -> q.getState() != QuoteState.DECLINED && q.getTotal() != null)
                .max(Comparator.comparing(Quote::getDated, Comparator.nullsFirst(Comparator.naturalOrder())).thenComparing(Quote::getNumber,
                        Comparator.nullsFirst(Comparator.naturalOrder())));
        if (quote.isPresent()) {
            return Optional.of(of(quote.get()));
        }
        if (windows.size() < folder.windowNames().size()) {
            untold.add("Only some windows are shown, so no price is told; freeze a quote (cost --quote) to show it.");
            return Optional.empty();
        }
        try {
            CostAsk ask = CostAsk.read(folder, StudioHeat.installed(), day, Optional.of(folder.studio().getCurrency()));
            CommissionCosts costs = CommissionCosts.of(ask, sources, Work.UNWATCHED);
            Estimate estimate = costs.estimate();
            costs.job().assumed().forEach(sentence -> untold.add("The price assumes: " + sentence));
            if (estimate.total().signum() <= 0) {
                return Optional.empty();
            }
            return Optional.of(new Money(estimate.currency(), "", Optional.empty(),
                    estimate.priceLines().stream().map(line -> new Money.Line(line.window(), line.source(), line.amount())).toList(), estimate.net(),
                    estimate.tax(), estimate.total(),
                    estimate.deposits().stream().map(part -> new Money.Part(part.milestone(), part.amount())).toList(),
                    Optional.of(BigDecimal.valueOf(estimate.range().low())),
                    Optional.of(BigDecimal.valueOf(estimate.range().high()))));
        } catch (Refusal noPrice) {
            untold.add("No price is told: " + noPrice.getMessage());
            return Optional.empty();
        }
    }

    private static Money of(Quote quote) {
        List<Money.Line> lines = new ArrayList<>();
        BigDecimal tax = BigDecimal.ZERO;
        for (QuoteLine line : quote.getLines()) {
            if ("tax".equals(line.getSourceKey())) {
                tax = tax.add(line.getAmount());
            } else {
                lines.add(new Money.Line(line.getWindowName() == null ? "" : line.getWindowName(), line.getSourceKey() == null ? "" : line.getSourceKey(),
                        line.getAmount()));
            }
        }
        return new Money(quote.getCurrency(), quote.getNumber() == null ? "" : quote.getNumber(), Optional.ofNullable(quote.getValidUntil()), lines,
                quote.getTotal().subtract(tax), tax, quote.getTotal(),
                Deposits.THIRDS.of(quote.getTotal(), Rounding.of(quote.getCurrency())).stream().map(part -> new Money.Part(part.milestone(), part.amount()))
                        .toList(),
                Optional.empty(), Optional.empty());
    }
}
