package saddlebar.ui.screening;

import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.BiConsumer;
import java.util.function.BooleanSupplier;

import saddlebar.model.work.Work;

/**
 * Does one thing at a time away from the screen's thread. What was asked for last is done next; what was asked for before it is dropped, or stopped
 * at its next checkpoint.
 *
 * @param <A> what is asked for
 */
public final class NewestWins<A> {
    private final Executor executor;
    private final BiConsumer<A, Work> doing;
    private Optional<A> waiting = Optional.empty();
    private boolean busy;
    private long asked;

    /**
     * @param executor runs one thing at a time
     * @param doing    does it; asks the work whether to go on, and before it shows anything
     */
    public NewestWins(Executor executor, BiConsumer<A, Work> doing) {
        this.executor = Objects.requireNonNull(executor, "executor");
        this.doing = Objects.requireNonNull(doing, "doing");
    }

    public synchronized void ask(A what) {
        waiting = Optional.of(what);
        asked++;
        if (!busy) {
            busy = true;
            executor.execute(this::run);
        }
    }

    /** Drops what waits and stops what is being done. */
    public synchronized void forget() {
        waiting = Optional.empty();
        asked++;
    }

    private void run() {
        for (Optional<Turn<A>> turn = next(); turn.isPresent(); turn = next()) {
            long mine = turn.get().number;
            try {
                doing.accept(turn.get().what, new Stoppable(() -> isNewest(mine)));
            } catch (CancellationException e) {
                // something newer is wanted, or nothing any more
            }
        }
    }

    private synchronized Optional<Turn<A>> next() {
        Optional<Turn<A>> turn = waiting.map(what -> new Turn<>(what, asked));
        waiting = Optional.empty();
        busy = turn.isPresent();
        return turn;
    }

    private synchronized boolean isNewest(long number) {
        return number == asked;
    }

    private record Turn<A>(A what, long number) {
    }

    private record Stoppable(BooleanSupplier goOn) implements Work {
        @Override
        public void advance(long units) {
            // too short to be watched
        }

        @Override
        public void checkpoint() {
            if (!goOn.getAsBoolean()) {
                throw new CancellationException("something newer is wanted");
            }
        }

        @Override
        public void say(String what) {
            // too short to be watched
        }
    }
}
