package saddlebar.model.store;

import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.UUID;

/** The real ones. Times are cut to milliseconds: no record needs more. */
final class SystemSurroundings implements Surroundings {
    private final String host = hostName();

    @Override
    public Instant now() {
        return Instant.now().truncatedTo(ChronoUnit.MILLIS);
    }

    @Override
    public String user() {
        String user = System.getProperty("user.name");
        return user == null || user.isBlank() ? "somebody" : user;
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
        return UUID.randomUUID().toString();
    }

    @Override
    public boolean runs(long pid) {
        return ProcessHandle.of(pid).map(ProcessHandle::isAlive).orElse(false);
    }

    /** The system's own word first: asking the network for it can take seconds. */
    private static String hostName() {
        for (String variable : new String[] {"COMPUTERNAME", "HOSTNAME"}) {
            String name = System.getenv(variable);
            if (name != null && !name.isBlank()) {
                return name;
            }
        }
        try {
            Path file = Path.of("/etc/hostname");
            if (Files.isReadable(file)) {
                String name = Files.readString(file, StandardCharsets.UTF_8).strip();
                if (!name.isEmpty()) {
                    return name;
                }
            }
            return InetAddress.getLocalHost().getHostName();
        } catch (UnknownHostException e) {
            return "unnamed";
        } catch (IOException e) {
            return "unnamed";
        }
    }
}
