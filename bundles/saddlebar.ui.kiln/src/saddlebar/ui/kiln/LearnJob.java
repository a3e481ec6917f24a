package saddlebar.ui.kiln;

import java.util.Optional;
import java.util.concurrent.CancellationException;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;

import saddlebar.kiln.fire.Kiln;
import saddlebar.kiln.search.KilnLearning;
import saddlebar.model.problem.Refusal;
import saddlebar.production.kiln.KilnHistory;
import saddlebar.production.kiln.KilnTeaching;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.make.MonitorWork;

/** Learns what a kiln can do from its logs, away from the screen's thread; what is learnt is one step of editing, which can be taken back. */
final class LearnJob extends Job {
    private final KilnDesk desk;
    private final KilnHistory.KilnFacts facts;
    private final Display display;
    private final Optional<OpenCommission> commission;
    private final Optional<saddlebar.model.commission.Kiln> model;
    private final Optional<Kiln> start;

    LearnJob(KilnDesk desk, KilnHistory.KilnFacts facts, Display display) {
        super(NLS.bind(Messages.Firings_learnJob, facts.name()));
        this.desk = desk;
        this.facts = facts;
        this.display = display;
        this.commission = desk.commission();
        this.model = desk.studio().flatMap(studio -> studio.getKilns().stream().filter(known -> known.getId().equals(facts.id())).findFirst());
        this.start = model.map(desk::heated);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        if (start.isEmpty()) {
            return Status.OK_STATUS;
        }
        try {
            KilnLearning.Learnt learnt = KilnTeaching.learn(start.get(), facts, new MonitorWork(SubMonitor.convert(monitor, getName(), 1)));
            display.asyncExec(() -> write(learnt));
            return Status.OK_STATUS;
        } catch (CancellationException stopped) {
            return Status.CANCEL_STATUS;
        } catch (Refusal refusal) {
            display.asyncExec(() -> MessageDialog.openInformation(display.getActiveShell(), getName(), refusal.getMessage()));
            return Status.OK_STATUS;
        }
    }

    private void write(KilnLearning.Learnt learnt) {
        if (desk.canEdit() && desk.commission().equals(commission)) {
            commission.get().edits().perform(getName(), model.get(), () -> KilnTeaching.write(learnt, facts.lessons().size(), model.get()));
            desk.say(NLS.bind(Messages.Firings_learnt, new Object[] {facts.name(), KilnWords.number(learnt.afterK(), 1), KilnWords.number(learnt.beforeK(),
                    1)}));
        }
    }
}
