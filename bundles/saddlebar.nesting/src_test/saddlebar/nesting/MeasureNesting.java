package saddlebar.nesting;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;

import saddlebar.model.work.Work;
import saddlebar.nesting.read.StripFile;

/**
 * Prints the tables of docs/algorithms/nesting.md. Arguments: {@code rectangles} or {@code outlines}, seconds for each problem, and a regular
 * expression for the names of those to be run.
 */
final class MeasureNesting {
    private final PrintStream out;
    private final double seconds;
    private final String names;

    private MeasureNesting(PrintStream out, double seconds, String names) {
        this.out = out;
        this.seconds = seconds;
        this.names = names;
    }

    public static void main(String[] args) {
        MeasureNesting measure = new MeasureNesting(System.out, Double.parseDouble(args[1]), args.length > 2 ? args[2] : ".*");
        if (args[0].equals("rectangles")) {
            measure.rectangles();
        } else {
            measure.outlines();
        }
    }

    private void rectangles() {
        out.println("| problem | items | strip | optimum | first (s) | reached | at (s) | gap |");
        out.println("| --- | --- | --- | --- | --- | --- | --- | --- |");
        for (Published.Strip s : Published.hopperTurton()) {
            if (s.name().matches(names)) {
                Clock clock = new Clock();
                Nested nested = StripNesting.place(s.items(), s.heightMm(), 0, Effort.seconds(seconds), Work.UNWATCHED, clock);
                out.printf(Locale.ROOT, "| %s | %d | %.0f | %.0f | %.0f (%.2f) | %.0f | %.2f | %.2f %% |%n", s.name(), s.items().size(),
                        s.heightMm(), s.optimalMm(), clock.first.lengthMm(), clock.firstS, nested.lengthMm(), clock.lastS,
                        100 * (nested.lengthMm() / s.optimalMm() - 1));
            }
        }
    }

    private void outlines() {
        out.println("| problem | items | first use % (s) | use % | length | at (s) | record % | below |");
        out.println("| --- | --- | --- | --- | --- | --- | --- | --- |");
        for (Published.Irregular problem : Published.IRREGULAR) {
            if (problem.name().matches(names)) {
                StripFile strip = problem.strip();
                List<NestItem> items = strip.items();
                Clock clock = new Clock();
                Nested nested = StripNesting.place(items, strip.stripHeightMm(), 0, Effort.seconds(seconds), Work.UNWATCHED, clock);
                out.printf(Locale.ROOT, "| %s | %d | %.2f (%.2f) | %.2f | %.3f | %.1f | %.2f | %.2f |%n", problem.name(),
                        items.stream().mapToInt(NestItem::quantity).sum(), 100 * clock.first.use(), clock.firstS, 100 * nested.use(),
                        nested.lengthMm(), clock.lastS, problem.record(), problem.record() - 100 * nested.use());
            }
        }
    }

    private static final class Clock implements java.util.function.Consumer<Nested> {
        private final long startNs = System.nanoTime();
        private Nested first;
        private double firstS;
        private double lastS;

        @Override
        public void accept(Nested better) {
            lastS = (System.nanoTime() - startNs) / 1e9;
            if (first == null) {
                first = better;
                firstS = lastS;
            }
        }
    }
}
