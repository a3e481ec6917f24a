package saddlebar.ui.make;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Shell;

import saddlebar.ui.Messages;

/** Says in one breath what was made, what was kept, where it lies and what to look at; leads to the folder. */
final class MakeReport {
    private static final int SHOW_FOLDER = 1;
    private final Shell shell;
    private final MakeSummary summary;

    MakeReport(Shell shell, MakeSummary summary) {
        this.shell = shell;
        this.summary = summary;
    }

    String words() {
        String made = summary.made() == 0
                ? NLS.bind(Messages.Make_nothingNew, summary.kept())
                : NLS.bind(Messages.Make_made, new Object[] {summary.made(), summary.kept(), summary.folder()});
        return summary.problems().isEmpty() ? made : made + "\n\n" + NLS.bind(Messages.Make_problems, summary.problems().size());
    }

    void open() {
        int answer = MessageDialog.open(MessageDialog.INFORMATION, shell, Messages.Make_doneTitle, words(), 0, Messages.Make_ok, Messages.Make_showFolder);
        if (answer == SHOW_FOLDER) {
            Program.launch(summary.folder().toString());
        }
    }
}
