package saddlebar.ui.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.core.commands.operations.IOperationHistory;

/** Where one commission lies open, or none; everybody who shows it listens here. On the screen's thread. */
public final class CommissionDesk {
    /** Learns what happens on the desk. */
    public interface Listener {
        /** Another commission lies open, or the same one has been read anew. */
        default void opened(OpenCommission commission) {
            // not everybody needs to know
        }

        /** It is about to be closed: let go of all that belongs to it. */
        default void closing(OpenCommission commission) {
            // not everybody needs to know
        }

        /** Something was entered in its making record. */
        default void recorded(OpenCommission commission) {
            // not everybody needs to know
        }

        /** Something in it has changed, or was saved. */
        default void changed(OpenCommission commission) {
            // not everybody needs to know
        }
    }

    private final IOperationHistory history;
    private final List<Listener> listeners = new CopyOnWriteArrayList<>();
    private Optional<OpenCommission> open = Optional.empty();
    private boolean making;

    public CommissionDesk(IOperationHistory history) {
        this.history = history;
    }

    public Optional<OpenCommission> commission() {
        return open;
    }

    /**
     * Opens a commission in place of the one that is open; what was not saved of that is lost, so ask first.
     *
     * @throws saddlebar.model.problem.Refusal if it cannot be opened; the other one then stays
     */
    public OpenCommission open(Path path) throws IOException {
        boolean again = open.isPresent() && Files.exists(path) && Files.isSameFile(open.get().path(), path);
        if (again) { // our own lock would stand in our way
            close();
        }
        OpenCommission opened = OpenCommission.open(path, history);
        close();
        show(opened);
        return opened;
    }

    /** Reads the open commission anew from the disk. */
    public void reopen() throws IOException {
        if (open.isPresent()) {
            open(open.get().path());
        }
    }

    private void show(OpenCommission opened) {
        open = Optional.of(opened);
        opened.edits().whenChanged(() -> {
            if (open.isPresent() && open.get() == opened) {
                listeners.forEach(listener -> listener.changed(opened));
            }
        });
        listeners.forEach(listener -> listener.opened(opened));
    }

    /** Closes what is open, if anything; what was not saved is lost. */
    public void close() throws IOException {
        if (open.isPresent()) {
            OpenCommission closing = open.get();
            listeners.forEach(listener -> listener.closing(closing));
            open = Optional.empty();
            closing.close();
        }
    }

    /** Whether what is open may be changed here and now. */
    public boolean canEdit() {
        return open.isPresent() && !open.get().isReadOnly() && !making;
    }

    /** Whether production is at work on the commission: until it is done, nothing can be changed here. */
    public boolean isMaking() {
        return making;
    }

    /** Lets go of the commission's lock, so that production can take it; it stays to be looked at. Nothing may be unsaved. */
    public Path handOver() throws IOException {
        OpenCommission handed = open.orElseThrow(() -> new IllegalStateException("no commission is open"));
        if (handed.isDirty()) {
            throw new IllegalStateException("save before production takes over");
        }
        handed.folder().close();
        making = true;
        listeners.forEach(listener -> listener.changed(handed));
        return handed.path();
    }

    /** Takes the commission back from production, read anew, unless another one was opened meanwhile. */
    public void takeBack(Path path) throws IOException {
        making = false;
        if (open.isPresent() && open.get().path().equals(path)) {
            reopen();
        }
    }

    /** To be called by whoever has entered something in the making record of what is open. */
    public void recorded() {
        open.ifPresent(commission -> listeners.forEach(listener -> listener.recorded(commission)));
    }

    public void addListener(Listener listener) {
        listeners.add(listener);
    }

    public void removeListener(Listener listener) {
        listeners.remove(listener);
    }
}
