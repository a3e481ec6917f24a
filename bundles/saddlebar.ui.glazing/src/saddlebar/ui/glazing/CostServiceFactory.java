package saddlebar.ui.glazing;

import java.io.IOException;
import java.time.LocalDate;

import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.services.AbstractServiceFactory;
import org.eclipse.ui.services.IServiceLocator;

import saddlebar.kiln.table.KilnTables;
import saddlebar.materials.cost.CostSources;
import saddlebar.model.problem.Refusal;
import saddlebar.production.kiln.StudioHeat;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.screening.Background;

/** Gives every part the one cost desk of the workbench. */
public final class CostServiceFactory extends AbstractServiceFactory {
    @Override
    @SuppressWarnings("rawtypes")
    public Object create(Class wanted, IServiceLocator parent, IServiceLocator locator) {
        Object outer = parent.getService(wanted);
        if (outer != null) {
            return outer; // parts and windows ask the workbench
        }
        Display display = locator.getService(IWorkbench.class).getDisplay();
        CostSources sources = locator.getService(CostSources.class);
        return new CostDesk(locator.getService(CommissionDesk.class), heat(), sources == null ? CostSources.own() : sources, LocalDate::now, Background.thread(
                "saddlebar money"), task -> {
                    if (!display.isDisposed()) {
                        display.asyncExec(task);
                    }
                });
    }

    private static StudioHeat heat() {
        try {
            return StudioHeat.installed();
        } catch (IOException | Refusal e) { // the studio's own figures still hold
            ILog.of(CostServiceFactory.class).warn(e.getMessage(), e);
            return StudioHeat.of(KilnTables.builtIn());
        }
    }
}
