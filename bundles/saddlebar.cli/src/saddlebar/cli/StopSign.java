package saddlebar.cli;

import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Ctrl-C: raised by the platform's end of the process, read by the work, which then leaves nothing half written. */
public final class StopSign {
    private final CountDownLatch ended = new CountDownLatch(1);
    private volatile boolean raised;

    void raise() {
        raised = true;
    }

    void check() {
        if (raised) {
            throw new CancellationException("stopped by the user");
        }
    }

    boolean isRaised() {
        return raised;
    }

    void workEnded() {
        ended.countDown();
    }

    /** Gives the work a moment to close what it has open. */
    boolean awaitEnd(long millis) throws InterruptedException {
        return ended.await(millis, TimeUnit.MILLISECONDS);
    }
}
