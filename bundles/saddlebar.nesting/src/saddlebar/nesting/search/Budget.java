package saddlebar.nesting.search;

import java.util.function.LongSupplier;

import saddlebar.model.work.Work;
import saddlebar.nesting.Effort;

/** How much of an effort is left; passes progress on and asks whether to stop. Used by one thread. */
public final class Budget {
    private final Work work;
    private final int units;
    private final long steps;
    private final LongSupplier clock;
    private final long startNs;
    private final long nanoseconds;
    private long done;
    private int told;

    /**
     * @param units         progress to tell in all
     * @param stepsPerRound steps of the search in a round
     */
    public Budget(Effort effort, Work work, int units, int stepsPerRound) {
        this(effort, work, units, stepsPerRound, System::nanoTime);
    }

    /** @param clock nanoseconds that an effort in seconds is measured by */
    public Budget(Effort effort, Work work, int units, int stepsPerRound, LongSupplier clock) {
        this.clock = clock;
        this.work = work;
        this.units = units;
        if (effort instanceof Effort.Seconds time) {
            steps = Long.MAX_VALUE;
            nanoseconds = (long) (time.seconds() * 1e9);
        } else {
            steps = (long) ((Effort.Rounds) effort).rounds() * stepsPerRound;
            nanoseconds = Long.MAX_VALUE;
        }
        startNs = clock.getAsLong();
    }

    /** Begins one more step, if there is one; called at most 0.1 s apart. */
    public boolean step() {
        work.checkpoint();
        if (spent() >= 1) {
            return false;
        }
        done++;
        int due = (int) (units * Math.min(1, spent()));
        if (due > told) {
            work.advance(due - told);
            told = due;
        }
        return true;
    }

    /** Asks whether to stop, without counting a step. */
    public void checkpoint() {
        work.checkpoint();
    }

    /** Share of the effort that is spent, 0 at the start, 1 or more at the end. */
    public double spent() {
        return nanoseconds == Long.MAX_VALUE ? share(done, steps) : share(clock.getAsLong() - startNs, nanoseconds);
    }

    /** Steps in all, as far as they are known. */
    public long steps() {
        return steps;
    }

    /** Tells what is left of the progress: the search is over. */
    public void finish() {
        if (told < units) {
            work.advance(units - told);
            told = units;
        }
    }

    private static double share(long part, long whole) {
        return whole == 0 ? 1 : (double) part / whole;
    }
}
