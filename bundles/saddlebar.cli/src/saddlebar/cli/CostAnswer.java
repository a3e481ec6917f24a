package saddlebar.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import saddlebar.materials.cost.BookedLine;
import saddlebar.materials.cost.CostRange;
import saddlebar.materials.cost.Estimate;
import saddlebar.materials.cost.PaintList;
import saddlebar.materials.cost.PanelList;
import saddlebar.materials.cost.SourceVariance;
import saddlebar.materials.job.CostJob;
import saddlebar.materials.metal.CutPattern;
import saddlebar.materials.metal.Reinforcement;
import saddlebar.materials.money.EarnedValue;
import saddlebar.materials.money.Prices;
import saddlebar.model.commission.Quote;
import saddlebar.production.cost.CommissionCosts;

/** The JSON document of {@code cost}, and the same in words. Money as decimal strings, masses in g, lengths in mm. */
record CostAnswer(String commission, String currency, String day, List<Line> lines, String cost, String overhead, String margin, String net, String tax,
        String total, Range range, List<Due> deposits, List<PaintRow> paints, List<PanelRow> panels, Map<String, Double> foilMetres, List<CutRow> cuts,
        QuoteRow quote, String actual, List<VarianceRow> variance, List<TaxRow> taxes, List<ProfitRow> profits, EarnedRow earned, List<ShoppingRow> shopping,
        List<String> assumed, List<String> cautions) {

    record Line(String source, String what, String window, String quantity, String unit, String unitPrice, String amount) {
    }

    /** One run in ten falls below low, one above high. */
    record Range(String low, String likely, String high, int runs, long seed) {
    }

    record Due(String milestone, String amount) {
    }

    record PaintRow(String paint, double netMixG, double wasteG, int batches, double batchG, double powderG, double mediumG, double firedUm, double onHandG,
            double buyG, boolean gold, List<Integer> bowlsOfSeveralLots) {
    }

    record PanelRow(String panel, int alike, double glassG, double metalG, double cementG, double massG, double liftingIndex, String handling,
            List<Double> barsMm, int ties) {
    }

    record CutRow(String stock, double stockMm, int lengths, int lowerBound, boolean proven, List<PatternRow> patterns) {
    }

    record PatternRow(int times, List<Double> lengthsMm, double restMm) {
    }

    /** {@code changes} is the number of the quote that it follows and {@code added} what it adds to its price; null for a first quote. */
    record QuoteRow(String number, String dated, String validUntil, String total, String changes, String reason, String added) {
    }

    record TaxRow(String rate, String net, String tax) {
    }

    record ProfitRow(String window, String price, String cost, String overhead, String profit, boolean booked) {
    }

    /** Null where no milestone has a share of the work; an index is null where nothing is spent or planned yet. */
    record EarnedRow(String budget, String planned, String earned, String actual, Double costIndex, Double scheduleIndex, String forecast) {
    }

    record ShoppingRow(String kind, String what, double need, String unit, double onHand, double buy, String packs) {
    }

    record VarianceRow(String source, String estimate, String actual, String price, String quantity, String total) {
    }

    static CostAnswer of(CommissionCosts costs, Optional<Quote> frozen, Optional<BigDecimal> added) {
        Estimate estimate = costs.estimate();
        Prices prices = costs.prices();
        BigDecimal actual = costs.booked().actual().stream().map(BookedLine::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
        return new CostAnswer(costs.job().title(), estimate.currency(), prices.day().toString(), lines(estimate), money(estimate.cost()),
                money(estimate.overhead()), money(estimate.margin()), money(estimate.net()), money(estimate.tax()), money(estimate.total()),
                range(estimate.range(), prices.rounding().decimals()),
                estimate.deposits().stream().map(part -> new Due(part.milestone(), money(part.amount()))).toList(),
                costs.paints().rows().stream().map(CostAnswer::paint).toList(), costs.panels().rows().stream().map(CostAnswer::panel).toList(),
                foil(costs.panels()), costs.panels().cuts().stream().map(CostAnswer::cuts).toList(), frozen.map(made -> quote(made, added)).orElse(null),
                money(actual), costs.variance().stream().map(CostAnswer::variance).toList(),
                estimate.taxes().stream().map(group -> new TaxRow(money(group.rate()), money(group.net()), money(group.tax()))).toList(),
                costs.profits().stream().map(row -> new ProfitRow(row.window(), money(row.price()), money(row.cost()), money(row.overhead()), money(row
                        .profit()), row.booked())).toList(),
                costs.earned().map(found -> earned(found, prices)).orElse(null),
                costs.shopping().rows().stream()
                        .map(row -> new ShoppingRow(row.kind(), row.what(), thousandth(row.need()), row.unit(), thousandth(row.onHand()),
                                thousandth(row.buy()), row.packs()))
                        .toList(),
                costs.job().assumed(), cautions(costs.job(), costs.paints(), costs.panels()));
    }

    private static EarnedRow earned(EarnedValue found, Prices prices) {
        return new EarnedRow(money(found.budget()), money(found.planned()), money(found.earned()), money(found.actual()), found.costIndex().orElse(null),
                found.scheduleIndex().orElse(null), found.forecast(prices.rounding()).map(CostAnswer::money).orElse(null));
    }

    private static double thousandth(double value) {
        return Math.rint(value * 1000) / 1000;
    }

    private static List<Line> lines(Estimate estimate) {
        return estimate.lines().stream().map(line -> new Line(line.source(), line.what(), line.window(), money(line.quantity()), line.unit(),
                money(line.unitPrice()), money(line.amount()))).toList();
    }

    private static Range range(CostRange range, int decimals) {
        return new Range(rounded(range.low(), decimals), rounded(range.likely(), decimals), rounded(range.high(), decimals), range.runs(), range.seed());
    }

    private static String rounded(double amount, int decimals) {
        return BigDecimal.valueOf(amount).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString();
    }

    private static String money(BigDecimal amount) {
        return amount.toPlainString();
    }

    private static double tenth(double value) {
        return Math.rint(value * 10) / 10;
    }

    private static PaintRow paint(PaintList.Row row) {
        return new PaintRow(row.paint().name(), tenth(row.need().netMixG()), tenth(row.need().wasteG()), row.need().batches(), tenth(row.need().batchG()),
                tenth(row.need().powderG()), tenth(row.need().mediumG()), Math.rint(row.need().firedUm() * 100) / 100, tenth(row.paint().stock().onHandG()),
                row.buyG(), row.paint().flags().gold(), row.plan().mixedBowls());
    }

    private static PanelRow panel(PanelList.Row row) {
        return new PanelRow(row.panel(), row.alike(), tenth(1000 * row.weight().glassKg()), tenth(1000 * row.weight().metalKg()),
                tenth(1000 * row.weight().cementKg()), tenth(1000 * row.weight().totalKg()), Math.rint(row.liftingIndex() * 100) / 100, row.handling(),
                row.bars().heightsMm().stream().map(CostAnswer::tenth).toList(), row.bars().ties());
    }

    private static Map<String, Double> foil(PanelList panels) {
        Map<String, Double> metres = new LinkedHashMap<>();
        panels.foilMetresByWidth().forEach((name, length) -> metres.put(name, tenth(length)));
        return metres;
    }

    private static CutRow cuts(PanelList.Cuts cuts) {
        return new CutRow(cuts.stock(), cuts.plan().stockHmm() / 100.0, cuts.plan().stocks(), cuts.plan().lowerBound(), cuts.plan().proven(),
                cuts.plan().patterns().stream().map(CostAnswer::pattern).toList());
    }

    private static PatternRow pattern(CutPattern pattern) {
        return new PatternRow(pattern.times(), pattern.lengthsHmm().stream().map(length -> length / 100.0).toList(), pattern.restHmm() / 100.0);
    }

    private static QuoteRow quote(Quote quote, Optional<BigDecimal> added) {
        return new QuoteRow(quote.getNumber(), quote.getDated().toString(), quote.getValidUntil().toString(), money(quote.getTotal()), quote.getChanges(),
                quote.getReason(), added.map(CostAnswer::money).orElse(null));
    }

    private static VarianceRow variance(SourceVariance row) {
        return new VarianceRow(row.source(), money(row.estimate()), money(row.actual()), money(row.price()), money(row.quantity()), money(row.total()));
    }

    private static List<String> cautions(CostJob job, PaintList paints, PanelList panels) {
        Set<String> cautions = new LinkedHashSet<>();
        paints.rows().forEach(row -> cautions.addAll(row.paint().flags().cautions()));
        if (panels.rows().stream().anyMatch(row -> !row.bars().heightsMm().isEmpty()) || job.windows().stream().anyMatch(w -> w.overhead() || w.inDoor())) {
            cautions.add(Reinforcement.CAUTION);
        }
        if (job.windows().stream().flatMap(window -> window.panels().stream()).anyMatch(panel -> panel.leaded() || panel.solder().lead())) {
            cautions.add("Lead in solder or came: ventilate, wash hands and clothes, no food nearby; children and pregnant people keep away.");
        }
        return List.copyOf(cautions);
    }

    /** For people. */
    List<String> words() {
        List<String> words = new ArrayList<>();
        words.add(commission + ", prices of " + day + " in " + currency);
        for (Line line : lines) {
            words.add(String.format(Locale.ROOT, "  %-10s %-6s %-34s %10s %-10s %10s", line.source(), line.window(), line.what(), shortened(line.quantity()),
                    line.unit(), line.amount()));
        }
        words.add(String.format(Locale.ROOT, "Cost %s, overhead %s, margin %s, net %s, tax %s, total %s", cost, overhead, margin, net, tax, total));
        words.add("Likely " + range.likely() + ", between " + range.low() + " and " + range.high() + " in four of five cases.");
        deposits.forEach(due -> words.add("  due at " + due.milestone() + ": " + due.amount()));
        for (PaintRow row : paints) {
            words.add(String.format(Locale.ROOT, "Mix %s: %d bowl(s) of %.0f g, %.1f g powder and %.1f g medium in all; fired about %.1f um; buy %.0f g%s",
                    row.paint(), row.batches(), row.batchG(), row.powderG(), row.mediumG(), row.firedUm(), row.buyG(), row.gold() ? " (holds gold)" : ""));
        }
        for (PanelRow row : panels) {
            words.add(String.format(Locale.ROOT, "Panel %s: %.2f kg, lifting index %.2f. %s%s", row.panel(), row.massG() / 1000, row.liftingIndex(),
                    row.handling(), row.barsMm().isEmpty() ? "" : " Bars at " + row.barsMm() + " mm from the top."));
        }
        foilMetres.forEach((name, metres) -> words.add(String.format(Locale.ROOT, "Foil %s: %.1f m", name, metres)));
        for (CutRow row : cuts) {
            words.add(String.format(Locale.ROOT, "Cut %s: %d x %.0f mm of stock (no plan needs fewer than %d):", row.stock(), row.lengths(), row.stockMm(),
                    row.lowerBound()));
            row.patterns().forEach(pattern -> words.add("  " + pattern.times() + " x " + pattern.lengthsMm()));
        }
        for (VarianceRow row : variance) {
            words.add(String.format(Locale.ROOT, "%-10s estimate %s, came to %s: %s by price, %s by quantity", row.source(), row.estimate(), row.actual(),
                    row.price(), row.quantity()));
        }
        if (quote != null) {
            if (quote.changes() != null) {
                words.add("It changes quote " + quote.changes() + (quote.added() == null ? "" : " by " + quote.added()) + ": " + quote.reason());
            }
            words.add("Quote " + quote.number() + " of " + quote.total() + " " + currency + " stands until " + quote.validUntil() + ".");
        }
        if (profits.size() > 1) {
            profits.forEach(row -> words.add(String.format(Locale.ROOT, "%s: price %s, cost %s, overhead %s, left %s%s", row.window(), row.price(), row.cost(),
                    row.overhead(), row.profit(), row.booked() ? " (cost as booked)" : "")));
        }
        if (earned != null) {
            words.add("Earned " + earned.earned() + " of " + earned.budget() + "; planned by now " + earned.planned() + ", spent " + earned.actual());
        }
        shopping.stream().filter(row -> row.buy() > 0).forEach(row -> words.add(String.format(Locale.ROOT, "Buy %s %s: %.2f %s%s", row.kind(), row.what(),
                row.buy(), row.unit(), row.packs().isEmpty() ? "" : " (" + row.packs() + ")")));
        assumed.forEach(sentence -> words.add("Attention: " + sentence));
        cautions.forEach(sentence -> words.add("Caution: " + sentence));
        return words;
    }

    private static String shortened(String quantity) {
        BigDecimal number = new BigDecimal(quantity);
        return number.scale() > 3 ? number.setScale(3, RoundingMode.HALF_EVEN).toPlainString() : quantity;
    }
}
