package saddlebar.ui.problems;

import java.io.IOException;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchWindow;

import saddlebar.cartoon.mend.Mend;
import saddlebar.model.commission.Panel;
import saddlebar.model.problem.Refusal;
import saddlebar.production.facts.CommissionFacts.PlacedPanel;
import saddlebar.production.facts.FactsReader;
import saddlebar.production.light.PlacedMend;
import saddlebar.production.make.MakeBook;
import saddlebar.production.make.Making;
import saddlebar.production.make.PanelPieces;
import saddlebar.production.pieces.MendChoice;
import saddlebar.production.pieces.MendedPanel;
import saddlebar.ui.Ids;
import saddlebar.ui.Messages;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.make.MonitorWork;

/** Agrees to mends of a window's cutline: the pieces are found anew in the background, then mend and pieces are one step that can be taken back. */
public final class MendingWindow {
    private final IWorkbenchWindow window;
    private final CommissionDesk desk;

    public MendingWindow(IWorkbenchWindow window) {
        this.window = window;
        this.desk = window.getService(CommissionDesk.class);
    }

    /** Whether mends can be agreed to here and now. */
    public boolean isPossible() {
        return desk.canEdit() && window.getService(Making.class) != null;
    }

    /** One proposal. */
    public void accept(PlacedMend placed) {
        start(placed.windowName(), placed.panelId(), NLS.bind(Messages.Mend_step, placed.mend().where()), Optional.of(placed.mend()));
    }

    /** All that can be mended in the panels of these proposals, and what can be mended then. */
    public void acceptAll(List<PlacedMend> placed) {
        placed.stream().map(mend -> List.of(mend.windowName(), mend.panelId())).distinct()
                .forEach(place -> start(place.get(0), place.get(1), NLS.bind(Messages.Mend_stepAll, place.get(0)), Optional.empty()));
    }

    private void start(String windowName, String panelId, String step, Optional<Mend> one) {
        Optional<OpenCommission> open = desk.commission();
        if (open.isEmpty() || !isPossible()) {
            return;
        }
        Making making = window.getService(Making.class);
        PlacedPanel facts = FactsReader.read(open.get().commission(), open.get().path(), List.of(windowName)).panels()
                .filter(panel -> panel.panel().id().equals(panelId)).findFirst().orElse(null);
        if (facts == null) {
            return;
        }
        Job job = Job.create(step, (ICoreRunnable) monitor -> {
            SubMonitor progress = SubMonitor.convert(monitor, 100);
            try {
                List<Mend> mends = one.isPresent() ? List.of(one.get()) : making.allMends(facts, new MonitorWork(progress));
                PanelPieces pieces = making.pieces(MendedPanel.with(facts, mends), new MonitorWork(progress));
                window.getShell().getDisplay().asyncExec(() -> enter(open.get(), windowName, panelId, step, mends, pieces));
            } catch (IOException | Refusal e) {
                throw new CoreException(new Status(IStatus.ERROR, Ids.PLUGIN, e.getMessage(), e));
            }
        });
        job.setUser(true);
        job.schedule();
    }

    /** Unless the commission was closed or handed over meanwhile. */
    private void enter(OpenCommission open, String windowName, String panelId, String step, List<Mend> mends, PanelPieces pieces) {
        if (!desk.canEdit() || desk.commission().orElse(null) != open || mends.isEmpty()) {
            return;
        }
        open.window(windowName).flatMap(one -> one.getPanels().stream().filter(panel -> panelId.equals(panel.getId())).findFirst())
                .ifPresent(panel -> open.edits().perform(step, panel, () -> {
                    MendChoice.accept(panel, mends);
                    MakeBook.showPieces(open.folder(), panel, pieces);
                }));
        window.getService(ProblemBoard.class).mended(windowName);
    }

    /** No longer agrees to any mend of a panel; its pieces are those of the drawing again. */
    public void takeBack(Panel panel) {
        Optional<OpenCommission> open = desk.commission();
        if (open.isEmpty() || !isPossible() || panel.getMendings().isEmpty()) {
            return;
        }
        Making making = window.getService(Making.class);
        String windowName = panel.getWindow().getName();
        PlacedPanel facts = FactsReader.read(open.get().commission(), open.get().path(), List.of(windowName)).panels()
                .filter(one -> one.panel().id().equals(panel.getId())).findFirst().orElseThrow();
        Job job = Job.create(NLS.bind(Messages.Mend_stepBack, windowName), (ICoreRunnable) monitor -> {
            PanelPieces pieces = making.pieces(MendedPanel.without(facts), new MonitorWork(SubMonitor.convert(monitor, 100)));
            window.getShell().getDisplay().asyncExec(() -> {
                if (desk.canEdit() && desk.commission().orElse(null) == open.get()) {
                    open.get().edits().perform(NLS.bind(Messages.Mend_stepBack, windowName), panel, () -> {
                        panel.getMendings().clear();
                        MakeBook.showPieces(open.get().folder(), panel, pieces);
                    });
                }
            });
        });
        job.setUser(true);
        job.schedule();
    }
}
