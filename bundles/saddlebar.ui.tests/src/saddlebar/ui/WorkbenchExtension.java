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
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;

/** Opens the workbench once for all screen tests, on a thread of its own, and closes it at the end. */
public final class WorkbenchExtension implements BeforeAllCallback {
    private static final long START_WITHIN_S = 120;
    private static final long END_WITHIN_MS = 30_000;

    @Override
    public void beforeAll(ExtensionContext context) {
        context.getRoot().getStore(Namespace.GLOBAL).getOrComputeIfAbsent(Running.class, key -> new Running(), Running.class);
    }

    /** Fonts, images and the like that were lost without being given back, as told so far. */
    static List<Error> leaks(ExtensionContext context) {
        return context.getRoot().getStore(Namespace.GLOBAL).get(Running.class, Running.class).leaks;
    }

    /** The workbench while it runs. */
    static final class Running implements ExtensionContext.Store.CloseableResource {
        private final List<Error> leaks = Collections.synchronizedList(new ArrayList<>());
        private final Thread thread;
        private Display display;
        private Throwable failure;

        Running() {
            CountDownLatch started = new CountDownLatch(1);
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

        @Override
        public void close() throws InterruptedException {
            display.syncExec(() -> PlatformUI.getWorkbench().close());
            thread.join(END_WITHIN_MS);
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
