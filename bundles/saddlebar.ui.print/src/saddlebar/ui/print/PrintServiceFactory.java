package saddlebar.ui.print;

import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.services.AbstractServiceFactory;
import org.eclipse.ui.services.IServiceLocator;

import saddlebar.ui.desk.CommissionDesk;

/** One print desk a workbench. */
public final class PrintServiceFactory extends AbstractServiceFactory {
    @Override
    @SuppressWarnings({"rawtypes", "unchecked"})
    public Object create(Class wanted, IServiceLocator parent, IServiceLocator locator) {
        Object outer = parent.getService(wanted);
        return outer != null ? outer : new PrintDesk(locator.getService(CommissionDesk.class), locator.getService(IWorkbench.class).getDisplay());
    }
}
