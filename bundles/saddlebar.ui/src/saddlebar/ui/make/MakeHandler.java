package saddlebar.ui.make;

import java.io.IOException;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

import saddlebar.model.problem.Severity;
import saddlebar.ui.Ids;
import saddlebar.ui.Messages;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.desk.SavingCommission;
import saddlebar.ui.problems.ProblemBoard;

/** Make, Make What Has Changed. */
public final class MakeHandler extends AbstractHandler {
    private static final String SOURCE = "make";

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        CommissionDesk desk = window.getService(CommissionDesk.class);
        Maker maker = window.getService(Maker.class);
        if (maker == null) {
            throw new ExecutionException("the making pipeline is not installed");
        }
        if (desk.canEdit() && saved(window, desk.commission().orElseThrow())) {
            make(window, desk, maker);
        }
        return null;
    }

    private static boolean saved(IWorkbenchWindow window, OpenCommission commission) {
        return !commission.isDirty() || MessageDialog.openConfirm(window.getShell(), Messages.Make_saveTitle, Messages.Make_save)
                && new SavingCommission(window.getShell()).save(commission);
    }

    private static void make(IWorkbenchWindow window, CommissionDesk desk, Maker maker) {
        OpenCommission commission = desk.commission().orElseThrow();
        HandedOverJob<MakeSummary> job = new HandedOverJob<>(NLS.bind(Messages.Make_job, commission.title()), desk, window.getShell().getDisplay(),
                Maker.WORK_UNITS, maker::make, summary -> tell(window, desk, summary));
        try {
            job.begin();
            window.getActivePage().showView(Ids.PROGRESS_VIEW, null, IWorkbenchPage.VIEW_VISIBLE);
        } catch (PartInitException e) {
            throw new IllegalStateException("the Progress view is part of the product", e);
        } catch (IOException e) {
            MessageDialog.openError(window.getShell(), Messages.Make_failedTitle, e.getMessage());
        }
    }

    private static void tell(IWorkbenchWindow window, CommissionDesk desk, MakeSummary summary) {
        if (window.getShell() == null || window.getShell().isDisposed()) {
            return;
        }
        desk.commission().ifPresent(commission -> window.getService(ProblemBoard.class).put(SOURCE,
                ProblemBoard.sorted(commission.windowNames(), summary.problems())));
        boolean look = summary.problems().stream().anyMatch(problem -> problem.severity() != Severity.NOTE);
        new MakeReport(window.getShell(), summary).open();
        if (look) {
            try {
                window.getActivePage().showView(Ids.PROBLEMS_VIEW, null, IWorkbenchPage.VIEW_VISIBLE);
            } catch (PartInitException e) {
                throw new IllegalStateException("the Problems view is part of the product", e);
            }
        }
    }
}
