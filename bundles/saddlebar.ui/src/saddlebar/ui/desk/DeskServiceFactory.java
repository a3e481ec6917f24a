package saddlebar.ui.desk;

import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.services.AbstractServiceFactory;
import org.eclipse.ui.services.IServiceLocator;

import saddlebar.ui.problems.ProblemBoard;
import saddlebar.ui.tree.StateBoard;

/** Gives every part the one desk of the workbench, and the boards that hang over it. */
public final class DeskServiceFactory extends AbstractServiceFactory {
    @Override
    @SuppressWarnings({"rawtypes", "unchecked"})
    public Object create(Class wanted, IServiceLocator parent, IServiceLocator locator) {
        Object outer = parent.getService(wanted);
        if (outer != null) {
            return outer; // parts and windows ask the workbench
        }
        if (wanted == ProblemBoard.class) {
            return new ProblemBoard();
        }
        if (wanted == StateBoard.class) {
            return new StateBoard(locator.getService(CommissionDesk.class), locator.getService(IWorkbench.class).getDisplay());
        }
        IWorkbench workbench = locator.getService(IWorkbench.class);
        CommissionDesk desk = new CommissionDesk(workbench.getOperationSupport().getOperationHistory());
        desk.addListener(new LayingAside(workbench.getDisplay()));
        return desk;
    }
}
