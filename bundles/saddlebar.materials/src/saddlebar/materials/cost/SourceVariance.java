package saddlebar.materials.cost;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import saddlebar.materials.money.Rounding;
import saddlebar.materials.money.Variance;

/**
 * A source's actual cost against its estimate. Lines of one thing and unit are compared with each other, and the difference split by price and quantity; what
 * only one side has differs by quantity alone. The parts sum to the total exactly.
 */
public record SourceVariance(String source, BigDecimal estimate, BigDecimal actual, BigDecimal price, BigDecimal quantity) {

    private record Thing(String source, String what, String unit) {
    }

    private static final class Sum {
        private BigDecimal quantity = BigDecimal.ZERO;
        private BigDecimal amount = BigDecimal.ZERO;

        private void add(BookedLine line) {
            quantity = quantity.add(line.quantity());
            amount = amount.add(line.amount());
        }

        private BigDecimal unitPrice() {
            return amount.divide(quantity, MathContext.DECIMAL64);
        }
    }

    /** Above 0 where it cost more than reckoned. */
    public BigDecimal total() {
        return actual.subtract(estimate);
    }

    /** By source, in the order of their keys. */
    public static List<SourceVariance> of(List<BookedLine> estimate, List<BookedLine> actual, Rounding rounding) {
        Map<Thing, Sum> planned = sums(estimate);
        Map<Thing, Sum> came = sums(actual);
        TreeMap<String, SourceVariance> bySource = new TreeMap<>();
        Map<Thing, Sum> all = new LinkedHashMap<>(planned);
        all.putAll(came);
        for (Thing thing : all.keySet()) {
            Sum before = planned.getOrDefault(thing, new Sum());
            Sum after = came.getOrDefault(thing, new Sum());
            BigDecimal total = after.amount.subtract(before.amount);
            BigDecimal price = BigDecimal.ZERO;
            if (before.quantity.signum() > 0 && after.quantity.signum() > 0) {
                price = rounding.cost(Variance.of(before.quantity, before.unitPrice(), after.quantity, after.unitPrice()).price());
            }
            bySource.merge(thing.source(), new SourceVariance(thing.source(), before.amount, after.amount, price, total.subtract(price)), SourceVariance::plus);
        }
        return List.copyOf(bySource.values());
    }

    private static Map<Thing, Sum> sums(List<BookedLine> lines) {
        Map<Thing, Sum> sums = new LinkedHashMap<>();
        lines.forEach(line -> sums.computeIfAbsent(new Thing(line.source(), line.what(), line.unit()), thing -> new Sum()).add(line));
        return sums;
    }

    private SourceVariance plus(SourceVariance other) {
        return new SourceVariance(source, estimate.add(other.estimate), actual.add(other.actual), price.add(other.price), quantity.add(other.quantity));
    }
}
