package saddlebar.ui;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

import org.eclipse.swt.graphics.Resource;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;

import saddlebar.ui.desk.CommissionDesk;

/** Opens the workbench once for all screen tests, on a thread of its own, and closes it at the end. */
public final class WorkbenchExtension implements BeforeAllCallback {
    private static final long START_WITHIN_S = 120;
    private static final long END_WITHIN_MS = 60_000;
    private static final long WHOLE_RUN_WITHIN_S = 900;

    @Override
    public void beforeAll(ExtensionContext context) {
        context.getRoot().getStore(Namespace.GLOBAL).getOrComputeIfAbsent(Running.class, key -> new Running(), Running.class);
    }

    /** Fonts, images and the like that were lost without being given back, as told so far. */
    static List<Error> leaks(ExtensionContext context) {
        return context.getRoot().getStore(Namespace.GLOBAL).get(Running.class, Running.class).leaks;
    }

    /** The workbench while it runs. */
    static final class Running implements AutoCloseable {
        private final List<Error> leaks = Collections.synchronizedList(new ArrayList<>());
        private final Thread thread;
        private Display display;
        private Throwable failure;

        Running() {
            CountDownLatch started = new CountDownLatch(1);
            Threads.giveUpAfter(WHOLE_RUN_WITHIN_S);
            Resource.setNonDisposeHandler(leaks::add);
            thread = new Thread(() -> {
                try {
                    display = PlatformUI.createDisplay();
                    PlatformUI.createAndRunWorkbench(display, new TestAdvisor(started));
                    display.dispose();
                } catch (Throwable e) { // told to the test's thread
                    failure = e;
                } finally {
                    started.countDown();
                }
            }, "UI");
            thread.start();
            try {
                if (!started.await(START_WITHIN_S, TimeUnit.SECONDS)) {
                    Threads.tell();
                    throw new IllegalStateException("the workbench did not open within " + START_WITHIN_S + " s");
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException(e);
            }
            if (failure != null) {
                throw new IllegalStateException("the workbench did not open", failure);
            }
        }

        /** Nothing asks a person at the end: what is unsaved is given up, what still stands open is closed. */
        @Override
        public void close() throws InterruptedException {
            display.asyncExec(() -> {
                IWorkbench workbench = PlatformUI.getWorkbench();
                workbench.getService(CommissionDesk.class).commission().ifPresent(open -> open.edits().forget());
                for (Shell shell : display.getShells()) {
                    if (shell.getParent() != null) {
                        shell.close(); // a dialog that a failed test has left
                    }
                }
                workbench.close();
            });
            thread.join(END_WITHIN_MS);
            if (thread.isAlive()) {
                Threads.tell();
                throw new IllegalStateException("the workbench did not close within " + END_WITHIN_MS / 1000 + " s");
            }
        }
    }

    /** The studio as it always is, but for the arguments of the test's own process. */
    private static final class TestAdvisor extends StudioAdvisor {
        private final CountDownLatch started;

        TestAdvisor(CountDownLatch started) {
            this.started = started;
        }

        @Override
        protected Optional<Path> startArgument() {
            return Optional.empty();
        }

        @Override
        public void postStartup() {
            super.postStartup();
            Display.getCurrent().asyncExec(started::countDown);
        }
    }
}
