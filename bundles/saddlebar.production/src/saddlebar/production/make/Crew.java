package saddlebar.production.make;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** So many hands for independent jobs. Results come in the order of the jobs, so that it does not matter who was first. */
final class Crew implements AutoCloseable {
    private final ExecutorService hands;

    Crew(int hands) {
        this.hands = Executors.newFixedThreadPool(hands, job -> {
            Thread thread = new Thread(job, "making");
            thread.setDaemon(true);
            return thread;
        });
    }

    /** Does all jobs; if one fails, those not yet begun are dropped, those at work are waited for, and the first failure in order rises. */
    <T> List<T> all(List<Callable<T>> jobs) throws IOException {
        List<Future<T>> futures = new ArrayList<>();
        for (Callable<T> job : jobs) {
            futures.add(hands.submit(job));
        }
        List<T> results = new ArrayList<>();
        Throwable failure = null;
        for (Future<T> future : futures) {
            if (failure != null) {
                future.cancel(false);
            }
            try {
                results.add(future.get());
            } catch (CancellationException dropped) {
                failure = failure == null ? dropped : failure;
            } catch (ExecutionException failed) {
                failure = failure == null ? failed.getCause() : failure;
            } catch (InterruptedException interrupted) {
                Thread.currentThread().interrupt();
                failure = failure == null ? new CancellationException("stopped") : failure;
            }
        }
        if (failure != null) {
            rise(failure);
        }
        return results;
    }

    private static void rise(Throwable failure) throws IOException {
        if (failure instanceof UncheckedIOException unchecked) {
            throw unchecked.getCause();
        }
        if (failure instanceof IOException io) {
            throw io;
        }
        if (failure instanceof RuntimeException runtime) {
            throw runtime;
        }
        if (failure instanceof Error error) {
            throw error;
        }
        throw new IllegalStateException(failure);
    }

    @Override
    public void close() {
        hands.shutdownNow();
    }
}
