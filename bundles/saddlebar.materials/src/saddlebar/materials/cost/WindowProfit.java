package saddlebar.materials.cost;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import saddlebar.materials.money.Rounding;

/**
 * What is left of a window's price. What belongs to the whole commission is shared out by the windows' own costs, the last takes the rest, so that the parts
 * sum to the whole. A cost that was booked for a window counts in place of its estimate, source by source.
 *
 * @param price    its share of the net
 * @param cost     estimated, or booked where it is
 * @param overhead its share
 * @param booked   whether any of its cost is booked
 */
public record WindowProfit(String window, BigDecimal price, BigDecimal cost, BigDecimal overhead, boolean booked) {

    public BigDecimal profit() {
        return price.subtract(cost).subtract(overhead);
    }

    /** By window, in the order of the estimate; empty where no cost belongs to any window. */
    public static List<WindowProfit> of(Estimate estimate, List<BookedLine> actual, Rounding rounding) {
        Map<String, BigDecimal> own = new LinkedHashMap<>();
        estimate.lines().stream().filter(line -> !line.window().isEmpty()).forEach(line -> own.merge(line.window(), line.amount(), BigDecimal::add));
        BigDecimal all = sum(own);
        if (own.isEmpty() || all.signum() == 0) {
            return List.of();
        }
        Map<String, BigDecimal> prices = new LinkedHashMap<>();
        own.keySet().forEach(window -> prices.put(window, BigDecimal.ZERO));
        estimate.priceLines().stream().filter(line -> !line.window().isEmpty()).forEach(line -> prices.merge(line.window(), line.amount(), BigDecimal::add));
        Map<String, BigDecimal> costs = new LinkedHashMap<>(own);
        share(costs, own, all, estimate.cost().subtract(all), rounding);
        share(prices, own, all, estimate.net().subtract(sum(prices)), rounding);
        Map<String, BigDecimal> overheads = new LinkedHashMap<>();
        own.keySet().forEach(window -> overheads.put(window, BigDecimal.ZERO));
        share(overheads, own, all, estimate.overhead(), rounding);
        List<WindowProfit> rows = new ArrayList<>();
        own.keySet().forEach(window -> {
            BigDecimal more = booked(window, estimate, actual);
            boolean told = actual.stream().anyMatch(line -> line.window().equals(window));
            rows.add(new WindowProfit(window, prices.get(window), costs.get(window).add(more), overheads.get(window), told));
        });
        return List.copyOf(rows);
    }

    /** What the booked sources of a window came to, less what they were estimated at. */
    private static BigDecimal booked(String window, Estimate estimate, List<BookedLine> actual) {
        BigDecimal more = BigDecimal.ZERO;
        for (String source : actual.stream().filter(line -> line.window().equals(window)).map(BookedLine::source).distinct().toList()) {
            more = more.add(actual.stream().filter(line -> line.window().equals(window) && line.source().equals(source)).map(BookedLine::amount)
                    .reduce(BigDecimal.ZERO, BigDecimal::add));
            more = more.subtract(estimate.lines().stream().filter(line -> line.window().equals(window) && line.source().equals(source))
                    .map(ReckonedLine::amount).reduce(BigDecimal.ZERO, BigDecimal::add));
        }
        return more;
    }

    private static BigDecimal sum(Map<String, BigDecimal> parts) {
        return parts.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Adds a common amount, in proportion to weights; rounded down, the rest to the last. */
    private static void share(Map<String, BigDecimal> to, Map<String, BigDecimal> weights, BigDecimal all, BigDecimal common, Rounding rounding) {
        BigDecimal open = common;
        int left = weights.size();
        for (Map.Entry<String, BigDecimal> weight : weights.entrySet()) {
            left--;
            BigDecimal part = left == 0
                    ? open
                    : common.multiply(weight.getValue()).divide(all, MathContext.DECIMAL64).setScale(rounding.decimals(), RoundingMode.DOWN);
            open = open.subtract(part);
            to.merge(weight.getKey(), part, BigDecimal::add);
        }
    }
}
