package saddlebar.nesting;

import java.util.Optional;
import java.util.function.Consumer;

/**
 * Keeps the best layout that a search has handed out, so that it outlives a search that was stopped: hand it in as the search's listener
 * and ask it when {@link java.util.concurrent.CancellationException} comes out. Safe to ask from another thread.
 */
public final class BestSoFar implements Consumer<Nested> {
    private final Consumer<? super Nested> next;
    private volatile Nested best;

    public BestSoFar() {
        this(nested -> {});
    }

    /** @param next told of each better layout after it was kept */
    public BestSoFar(Consumer<? super Nested> next) {
        this.next = next;
    }

    @Override
    public void accept(Nested better) {
        best = better;
        next.accept(better);
    }

    public Optional<Nested> best() {
        return Optional.ofNullable(best);
    }
}
