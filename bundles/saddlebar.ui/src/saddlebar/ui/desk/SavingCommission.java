package saddlebar.ui.desk;

import java.io.IOException;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;

import saddlebar.model.problem.Refusal;
import saddlebar.ui.Messages;

/** Saves, and tells in words if that did not work. */
public final class SavingCommission {
    private final Shell shell;

    public SavingCommission(Shell shell) {
        this.shell = shell;
    }

    /** @return whether everything is on the disk */
    public boolean save(OpenCommission commission) {
        try {
            commission.save();
            return true;
        } catch (IOException | Refusal e) {
            MessageDialog.openError(shell, Messages.Save_failedTitle, e.getMessage());
            return false;
        }
    }
}
