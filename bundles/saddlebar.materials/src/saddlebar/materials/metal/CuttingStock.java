package saddlebar.materials.metal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;

/**
 * Cuts ordered lengths of came or bar from stock of one length with as few stock lengths as can be found. Whole parts of the relaxation over patterns are
 * taken, the rest is searched by branch and bound; the relaxation rounded up is the lower bound that is shown. Small orders are searched whole. The answer is
 * the same for the same order.
 */
public final class CuttingStock {
    private static final int EXACT_PIECES = 60;
    private static final long NODES = 1_000_000;
    private static final double TINY = 1e-6;

    private final long stockHmm;
    private final long kerfHmm;
    private final long capacity;
    private final Work work;

    /**
     * @param stockMm length of a stock piece
     * @param kerfMm  lost at each cut
     */
    public CuttingStock(double stockMm, double kerfMm, Work work) {
        this.stockHmm = (long) Math.floor(stockMm * 100 + TINY);
        this.kerfHmm = (long) Math.ceil(kerfMm * 100 - TINY);
        if (stockHmm < 1 || kerfHmm < 0 || !(stockMm < 1e7) || !(kerfMm < 1e4)) {
            throw new IllegalArgumentException("stockMm must be above 0 and kerfMm 0 or more but are " + stockMm + " and " + kerfMm);
        }
        this.capacity = stockHmm + kerfHmm; // the last piece of a stock needs no cut behind it
        this.work = work;
    }

    /** @throws Refusal if a piece is longer than the stock */
    public CuttingPlan plan(List<CutOrder> orders) {
        TreeMap<Long, Integer> byLength = new TreeMap<>(Comparator.reverseOrder());
        for (CutOrder order : orders) {
            if (order.lengthHmm() > stockHmm) {
                throw new Refusal("cutting plan", "a piece of " + order.lengthHmm() / 100.0 + " mm is longer than the stock of " + stockHmm / 100.0 + " mm",
                        "take longer stock, or join it");
            }
            byLength.merge(order.lengthHmm() + kerfHmm, order.count(), Math::addExact);
        }
        if (byLength.isEmpty()) {
            return new CuttingPlan(stockHmm, kerfHmm, List.of(), 0);
        }
        long[] lengths = byLength.keySet().stream().mapToLong(Long::longValue).toArray();
        int[] demand = byLength.values().stream().mapToInt(Integer::intValue).toArray();
        List<int[]> plan = firstFit(lengths, demand);
        int least = (int) Math.ceil(total(lengths, demand) / capacity - TINY);
        if (plan.size() == least) {
            return new CuttingPlan(stockHmm, kerfHmm, patterns(plan, lengths), least);
        }
        PatternLp lp = PatternLp.solve(capacity, lengths, demand, work);
        int bound = Math.max(least, (int) Math.ceil(lp.bound() - TINY));
        int pieces = 0;
        for (int count : demand) {
            pieces += count;
        }
        if (plan.size() > bound && pieces <= EXACT_PIECES) {
            for (int stocks = bound; stocks < plan.size(); stocks++) {
                StockFilling filling = new StockFilling(capacity, lengths, NODES, work);
                List<int[]> found = filling.within(stocks, demand);
                if (found != null) {
                    plan = found;
                } else if (filling.exhausted()) {
                    bound = stocks == bound ? stocks + 1 : bound;
                }
            }
        }
        if (plan.size() > bound) {
            List<int[]> dived = dive(lp, lengths, demand, bound);
            plan = dived.size() < plan.size() ? dived : plan;
        }
        return new CuttingPlan(stockHmm, kerfHmm, patterns(plan, lengths), bound);
    }

    private static double total(long[] lengths, int[] demand) {
        double total = 0;
        for (int i = 0; i < lengths.length; i++) {
            total += (double) lengths[i] * demand[i];
        }
        return total;
    }

