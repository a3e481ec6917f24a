package saddlebar.nesting.rectangle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

import saddlebar.nesting.search.Budget;
import saddlebar.nesting.search.Chance;

/**
 * Rectangles into the fewest bins, the last filled as short as can be. A first layout from several sorted orders; then again and again a goal
 * a little shorter (or a bin fewer) is set and the order annealed until nothing reaches over the goal.
 *
 * <p>Source: simulated annealing over orders follows Leung, Zhang, Sim (2011), see {@link SkylineFill}; setting a goal that is infeasible at
 * first and counting what is over it follows Gardeyn, J., Wauters, T. (2022). A goal-driven ruin and recreate heuristic for the 2D
 * variable-sized bin packing problem with guillotine constraints. EJOR 301(2), 432-444 (idea only: their moves are others). Quality measured
 * in docs/algorithms/nesting.md.
 */
public final class RectangleSearch {
    /** Fillings of the bins in a round for up to 100 shapes; fewer where there are more. */
    private static final int FILLS_PER_ROUND = 200;
    private static final int MOST_FILLS_OF_ONE_ANNEALING = 20_000;
    private static final double HOT = 0.3; // in mean areas of a shape over the goal
    private static final double COLD = 0.005;
    private static final double FINEST_STEP = 1.0 / 2000; // of the length: a goal nearer than that is not worth the search

    static final Bin NOTHING = new Bin(-1, 0, 0, false); // into which no shape fits: closes the bin before it
    static final Comparator<RectangleLayout> BETTER = Comparator.comparingInt((RectangleLayout l) -> l.bins().size())
            .thenComparingDouble(RectangleLayout::binArea).thenComparingLong(RectangleLayout::lastLength)
            .thenComparingInt(RectangleLayout::turns);

    private final RectangleSet set;
    private final List<Bin> kinds;
    private final boolean strip;
    private final Budget budget;
    private final Consumer<RectangleLayout> listener;
    private final SkylineFill fill;
    private final Chance chance = new Chance(20);
    private final long step;

    private RectangleLayout best;
    private int[] bestOrder;
    private boolean[] bestTurned;

    private RectangleSearch(RectangleSet set, List<Bin> kinds, boolean strip, Budget budget, Consumer<RectangleLayout> listener) {
        this.set = set;
        this.kinds = kinds;
        this.strip = strip;
        this.budget = budget;
        this.listener = listener;
        fill = new SkylineFill(set);
        long along = kinds.stream().mapToLong(Bin::alongX).max().orElseThrow();
        long reference = strip ? (long) (set.area() / kinds.get(0).alongY()) : along;
        step = Math.max(set.grain(), (long) (reference * FINEST_STEP));
    }

    /** How many steps of a {@link Budget} make a round for so many shapes. */
    public static int stepsPerRound(int shapes) {
        double crowd = Math.max(1, shapes / 100.0);
        return (int) Math.max(4, FILLS_PER_ROUND / (crowd * crowd));
    }

    /** @param strip its width is ignored; no shape is higher than it both ways */
    public static void strip(RectangleSet set, Bin strip, Budget budget, Consumer<RectangleLayout> listener) {
        new RectangleSearch(set, List.of(strip), true, budget, listener).run();
    }

    /** @param kinds each shape fits one of them */
    public static void sheets(RectangleSet set, List<Bin> kinds, Budget budget, Consumer<RectangleLayout> listener) {
        new RectangleSearch(set, kinds, false, budget, listener).run();
    }

    private void run() {
        start();
        takeSmallerSheets();
        improve();
        takeSmallerSheets();
        new NeedlessTurns(set, bestOrder, bestTurned, budget::checkpoint).fewer(best).ifPresent(listener);
    }

    private void improve() {
        while (budget.spent() < 1 && !isProvenBest()) {
            if (!strip && best.bins().size() > leastBins() && budget.spent() < 0.5) {
                anneal(bins(best.bins().size() - 1), wholeLast(best.bins().size() - 1));
            } else if (best.lastLength() - step >= leastLast()) {
                anneal(best.bins(), best.lastLength() - step);
            } else if (best.bins().size() > 1) {
                anneal(bins(best.bins().size() - 1), wholeLast(best.bins().size() - 1));
            } else {
                return;
            }
        }
    }

    private void start() {
        for (int[] order : sortedOrders(set)) {
            for (boolean upward : strip ? new boolean[] {false} : new boolean[] {false, true}) {
                budget.checkpoint();
                startFrom(order, upward);
            }
        }
    }

    /** Where there are several kinds: what lies on a sheet may go onto a smaller one. */
    private void takeSmallerSheets() {
        for (int b = 0; kinds.size() > 1 && b < best.bins().size(); b++) {
            int sheet = b;
            int[] there = IntStream.range(0, set.size()).filter(i -> best.bin()[i] == sheet).toArray();
            List<Bin> smaller = kinds.stream().filter(k -> size(k) < size(best.bins().get(sheet)))
                    .sorted(Comparator.comparingDouble(RectangleSearch::size)).toList();
            Optional<RectangleLayout> onto = smaller.stream().flatMap(kind -> onto(there, kind).stream()).findFirst();
            if (onto.isPresent()) {
                best = best.with(sheet, there, onto.get(), set);
                listener.accept(best);
            }
        }
    }

