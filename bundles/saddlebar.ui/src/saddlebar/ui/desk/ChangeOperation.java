package saddlebar.ui.desk;

import org.eclipse.core.commands.operations.AbstractOperation;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.emf.ecore.change.ChangeDescription;

/** One recorded change of the model; applied backwards it becomes its own inverse. */
final class ChangeOperation extends AbstractOperation {
    private final ChangeDescription change;

    ChangeOperation(String label, ChangeDescription change) {
        super(label);
        this.change = change;
    }

    @Override
    public IStatus execute(IProgressMonitor monitor, IAdaptable info) {
        throw new IllegalStateException("the change was made while it was recorded");
    }

    @Override
    public IStatus redo(IProgressMonitor monitor, IAdaptable info) {
        return apply();
    }

    @Override
    public IStatus undo(IProgressMonitor monitor, IAdaptable info) {
        return apply();
    }

    private IStatus apply() {
        change.applyAndReverse();
        return Status.OK_STATUS;
    }
}