    /** Takes whole patterns of the relaxation, then one more at a time, largest part first, until the rest is small enough to be searched. */
    private List<int[]> dive(PatternLp first, long[] lengths, int[] demand, int bound) {
        List<int[]> taken = new ArrayList<>();
        int[] left = demand.clone();
        PatternLp lp = first;
        List<int[]> best = null;
        while (total(lengths, left) > 0) {
            int whole = taken.size();
            int most = -1;
            double largest = -1;
            for (int c = 0; c < lp.columns().size(); c++) {
                int times = (int) Math.floor(lp.amounts()[c] + TINY);
                for (int t = 0; t < times && fits(lp.columns().get(c), left); t++) {
                    take(lp.columns().get(c), left, taken);
                }
                if (lp.amounts()[c] - times > largest) {
                    largest = lp.amounts()[c] - times;
                    most = c;
                }
            }
            List<int[]> rest = rest(lengths, left, bound - taken.size());
            if (best == null || taken.size() + rest.size() < best.size()) {
                best = new ArrayList<>(taken);
                best.addAll(rest);
            }
            if (best.size() == bound) {
                return best;
            }
            if (taken.size() == whole) {
                take(clipped(lp.columns().get(most), left), left, taken);
            }
            lp = open(lengths, left);
        }
        return best;
    }

    private PatternLp open(long[] lengths, int[] left) {
        return PatternLp.solve(capacity, lengths, left, work);
    }

    private List<int[]> rest(long[] lengths, int[] left, int wanted) {
        int pieces = 0;
        for (int count : left) {
            pieces += count;
        }
        if (pieces <= EXACT_PIECES && wanted >= 0) {
            List<int[]> found = new StockFilling(capacity, lengths, NODES, work).within(wanted, left);
            if (found != null) {
                return found;
            }
        }
        return firstFit(lengths, left);
    }

    private static boolean fits(int[] column, int[] left) {
        for (int i = 0; i < column.length; i++) {
            if (column[i] > left[i]) {
                return false;
            }
        }
        return true;
    }

    private static int[] clipped(int[] column, int[] left) {
        int[] clipped = new int[column.length];
        int pieces = 0;
        for (int i = 0; i < column.length; i++) {
            clipped[i] = Math.min(column[i], left[i]);
            pieces += clipped[i];
        }
        for (int i = 0; pieces == 0 && i < column.length; i++) {
            clipped[i] = Math.min(1, left[i]); // a column of lengths that are all cut: the longest open one instead
            pieces = clipped[i];
        }
        return clipped;
    }

    private static void take(int[] column, int[] left, List<int[]> taken) {
        for (int i = 0; i < column.length; i++) {
            left[i] -= column[i];
        }
        taken.add(column.clone());
    }

    /** First fit, longest first. */
    private List<int[]> firstFit(long[] lengths, int[] demand) {
        List<int[]> stocks = new ArrayList<>();
        List<Long> room = new ArrayList<>();
        for (int i = 0; i < lengths.length; i++) {
            for (int n = 0; n < demand[i]; n++) {
                int at = 0;
                while (at < room.size() && room.get(at) < lengths[i]) {
                    at++;
                }
                if (at == room.size()) {
                    stocks.add(new int[lengths.length]);
                    room.add(capacity);
                }
                stocks.get(at)[i]++;
                room.set(at, room.get(at) - lengths[i]);
            }
        }
        return stocks;
    }

    private List<CutPattern> patterns(List<int[]> plan, long[] lengths) {
        Map<List<Long>, Integer> times = new LinkedHashMap<>();
        for (int[] counts : plan) {
            List<Long> pieces = new ArrayList<>();
            for (int i = 0; i < counts.length; i++) {
                for (int n = 0; n < counts[i]; n++) {
                    pieces.add(lengths[i] - kerfHmm);
                }
            }
            times.merge(pieces, 1, Integer::sum);
        }
        return times.entrySet().stream().map(entry -> new CutPattern(entry.getKey(), entry.getValue(),
                Math.max(0, capacity - entry.getKey().stream().mapToLong(length -> length + kerfHmm).sum()))).toList();
    }
}
