package saddlebar.ui.tracing;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;
import saddlebar.trace.suspect.Level;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.make.MonitorWork;

/** What the parts of the tracing bench show together: the defects, the one chosen, its way back, and what met the same. On the screen's thread. */
public final class TraceDesk {
    private final Display display;
    private final CommissionDesk desk;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private TraceReading.Overview overview = TraceReading.Overview.NONE;
    private Optional<Flaw> chosen = Optional.empty();
    private Trail trail = Trail.NONE;
    private Met met = Met.NONE;
    private Job reading;
    private Job tracing;
    private Job meeting;

    TraceDesk(CommissionDesk desk, Display display) {
        this.desk = desk;
        this.display = display;
        desk.addListener(new CommissionDesk.Listener() {
            @Override
            public void opened(OpenCommission commission) {
                read();
            }

            @Override
            public void recorded(OpenCommission commission) {
                reading = ask(reading, Messages.Job_reading, TraceReading::overview, found -> overview = found);
            }

            @Override
            public void closing(OpenCommission commission) {
                forget();
            }
        });
        read();
    }

    private interface Question<T> {
        T ask(TraceReading reading, Work work) throws IOException;
    }

    private <T> Job ask(Job before, String name, Question<T> question, Consumer<T> answer) {
        if (before != null) {
            before.cancel();
        }
        Path folder = desk.commission().map(OpenCommission::path).orElse(null);
        if (folder == null) {
            return null;
        }
        Job job = new Job(name) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                try {
                    T found = question.ask(new TraceReading(folder), new MonitorWork(SubMonitor.convert(monitor, 1)));
                    display.asyncExec(() -> {
                        if (!monitor.isCanceled()) {
                            answer.accept(found);
                            listeners.forEach(Runnable::run);
                        }
                    });
                    return Status.OK_STATUS;
                } catch (CancellationException e) {
                    return Status.CANCEL_STATUS;
                } catch (IOException | Refusal e) {
                    return new Status(IStatus.WARNING, TracingBench.PLUGIN, e.getMessage(), e);
                }
            }
        };
        job.setPriority(Job.SHORT);
        job.schedule();
        return job;
    }

    /** Reads the records anew. */
    public void read() {
        forget();
        reading = ask(reading, Messages.Job_reading, TraceReading::overview, found -> overview = found);
    }

    private void forget() {
        overview = TraceReading.Overview.NONE;
        chosen = Optional.empty();
        trail = Trail.NONE;
        met = Met.NONE;
        listeners.forEach(Runnable::run);
    }

    void choose(Flaw flaw) {
        if (chosen.filter(flaw::equals).isEmpty()) {
            chosen = Optional.of(flaw);
            tracing = ask(tracing, Messages.Job_tracing, (questions, work) -> questions.trail(flaw.id(), work), found -> trail = found);
            listeners.forEach(Runnable::run);
        }
    }

    void meet(Trail.Step step) {
        String title = KindWords.of(step.kind()) + " " + step.place() + " " + step.with();
        meeting = ask(meeting, Messages.Job_tracing, (questions, work) -> questions.met(step.id(), title.strip(), work), found -> met = found);
    }

    void meet(Level level) {
        meeting = ask(meeting, Messages.Job_tracing, (questions, work) -> questions.met(level, work), found -> met = found);
    }

    Optional<OpenCommission> commission() {
        return desk.commission();
    }

    TraceReading.Overview overview() {
        return overview;
    }

    Optional<Flaw> chosen() {
        return chosen;
    }

    Trail trail() {
        return trail;
    }

    Met met() {
        return met;
    }

    void addListener(Runnable listener) {
        listeners.add(listener);
    }

    void removeListener(Runnable listener) {
        listeners.remove(listener);
    }
}
