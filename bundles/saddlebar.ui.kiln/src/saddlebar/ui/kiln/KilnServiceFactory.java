package saddlebar.ui.kiln;

import java.io.IOException;

import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.services.AbstractServiceFactory;
import org.eclipse.ui.services.IServiceLocator;

import saddlebar.kiln.table.KilnTables;
import saddlebar.model.problem.Refusal;
import saddlebar.production.kiln.StudioHeat;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.screening.Background;

/** Gives every part the one kiln desk of the workbench. */
public final class KilnServiceFactory extends AbstractServiceFactory {
    @Override
    @SuppressWarnings("rawtypes")
    public Object create(Class wanted, IServiceLocator parent, IServiceLocator locator) {
        Object outer = parent.getService(wanted);
        if (outer != null) {
            return outer; // parts and windows ask the workbench
        }
        Display display = locator.getService(IWorkbench.class).getDisplay();
        return new KilnDesk(locator.getService(CommissionDesk.class), heat(), Background.thread("saddlebar kiln bench"), task -> {
            if (!display.isDisposed()) {
                display.asyncExec(task);
            }
        });
    }

    private static StudioHeat heat() {
        try {
            return StudioHeat.installed();
        } catch (IOException | Refusal e) { // the studio's own figures still hold; only names of tables are not known
            ILog.of(KilnServiceFactory.class).warn(e.getMessage(), e);
            return StudioHeat.of(KilnTables.builtIn());
        }
    }
}
