package saddlebar.ui.kiln;

import java.util.concurrent.CancellationException;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;

import saddlebar.kiln.search.FoundSchedule;
import saddlebar.kiln.search.ScheduleSearch;
import saddlebar.kiln.search.SearchLimits;
import saddlebar.model.problem.Refusal;
import saddlebar.ui.make.MonitorWork;

/** Looks for the shortest schedule, away from the screen's thread; watched and stopped in Progress, where it tells its hours and kWh so far. */
final class OptimiseJob extends Job {
    private final KilnStudy study;
    private final Consumer<FoundSchedule> found;
    private final Consumer<String> refused;

    /** @param found and refused are told on the job's thread */
    OptimiseJob(KilnStudy study, Consumer<FoundSchedule> found, Consumer<String> refused) {
        super(Messages.Schedule_searchJob);
        this.study = study;
        this.found = found;
        this.refused = refused;
        setUser(false);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        KilnStudy.Ask ask = study.ask();
        try {
            SubMonitor progress = SubMonitor.convert(monitor, getName(), (int) ScheduleSearch.WORK_UNITS);
            found.accept(ScheduleSearch.shortest(ask.schedule(), ask.load(), ask.kiln(), SearchLimits.usual(ask.load(), ask.paint()),
                    new MonitorWork(progress)));
            return Status.OK_STATUS;
        } catch (CancellationException stopped) {
            refused.accept(Messages.Schedule_searchStopped);
            return Status.CANCEL_STATUS;
        } catch (Refusal refusal) {
            refused.accept(refusal.getMessage());
            return Status.OK_STATUS;
        }
    }
}
