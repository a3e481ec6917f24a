package saddlebar.ui.easel;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.BiConsumer;

import saddlebar.model.work.Work;

/**
 * Paints squares away from the screen's thread. Only the newest wish counts: what has been asked for before and is no longer wanted is not
 * begun, or stopped at its next checkpoint.
 *
 * @param <T> what a painted square is
 */
public final class TileQueue<T> {
    /** Paints one square; called on threads of the executor. */
    @FunctionalInterface
    public interface Press<T> {
        T paint(TileKey tile, Work work);
    }

    private final Executor executor;
    private final int mostAtOnce;
    private final BiConsumer<TileKey, T> deliver;
    private final BiConsumer<TileKey, RuntimeException> failed;
    private final Object lock = new Object();
    private Press<T> press;
    private Deque<TileKey> waiting = new ArrayDeque<>();
    private Set<TileKey> wanted = Set.of();
    private final Set<TileKey> begun = new HashSet<>();
    private int workers;

    /**
     * @param executor   does the painting
     * @param mostAtOnce squares painted at the same time at most
     * @param deliver    takes each painted square, on the executor's thread
     * @param failed     is told of a square that could not be painted, on the executor's thread
     */
    public TileQueue(Executor executor, int mostAtOnce, BiConsumer<TileKey, T> deliver, BiConsumer<TileKey, RuntimeException> failed) {
        this.executor = Objects.requireNonNull(executor, "executor");
        this.mostAtOnce = mostAtOnce;
        this.deliver = Objects.requireNonNull(deliver, "deliver");
        this.failed = Objects.requireNonNull(failed, "failed");
    }

    /** Says which squares are wanted now, most urgent first, and who paints them. Returns at once. */
    public void want(List<TileKey> tiles, Press<T> painter) {
        int toStart;
        synchronized (lock) {
            press = painter;
            wanted = Set.copyOf(tiles);
            waiting = new ArrayDeque<>(tiles);
            waiting.removeAll(begun);
            toStart = Math.min(mostAtOnce - workers, waiting.size());
            workers += Math.max(0, toStart);
        }
        for (int i = 0; i < toStart; i++) {
            executor.execute(this::work);
        }
    }

    private void work() {
        while (true) {
            TileKey tile;
            Press<T> painter;
            synchronized (lock) {
                tile = waiting.poll();
                painter = press;
                if (tile == null) {
                    workers--;
                    return;
                }
                begun.add(tile);
            }
            T painted = null;
            RuntimeException fault = null;
            try {
                painted = painter.paint(tile, new WhileWanted(tile));
            } catch (CancellationException e) {
                painted = null; // nobody wants it any more
            } catch (RuntimeException e) {
                fault = e;
            } finally {
                synchronized (lock) {
                    begun.remove(tile);
                }
            }
            if (fault != null) {
                failed.accept(tile, fault);
            } else if (painted != null) {
                deliver.accept(tile, painted);
            }
        }
    }

    private final class WhileWanted implements Work {
        private final TileKey tile;

        WhileWanted(TileKey tile) {
            this.tile = tile;
        }

        @Override
        public void advance(long units) {
            // a square is done or not
        }

        @Override
        public void checkpoint() {
            synchronized (lock) {
                if (!wanted.contains(tile)) {
                    throw new CancellationException("another part of the window is in view");
                }
            }
        }
    }
}
