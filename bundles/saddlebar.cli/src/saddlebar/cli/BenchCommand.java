package saddlebar.cli;

import java.util.concurrent.Callable;

/**
 * One command of the launcher: a class annotated with picocli's {@code @Command} whose fields are one run's options, hence one object a
 * run. A new craft adds a command by adding such a service; no list is edited. {@link #call()} returns the exit code 0 or 1; what is
 * refused rises as an exception to the one handler that knows the other codes.
 */
public interface BenchCommand extends Callable<Integer> {
    /** Done. */
    int DONE = 0;
    /** Done, but something needs attention; it was listed. */
    int ATTENTION = 1;
}
