package saddlebar.ui.desk;

import java.io.IOException;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.Saveable;

import saddlebar.model.problem.Refusal;
import saddlebar.ui.Ids;

/** The commission as the workbench saves it: one thing, however many parts show it, so that it is asked for once. */
public final class CommissionSaveable extends Saveable {
    private final OpenCommission commission;

    public CommissionSaveable(OpenCommission commission) {
        this.commission = commission;
    }

    @Override
    public void doSave(IProgressMonitor monitor) throws CoreException {
        try {
            commission.save();
        } catch (IOException | Refusal e) {
            throw new CoreException(new Status(IStatus.ERROR, Ids.PLUGIN, e.getMessage(), e));
        }
    }

    @Override
    public boolean isDirty() {
        return commission.isDirty();
    }

    @Override
    public String getName() {
        return commission.title();
    }

    @Override
    public String getToolTipText() {
        return commission.path().toString();
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return null; // the platform's own
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CommissionSaveable that && that.commission == commission;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(commission);
    }
}
