package saddlebar.ui.desk;

import java.io.IOException;
import java.util.Optional;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.IJobFunction;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

import saddlebar.model.store.UnsavedWork;
import saddlebar.ui.Messages;

/** Lays aside what is edited and not saved, a moment after each edit, so that a program that dies takes no work with it. */
final class LayingAside implements CommissionDesk.Listener {
    /** Long enough that typing a word is one time, short enough that little is lost. */
    private static final int AFTER_MS = 2000;

    private final Display display;
    private final Runnable due = this::now;
    private Optional<OpenCommission> commission = Optional.empty();
    private Optional<Job> writing = Optional.empty();

    LayingAside(Display display) {
        this.display = display;
    }

    @Override
    public void opened(OpenCommission opened) {
        commission = Optional.of(opened).filter(open -> !open.isReadOnly());
    }

    @Override
    public void changed(OpenCommission changed) {
        boolean edited = commission.filter(open -> open == changed && open.isDirty()).isPresent();
        display.timerExec(edited ? AFTER_MS : -1, due);
    }

    @Override
    public void closing(OpenCommission closing) {
        display.timerExec(-1, due);
        commission = Optional.empty();
        writing.ifPresent(LayingAside::await); // else it would write after the folder was tidied
        writing = Optional.empty();
    }

    private void now() {
        if (commission.isEmpty() || !commission.get().isDirty()) {
            return;
        }
        if (writing.isPresent() && writing.get().getState() != Job.NONE) {
            display.timerExec(AFTER_MS, due);
            return;
        }
        try {
            UnsavedWork.Snapshot snapshot = commission.get().folder().unsavedNow();
            Job job = Job.createSystem(Messages.LayingAside_job, (IJobFunction) monitor -> write(snapshot, monitor));
            writing = Optional.of(job);
            job.schedule();
        } catch (IOException e) {
            ILog.of(LayingAside.class).warn(Messages.LayingAside_failed, e);
        }
    }

    private static IStatus write(UnsavedWork.Snapshot snapshot, IProgressMonitor monitor) {
        if (monitor.isCanceled()) {
            return Status.CANCEL_STATUS;
        }
        try {
            snapshot.write();
        } catch (IOException e) {
            ILog.of(LayingAside.class).warn(Messages.LayingAside_failed, e); // no dialog: saving itself will tell if the disk is full
        }
        return Status.OK_STATUS;
    }

    private static void await(Job job) {
        job.cancel();
        try {
            job.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
