package saddlebar.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/** Lets a test act on the screen's thread and wait for what it shows; what fails there fails the test. */
final class Screen {
    private static final long WAIT_MS = 60_000;
    private static final long PAUSE_MS = 20;
    private static final int SETTLING_ROUNDS = 10;

    private Screen() {
    }

    /**
     * What a task gives that runs on the screen's thread. A dialog that waits for a person would stop that thread for ever: then this fails, and says
     * what stands on the screen and where every thread is.
     */
    static <T> T get(Callable<T> task) {
        CompletableFuture<T> result = new CompletableFuture<>();
        display().asyncExec(() -> {
            try {
                result.complete(task.call());
            } catch (Throwable e) { // carried over to the test's thread
                result.completeExceptionally(e);
            }
        });
        try {
            return result.get(WAIT_MS, TimeUnit.MILLISECONDS);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw new IllegalStateException(e.getCause());
        } catch (TimeoutException e) {
            Threads.tell();
            throw new AssertionError("the screen did not answer within " + WAIT_MS / 1000 + " s; where every thread was stands in the test's output", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    static void run(Action task) {
        get(() -> {
            task.run();
            return null;
        });
    }

    /** Something to do that may fail. */
    @FunctionalInterface
    interface Action {
        void run() throws Exception;
    }

    /** Waits until a condition holds on the screen; there is a limit, far above what is usual. */
    static void await(String what, BooleanSupplier condition) throws InterruptedException {
        long end = System.nanoTime() + WAIT_MS * 1_000_000;
        while (!get(condition::getAsBoolean)) {
            if (System.nanoTime() > end) {
                Threads.tell();
                throw new AssertionError("waited in vain for: " + what + "; where every thread was stands in the test's output");
            }
            Thread.sleep(PAUSE_MS);
        }
    }

    /** Lets what waits for the screen's thread run, and what that brings about. */
    static void settle() throws InterruptedException {
        for (int i = 0; i < SETTLING_ROUNDS; i++) {
            run(() -> {
                // those before us in the queue have had their turn
            });
            Thread.sleep(PAUSE_MS);
        }
    }

    static Display display() {
        return PlatformUI.getWorkbench().getDisplay();
    }

    /** Only on the screen's thread. */
    static IWorkbenchWindow window() {
        return PlatformUI.getWorkbench().getActiveWorkbenchWindow() != null
                ? PlatformUI.getWorkbench().getActiveWorkbenchWindow()
                : PlatformUI.getWorkbench().getWorkbenchWindows()[0];
    }

    /** Only on the screen's thread. */
    static IWorkbenchPage page() {
        return window().getActivePage();
    }

    /** All controls of a type below another; only on the screen's thread. */
    static <T extends Control> List<T> all(Composite from, Class<T> type) {
        List<T> found = new ArrayList<>();
        for (Control child : from.getChildren()) {
            if (type.isInstance(child)) {
                found.add(type.cast(child));
            }
            if (child instanceof Composite composite) {
                found.addAll(all(composite, type));
            }
        }
        return found;
    }
}
