package saddlebar.ui.colourway;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;

import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;

/** A change of one window as one step that can be taken back; what is refused is told in its sentence. */
public final class WindowEdit {
    private final CommissionDesk desk;
    private final Shell shell;

    public WindowEdit(CommissionDesk desk, Shell shell) {
        this.desk = desk;
        this.shell = shell;
    }

    /** @return whether it was done */
    public boolean perform(String label, Window window, Runnable change) {
        if (!desk.canEdit()) {
            String why = desk.commission().flatMap(OpenCommission::readOnlyBecause).orElse(ColourWords.Edit_busy);
            MessageDialog.openInformation(shell, label, why);
            return false;
        }
        try {
            desk.commission().orElseThrow().edits().perform(label, window, change);
            return true;
        } catch (Refusal e) {
            MessageDialog.openInformation(shell, label, e.getMessage());
            return false;
        }
    }
}
