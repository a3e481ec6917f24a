package saddlebar.ui;

import java.util.Map;
import java.util.concurrent.TimeUnit;

/** Where every thread is: what one needs to know of a test that waits in vain. */
final class Threads {
    private Threads() {
    }

    /** To the test's output. */
    static void tell() {
        System.err.println(dump());
        System.err.flush();
    }

    private static String dump() {
        StringBuilder words = new StringBuilder();
        for (Map.Entry<Thread, StackTraceElement[]> entry : Thread.getAllStackTraces().entrySet()) {
            Thread thread = entry.getKey();
            words.append('"').append(thread.getName()).append("\" ").append(thread.getState()).append('\n');
            for (StackTraceElement at : entry.getValue()) {
                words.append("    at ").append(at).append('\n');
            }
        }
        return words.toString();
    }

    /** After so long the whole run is given up: nobody waits for ever for a test. */
    static void giveUpAfter(long seconds) {
        Thread watch = new Thread(() -> {
            try {
                TimeUnit.SECONDS.sleep(seconds);
            } catch (InterruptedException e) {
                return; // ended in time
            }
            System.err.println("The screen tests did not end within " + seconds + " s.");
            tell();
            Runtime.getRuntime().halt(1);
        }, "Watch");
        watch.setDaemon(true);
        watch.start();
    }
}
