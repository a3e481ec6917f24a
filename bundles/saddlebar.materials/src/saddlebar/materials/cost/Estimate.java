package saddlebar.materials.cost;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import saddlebar.materials.job.CostJob;
import saddlebar.materials.money.Deposits;
import saddlebar.materials.money.Margin;
import saddlebar.materials.money.Prices;
import saddlebar.materials.money.Rounding;
import saddlebar.materials.money.Tax;

/**
 * What a commission costs, and the price asked for it. Every line is rounded once, and every sum is the sum of rounded lines.
 *
 * @param lines      costs, by source
 * @param cost       their sum
 * @param overhead   share of the cost that the studio itself costs
 * @param priceLines what the client is asked for each window and source, overhead and margin within
 * @param net        their sum
 * @param taxes      by rate, the highest first; lines of one rate are summed before they are rounded
 * @param tax        their sum
 * @param total      net and tax
 * @param range      of the total
 * @param deposits   parts of the total
 */
public record Estimate(String currency, List<ReckonedLine> lines, BigDecimal cost, BigDecimal overhead, List<PriceLine> priceLines, BigDecimal net,
        List<TaxGroup> taxes, BigDecimal tax, BigDecimal total, CostRange range, List<Deposits.Part> deposits) {
    /** Drawn for the range; the error of its ends is then well below a hundredth (measured in the tests). */
    private static final int RUNS = 20_000;

    /** @param window empty for the whole commission */
    public record PriceLine(String window, String source, BigDecimal amount) {
    }

    /** Price lines of one rate of tax. */
    public record TaxGroup(BigDecimal rate, BigDecimal net, BigDecimal tax) {
    }

    /** What is left of the net when cost and overhead are paid. */
    public BigDecimal margin() {
        return net.subtract(cost).subtract(overhead);
    }

    /** @param seed of the range */
    public static Estimate of(CostJob job, Prices prices, List<CostSource> sources, long seed) {
        Set<String> keys = new HashSet<>();
        for (CostSource source : sources) {
            if (!keys.add(source.key())) {
                throw new IllegalStateException("two sources of cost are called " + source.key() + "; remove one bundle");
            }
        }
        List<ReckonedLine> lines = new ArrayList<>();
        for (CostSource source : sources.stream().sorted(Comparator.comparingInt(CostSource::order).thenComparing(CostSource::key)).toList()) {
            lines.addAll(source.reckon(job, prices, List.copyOf(lines)));
        }
        return priced(lines, prices, seed);
    }

    static Estimate priced(List<ReckonedLine> lines, Prices prices, long seed) {
        Rounding rounding = prices.rounding();
        BigDecimal overheadShare = prices.number(BookReader.OVERHEAD, BigDecimal.ZERO, "0", "10");
        BigDecimal margin = prices.number(BookReader.MARGIN, BigDecimal.ZERO, "0", "0.95");
        BigDecimal cost = lines.stream().map(ReckonedLine::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal overhead = rounding.cost(cost.multiply(overheadShare));
        Map<PriceKey, BigDecimal> groups = new LinkedHashMap<>();
        lines.stream().sorted(Comparator.comparing(ReckonedLine::window))
                .forEach(line -> groups.merge(new PriceKey(line.window(), line.source()), line.amount(), BigDecimal::add));
        List<PriceLine> priceLines = new ArrayList<>();
        groups.forEach((key, amount) -> priceLines.add(new PriceLine(key.window(), key.source(),
                rounding.cost(Margin.priceFor(amount.multiply(BigDecimal.ONE.add(overheadShare)), margin)))));
        List<BigDecimal> nets = priceLines.stream().map(PriceLine::amount).toList();
        BigDecimal net = nets.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        List<TaxGroup> taxes = taxes(priceLines, prices, rounding);
        BigDecimal tax = taxes.stream().map(TaxGroup::tax).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal total = net.add(tax);
        double factor = cost.signum() == 0 ? 0 : total.divide(cost, MathContext.DECIMAL64).doubleValue();
        return new Estimate(prices.currency(), List.copyOf(lines), cost, overhead, priceLines, net, taxes, tax, total,
                CostRange.of(lines, RUNS, seed).times(factor), Deposits.THIRDS.of(total, rounding));
    }

    /** A source with a rate of its own ({@code tax-labour} of the book) has that, all others the usual one. */
    private static List<TaxGroup> taxes(List<PriceLine> lines, Prices prices, Rounding rounding) {
        BigDecimal usual = prices.number(BookReader.TAX, BigDecimal.ZERO, "0", "1");
        TreeMap<BigDecimal, List<BigDecimal>> byRate = new TreeMap<>(Comparator.reverseOrder());
        lines.forEach(line -> byRate.computeIfAbsent(prices.number("tax-" + line.source(), usual, "0", "1"), rate -> new ArrayList<>()).add(line.amount()));
        List<TaxGroup> groups = new ArrayList<>();
        byRate.forEach((rate, nets) -> groups.add(new TaxGroup(rate, nets.stream().reduce(BigDecimal.ZERO, BigDecimal::add), new Tax(rate, false).on(nets,
                rounding))));
        return List.copyOf(groups);
    }

    private record PriceKey(String window, String source) {
    }
}