    /** Some of the shapes in one bin, if a sorted order puts them there. */
    private Optional<RectangleLayout> onto(int[] shapes, Bin kind) {
        budget.checkpoint();
        RectangleSet some = set.only(shapes);
        SkylineFill sheet = new SkylineFill(some);
        for (int[] order : sortedOrders(some)) {
            for (boolean upward : new boolean[] {false, true}) {
                if (sheet.fill(order, new boolean[shapes.length], List.of(kind.filledUpward(upward), NOTHING), 0) == 0) {
                    return Optional.of(RectangleLayout.of(sheet, List.of(kind.filledUpward(upward), NOTHING)));
                }
            }
        }
        return Optional.empty();
    }

    private static List<int[]> sortedOrders(RectangleSet of) {
        List<ToDoubleFunction<Integer>> sizes = List.of(of::area, i -> Math.max(of.width()[i], of.height()[i]),
                i -> of.width()[i] + of.height()[i], i -> Math.min(of.width()[i], of.height()[i]), i -> of.height()[i],
                i -> of.width()[i]);
        return sizes.stream().map(size -> IntStream.range(0, of.size()).boxed()
                .sorted(Comparator.comparingDouble(i -> -size.applyAsDouble(i))).mapToInt(i -> i).toArray()).toList();
    }

    private void startFrom(int[] order, boolean upward) {
        boolean[] asDrawn = new boolean[set.size()];
        if (strip) {
            long goal = Math.max(leastLast(), set.leastLength(kinds.get(0).alongY()));
            fill.fill(order, asDrawn, kinds, goal);
            keep(order, asDrawn, kinds);
            return;
        }
        for (List<Bin> bins : binLists(order, upward)) {
            keepIfAllFit(order, asDrawn, bins);
            List<Bin> lastAlongX = new ArrayList<>(bins);
            lastAlongX.set(bins.size() - 1, bins.get(bins.size() - 1).filledUpward(false));
            keepIfAllFit(order, asDrawn, lastAlongX);
        }
    }

    private void keepIfAllFit(int[] order, boolean[] turned, List<Bin> bins) {
        List<Bin> closed = new ArrayList<>(bins);
        closed.add(NOTHING);
        if (fill.fill(order, turned, closed, 0) == 0) {
            keep(order, turned, bins);
        }
    }

    /** A list of the one kind, for each kind that takes all shapes, and the list that takes the fullest kind each time. */
    private List<List<Bin>> binLists(int[] order, boolean upward) {
        List<List<Bin>> lists = new ArrayList<>();
        for (Bin kind : kinds) {
            if (IntStream.range(0, set.size()).allMatch(i -> set.fits(i, kind.alongX(), kind.alongY()))) {
                lists.add(openedAsNeeded(order, List.of(kind.filledUpward(upward))));
            }
        }
        if (kinds.size() > 1) {
            lists.add(openedAsNeeded(order, kinds.stream().map(k -> k.filledUpward(upward)).toList()));
        }
        return lists;
    }

    private List<Bin> openedAsNeeded(int[] order, List<Bin> choice) {
        List<Bin> bins = new ArrayList<>();
        int[] waiting = order;
        boolean[] asDrawn = new boolean[set.size()];
        while (waiting.length > 0) {
            budget.checkpoint();
            double fullest = 0;
            Bin taken = null;
            int[] left = waiting;
            for (Bin kind : choice) {
                int[] now = waiting;
                fill.fill(now, asDrawn, List.of(kind, NOTHING), 0);
                double area = IntStream.of(now).filter(i -> fill.bin[i] == 0).mapToDouble(set::area).sum();
                if (area > fullest * (1 + 1e-12) || taken != null && area >= fullest * (1 - 1e-12) && size(kind) < size(taken)) {
                    fullest = area;
                    taken = kind;
                    left = IntStream.of(now).filter(i -> fill.bin[i] != 0).toArray();
                }
            }
            if (taken == null) {
                throw new IllegalStateException("a shape that fits no bin came through the checks");
            }
            bins.add(taken);
            waiting = left;
        }
        return bins;
    }

