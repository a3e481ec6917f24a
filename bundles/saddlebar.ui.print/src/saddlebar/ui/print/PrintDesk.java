package saddlebar.ui.print;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.production.record.DeedBook;
import saddlebar.production.record.DeedReader;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.make.MonitorWork;

/** What the parts of the print bench show together, and where they enter what was done. On the screen's thread. */
public final class PrintDesk {
    private final Display display;
    private final CommissionDesk desk;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private BenchState state = BenchState.NONE;
    private Job reading;

    PrintDesk(CommissionDesk desk, Display display) {
        this.desk = desk;
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
                state = BenchState.NONE;
                listeners.forEach(Runnable::run);
            }
        });
        desk.commission().map(OpenCommission::path).ifPresent(this::read);
    }

    private void read(Path folder) {
        if (reading != null) {
            reading.cancel();
        }
        Job job = new Job(Messages.Job_reading) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                try {
                    BenchState found = BenchState.read(folder, new MonitorWork(SubMonitor.convert(monitor, 1)));
                    display.asyncExec(() -> {
                        if (!monitor.isCanceled()) {
                            state = found;
                            listeners.forEach(Runnable::run);
                        }
                    });
                    return Status.OK_STATUS;
                } catch (CancellationException e) {
                    return Status.CANCEL_STATUS;
                } catch (IOException | Refusal e) {
                    return new Status(IStatus.WARNING, PrintBench.PLUGIN, e.getMessage(), e);
                }
            }
        };
        job.setPriority(Job.SHORT);
        reading = job;
        job.schedule();
    }

    BenchState state() {
        return state;
    }

    boolean canRecord() {
        return desk.canEdit();
    }

    Optional<OpenCommission> commission() {
        return desk.commission();
    }

    /**
     * Enters one thing done, now.
     *
     * @param words by column of the notebook, kind among them
     * @return what is to be told beside it
     * @throws Refusal if it cannot be entered
     */
    List<Problem> record(Map<String, String> words) throws IOException {
        OpenCommission open = desk.commission().orElseThrow(() -> new Refusal("record", Messages.Card_none, Messages.Card_none));
        DeedReader reader = new DeedReader(Instant.now(), ZoneId.systemDefault());
        DeedBook.Entered entered = new DeedBook(open.folder(), false).enter(List.of(reader.deed("record", words)), true);
        if (!entered.refused().isEmpty()) {
            throw entered.refused().get(0);
        }
        desk.recorded();
        return entered.warnings();
    }

    void addListener(Runnable listener) {
        listeners.add(listener);
    }

    void removeListener(Runnable listener) {
        listeners.remove(listener);
    }
}
