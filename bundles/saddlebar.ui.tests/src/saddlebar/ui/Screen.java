package saddlebar.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/** Lets a test act on the screen's thread and wait for what it shows; what fails there fails the test. */
final class Screen {
    private static final long WAIT_MS = 90_000;
    private static final long PAUSE_MS = 20;

    private Screen() {
    }

    static <T> T get(Callable<T> task) {
        AtomicReference<T> result = new AtomicReference<>();
        AtomicReference<Throwable> failure = new AtomicReference<>();
        display().syncExec(() -> {
            try {
                result.set(task.call());
            } catch (Throwable e) { // carried over to the test's thread
                failure.set(e);
            }
        });
        if (failure.get() instanceof Error error) {
            throw error;
        }
        if (failure.get() != null) {
            throw new IllegalStateException(failure.get());
        }
        return result.get();
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
                throw new AssertionError("waited in vain for: " + what);
            }
            Thread.sleep(PAUSE_MS);
        }
    }

    /** Lets everything that waits for the screen's thread run. */
    static void settle() {
        for (int i = 0; i < 20; i++) {
            display().syncExec(() -> {
                while (Display.getCurrent().readAndDispatch()) {
                    continue;
                }
            });
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
