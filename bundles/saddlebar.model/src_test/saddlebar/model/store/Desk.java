package saddlebar.model.store;

import java.time.Instant;
import java.util.UUID;

/** A person at a desk whose clock a test moves; ids are the same on every run. */
final class Desk implements Surroundings {
    private final String user;
    private final String host;
    private Instant now;
    private long ids;

    Desk(String user, String host, String now) {
        this.user = user;
        this.host = host;
        this.now = Instant.parse(now);
    }

    static Desk ofAnna() {
        return new Desk("anna", "north-desk", "2026-03-01T10:00:00Z");
    }

    void clock(String time) {
        now = Instant.parse(time);
    }

    @Override
    public Instant now() {
        return now;
    }

    @Override
    public String user() {
        return user;
    }

    @Override
    public String host() {
        return host;
    }

    @Override
    public long pid() {
        return ProcessHandle.current().pid();
    }

    @Override
    public String newId() {
        return new UUID(host.hashCode(), ++ids).toString();
    }

    @Override
    public boolean runs(long pid) {
        return pid == pid();
    }
}
