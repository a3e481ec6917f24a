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
 * @param tax        on the net
 * @param total      net and tax
 * @param range      of the total
 * @param deposits   parts of the total
 */
public record Estimate(String currency, List<ReckonedLine> lines, BigDecimal cost, BigDecimal overhead, List<PriceLine> priceLines, BigDecimal net,
        BigDecimal tax, BigDecimal total, CostRange range, List<Deposits.Part> deposits) {
    /** Drawn for the range; the error of its ends is then well below a hundredth (measured in the tests). */
    private static final int RUNS = 20_000;

    /** @param window empty for the whole commission */
    public record PriceLine(String window, String source, BigDecimal amount) {
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
        BigDecimal tax = new Tax(prices.number(BookReader.TAX, BigDecimal.ZERO, "0", "1"), false).on(nets, rounding);
        BigDecimal total = net.add(tax);
        double factor = cost.signum() == 0 ? 0 : total.divide(cost, MathContext.DECIMAL64).doubleValue();
        return new Estimate(prices.currency(), List.copyOf(lines), cost, overhead, priceLines, net, tax, total,
                CostRange.of(lines, RUNS, seed).times(factor), Deposits.THIRDS.of(total, rounding));
    }

    private record PriceKey(String window, String source) {
    }
}