    /** One annealing of the order towards a goal; each layout that reaches it is kept and the goal drawn nearer. */
    private void anneal(List<Bin> startBins, long startGoal) {
        long goal = startGoal;
        List<Bin> bins = new ArrayList<>(startBins);
        bins.set(bins.size() - 1, bins.get(bins.size() - 1).filledUpward(false));
        int[] order = bestOrder.clone();
        boolean[] turned = bestTurned.clone();
        if (chance.below(2) == 0) {
            shuffle(order);
        }
        double now = fill.fill(order, turned, bins, goal);
        double mean = set.area() / set.size();
        long length = Math.min(MOST_FILLS_OF_ONE_ANNEALING, Math.max(1, budget.steps() / 3));
        Move move = new Move(set.size());
        for (long k = 0; k < length; k++) {
            if (!budget.step()) {
                return;
            }
            double heat = mean * HOT * StrictMath.pow(COLD / HOT, (double) k / length);
            Bin before = bins.size() > 1 && chance.below(20) == 0 ? turnOneBin(bins) : null;
            if (before == null) {
                move.make(order, turned);
            }
            double after = fill.fill(order, turned, bins, goal);
            if (after == 0 && keep(order, turned, bins)) {
                goal = Math.max(best.lastLength() - step, 0);
                if (isProvenBest() || goal < leastLast() || best.bins().size() < bins.size()) {
                    return;
                }
                after = fill.fill(order, turned, bins, goal);
                now = after;
            } else if (after <= now || chance.share() < StrictMath.exp((now - after) / heat)) {
                now = after;
            } else if (before == null) {
                move.undo(order, turned);
            } else {
                bins.set(flippedBin, before);
            }
        }
    }

    private int flippedBin;

    /** All but the last, which is always filled along x. */
    private Bin turnOneBin(List<Bin> bins) {
        flippedBin = chance.below(bins.size() - 1);
        Bin before = bins.get(flippedBin);
        bins.set(flippedBin, before.filledUpward(!before.upward()));
        return before;
    }

    private boolean keep(int[] order, boolean[] turned, List<Bin> bins) {
        RectangleLayout layout = RectangleLayout.of(fill, bins);
        if (best != null && BETTER.compare(layout, best) >= 0) {
            return false;
        }
        best = layout;
        bestOrder = order.clone();
        bestTurned = turned.clone();
        listener.accept(layout);
        return true;
    }

    private boolean isProvenBest() {
        return best.bins().size() <= leastBins() && best.lastLength() - step < leastLast();
    }

    private int leastBins() {
        double largest = kinds.stream().mapToDouble(RectangleSearch::size).max().orElseThrow();
        return strip ? 1 : (int) Math.max(1, Math.ceil(set.area() / largest - 1e-9));
    }

    /** No layout with as few bins as the best can have a shorter last bin than this. */
    private long leastLast() {
        double others = 0;
        for (int b = 0; b < best().bins().size() - 1; b++) {
            others += size(best().bins().get(b));
        }
        Bin last = best().bins().get(best().bins().size() - 1);
        long byArea = (long) Math.ceil((set.area() - others) / last.alongY() - 1e-6);
        return Math.max(byArea, strip ? set.leastLength(last.alongY()) : set.smallestSide());
    }

    private RectangleLayout best() {
        return best == null ? new RectangleLayout(kinds.subList(0, 1), new int[0], new long[0], new long[0], new boolean[0], 0, 0) : best;
    }

    /** So many bins for a try with fewer: the largest kind if it takes all shapes, else the first of the best layout's. */
    private List<Bin> bins(int count) {
        Bin largest = kinds.stream().max(Comparator.comparingDouble(RectangleSearch::size)).orElseThrow();
        boolean takesAll = IntStream.range(0, set.size()).allMatch(i -> set.fits(i, largest.alongX(), largest.alongY()));
        List<Bin> bins = new ArrayList<>();
        for (int b = 0; b < count; b++) {
            Bin as = best.bins().get(b);
            bins.add((takesAll ? largest : as).filledUpward(b < count - 1 && as.upward()));
        }
        return bins;
    }

    private long wholeLast(int count) {
        return bins(count).get(count - 1).along();
    }

    private static double size(Bin bin) {
        return (double) bin.alongX() * bin.alongY();
    }

    private void shuffle(int[] order) {
        for (int i = order.length - 1; i > 0; i--) {
            int j = chance.below(i + 1);
            int was = order[i];
            order[i] = order[j];
            order[j] = was;
        }
    }

    /** A change of the order that can be taken back: two exchanged, one moved elsewhere, or one turned. */
    private final class Move {
        private final int n;
        private int what;
        private int from;
        private int to;

        Move(int n) {
            this.n = n;
        }

        void make(int[] order, boolean[] turned) {
            what = chance.below(3);
            from = chance.below(n);
            to = chance.below(n);
            if (what == 0) {
                exchange(order);
            } else if (what == 1) {
                shift(order, from, to);
            } else {
                turned[from] = !turned[from];
            }
        }

        void undo(int[] order, boolean[] turned) {
            if (what == 0) {
                exchange(order);
            } else if (what == 1) {
                shift(order, to, from);
            } else {
                turned[from] = !turned[from];
            }
        }

        private void exchange(int[] order) {
            int was = order[from];
            order[from] = order[to];
            order[to] = was;
        }

        private static void shift(int[] order, int from, int to) {
            int moved = order[from];
            if (from < to) {
                System.arraycopy(order, from + 1, order, from, to - from);
            } else {
                System.arraycopy(order, to, order, to + 1, from - to);
            }
            order[to] = moved;
        }
    }
}
