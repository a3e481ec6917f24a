package saddlebar.ui.make;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.progress.IProgressConstants;

import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;
import saddlebar.ui.Ids;
import saddlebar.ui.desk.CommissionDesk;

/**
 * Work on the commission's folder while the desk has handed it over: in the background, watched in the Progress view, and taken back however it ends.
 *
 * @param <T> what it brings about
 */
public final class HandedOverJob<T> extends Job {
    /** The work itself, on a thread of the job. */
    @FunctionalInterface
    public interface Deed<T> {
        T doIt(Path commission, Work work) throws IOException;
    }

    private final CommissionDesk desk;
    private final Display display;
    private final int units;
    private final Deed<T> deed;
    private final Consumer<T> whenDone;
    private Path handed;
    private volatile boolean ran;

    /** @param whenDone is told on the screen's thread, after the commission has been taken back */
    public HandedOverJob(String name, CommissionDesk desk, Display display, int units, Deed<T> deed, Consumer<T> whenDone) {
        super(name);
        this.desk = desk;
        this.display = display;
        this.units = units;
        this.deed = deed;
        this.whenDone = whenDone;
        setProperty(IProgressConstants.KEEPONE_PROPERTY, Boolean.TRUE);
    }

    /** Hands the commission over and begins; on the screen's thread. */
    public void begin() throws IOException {
        handed = desk.handOver();
        addJobChangeListener(new JobChangeAdapter() {
            @Override
            public void done(IJobChangeEvent event) {
                if (!ran) { // stopped while it still waited for its turn
                    takeBack(HandedOverJob.this::nothing);
                }
            }
        });
        schedule();
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        ran = true;
        try {
            SubMonitor progress = SubMonitor.convert(monitor, getName(), units);
            T done = deed.doIt(handed, new MonitorWork(progress));
            takeBack(() -> whenDone.accept(done));
            return Status.OK_STATUS;
        } catch (CancellationException e) {
            takeBack(this::nothing);
            return Status.CANCEL_STATUS;
        } catch (IOException | Refusal e) {
            takeBack(this::nothing);
            return new Status(IStatus.WARNING, Ids.PLUGIN, e.getMessage(), e); // a warning: the platform shows it, and logs no fault of ours
        } catch (RuntimeException e) {
            takeBack(this::nothing);
            throw e;
        }
    }

    private void nothing() {
        // stopped or refused: nothing has changed
    }

    private void takeBack(Runnable then) {
        display.asyncExec(() -> {
            try {
                desk.takeBack(handed);
                then.run();
            } catch (IOException | Refusal e) {
                ILog.of(HandedOverJob.class).warn(e.getMessage(), e);
            }
        });
    }
}
