package saddlebar.model.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A disk that fails at a chosen step. Either one step fails and the program goes on, or the program is dead from then on; then
 * {@link #losePower()} leaves on the real disk what a bad disk would: of what was not synced, half of the bytes; of names that were not
 * synced with their folder, nothing.
 */
final class FrailDisk implements Disk {
    private final LocalDisk real = new LocalDisk();
    private final Map<Path, byte[]> lasting = new LinkedHashMap<>();
    private final List<Undo> names = new ArrayList<>();
    private long failAt;
    private final boolean dies;
    private long steps;

    FrailDisk(long failAt, boolean dies) {
        this.failAt = failAt;
        this.dies = dies;
    }

    private record Undo(Path folder, Step back) {
    }

    private interface Step {
        void run() throws IOException;
    }

    static final class Failure extends IOException {
        private static final long serialVersionUID = 1;

        Failure(long step) {
            super("the disk fails at step " + step);
        }
    }

    /** Steps taken, the failed one included. */
    long steps() {
        return steps;
    }

    void failAgainAt(long step) {
        failAt = step;
    }

    private void step() throws Failure {
        steps++;
        if (dies ? steps >= failAt : steps == failAt) {
            throw new Failure(steps);
        }
    }

    @Override
    public void write(Path file, byte[] bytes) throws IOException {
        boolean dead = before(file);
        real.write(file, dead ? Arrays.copyOf(bytes, bytes.length / 2) : bytes);
        fail(dead);
    }

    @Override
    public void append(Path file, byte[] bytes) throws IOException {
        boolean dead = before(file);
        real.append(file, dead ? Arrays.copyOf(bytes, bytes.length / 2) : bytes);
        fail(dead);
    }

    /** A failing write leaves half of itself behind. */
    private boolean before(Path file) throws IOException {
        boolean dead = false;
        try {
            step();
        } catch (Failure e) {
            if (dies && steps > failAt) {
                throw e;
            }
            dead = true;
        }
        if (!Files.exists(file)) {
            names.add(new Undo(file.getParent(), () -> Files.deleteIfExists(file)));
            lasting.putIfAbsent(file, new byte[0]);
        } else {
            lasting.putIfAbsent(file, Files.readAllBytes(file));
        }
        return dead;
    }

    private void fail(boolean dead) throws Failure {
        if (dead) {
            throw new Failure(steps);
        }
    }

    @Override
    public void truncate(Path file, long length) throws IOException {
        step();
        lasting.putIfAbsent(file, Files.readAllBytes(file));
        real.truncate(file, length);
    }

    @Override
    public void copy(Path from, Path to) throws IOException {
        write(to, Files.readAllBytes(from));
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        step();
        if (Files.isDirectory(from)) {
            Files.move(from, to);
            names.add(new Undo(to.getParent(), () -> Files.move(to, from)));
            return;
        }
        byte[] old = Files.exists(to) ? Files.readAllBytes(to) : null;
        byte[] fromLasting = lasting.remove(from);
        real.rename(from, to);
        if (fromLasting == null) {
            lasting.remove(to);
        } else {
            lasting.put(to, fromLasting);
        }
        names.add(new Undo(to.getParent(), () -> {
            Files.move(to, from);
            if (old != null) {
                Files.write(to, old);
            }
        }));
    }

    @Override
    public void delete(Path file) throws IOException {
        step();
        if (Files.isDirectory(file)) {
            real.delete(file);
            names.add(new Undo(file.getParent(), () -> Files.createDirectories(file)));
        } else if (Files.exists(file)) {
            byte[] old = Files.readAllBytes(file);
            real.delete(file);
            lasting.remove(file);
            names.add(new Undo(file.getParent(), () -> Files.write(file, old)));
        }
    }

    @Override
    public void createFolders(Path folder) throws IOException {
        step();
        real.createFolders(folder); // a folder that is lost with all in it is the same as one that is empty
    }

    @Override
    public void sync(Path file) throws IOException {
        step();
        lasting.remove(file);
    }

    @Override
    public void syncFolder(Path folder) throws IOException {
        step();
        names.removeIf(undo -> undo.folder().equals(folder));
    }

    /** Puts the real disk into the worst state that the calls up to now allow. */
    void losePower() throws IOException {
        for (Map.Entry<Path, byte[]> file : lasting.entrySet()) {
            if (Files.exists(file.getKey())) {
                Files.write(file.getKey(), torn(file.getValue(), Files.readAllBytes(file.getKey())));
            }
        }
        for (int i = names.size() - 1; i >= 0; i--) {
            names.get(i).back().run();
        }
        lasting.clear();
        names.clear();
    }

    private static byte[] torn(byte[] old, byte[] now) {
        int same = Arrays.mismatch(old, now);
        if (same < 0 || same == now.length) {
            return old; // unchanged, or a cut that was lost
        }
        if (same == old.length) {
            return Arrays.copyOf(now, old.length + (now.length - old.length) / 2);
        }
        return Arrays.copyOf(now, now.length / 2);
    }
}
