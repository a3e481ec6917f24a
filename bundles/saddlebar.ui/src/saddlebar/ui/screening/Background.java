package saddlebar.ui.screening;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** One thread beside the screen's, for a part that must answer at once. */
public final class Background {
    private Background() {
    }

    /** Ends with the program if nobody ends it before. */
    public static ExecutorService thread(String name) {
        return Executors.newSingleThreadExecutor(task -> {
            Thread thread = new Thread(task, name);
            thread.setDaemon(true);
            return thread;
        });
    }
}
