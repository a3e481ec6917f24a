package saddlebar.model.store;

import java.time.Instant;

/** Clock, person, machine and new ids: the one place where they are read, so that a test or a repeated run can bring its own. */
public interface Surroundings {
    Instant now();

    /** Who sits here, as the system calls them. */
    String user();

    /** What the machine is called. */
    String host();

    /** Number of this process. */
    long pid();

    /** A new UUID. */
    String newId();

    /** Whether a process of this machine still runs. */
    boolean runs(long pid);

    static Surroundings system() {
        return new SystemSurroundings();
    }
}
