package saddlebar.ui.tree;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

import saddlebar.model.problem.Refusal;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.ui.Ids;
import saddlebar.ui.Messages;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;

/**
 * Where it hangs how far everything of the open commission is made. Read in the background whenever the commission is opened, and so after each
 * making. On the screen's thread.
 */
public final class StateBoard {
    private final Display display;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private MakingStates states = MakingStates.NONE;
    private Job reading;

    public StateBoard(CommissionDesk desk, Display display) {
        this.display = display;
        desk.addListener(new CommissionDesk.Listener() {
            @Override
            public void opened(OpenCommission commission) {
                read(commission.path());
            }

            @Override
            public void recorded(OpenCommission commission) {
                read(commission.path());
            }

            @Override
            public void closing(OpenCommission commission) {
                stop();
                states = MakingStates.NONE;
            }
        });
        desk.commission().map(OpenCommission::path).ifPresent(this::read);
    }

    public MakingStates states() {
        return states;
    }

    /** Called when something else hangs here. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    public void removeListener(Runnable listener) {
        listeners.remove(listener);
    }

    private void stop() {
        if (reading != null) {
            reading.cancel();
            reading = null;
        }
    }

    private void read(Path path) {
        stop();
        Job job = new Job(Messages.State_reading) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                try (CommissionFolder folder = CommissionFolder.open(path, Access.READ)) {
                    MakingStates read = MakingStates.of(folder);
                    display.asyncExec(() -> hang(this, read));
                    return Status.OK_STATUS;
                } catch (IOException | Refusal e) {
                    return new Status(IStatus.WARNING, Ids.PLUGIN, e.getMessage(), e); // told where the window itself is looked into
                }
            }
        };
        job.setSystem(true);
        job.setPriority(Job.SHORT);
        reading = job;
        job.schedule();
    }

    private void hang(Job from, MakingStates read) {
        if (from == reading) {
            states = read;
            listeners.forEach(Runnable::run);
        }
    }
}
