package saddlebar.ui.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;

import saddlebar.model.problem.Refusal;
import saddlebar.model.store.UnsavedWork;
import saddlebar.ui.Ids;
import saddlebar.ui.Messages;
import saddlebar.ui.StudioPreferences;
import saddlebar.ui.bench.WindowInput;
import saddlebar.ui.welcome.WelcomeInput;

/** Opens and closes commissions as the person asks for it: saves first what should be saved, tells in words what cannot be opened. */
public final class CommissionOpening {
    private final IWorkbenchWindow window;
    private final CommissionDesk desk;
    private final RecentCommissions recent;

    public CommissionOpening(IWorkbenchWindow window) {
        this.window = window;
        this.desk = window.getService(CommissionDesk.class);
        this.recent = new RecentCommissions(StudioPreferences.store());
    }

    /** The commission named at the start, else the last one if it is still there, else the welcome. */
    public void atStart(Optional<Path> named) {
        boolean opened = false;
        if (named.isPresent()) {
            opened = open(named.get());
        } else {
            Optional<Path> last = recent.all().stream().findFirst().filter(Files::isDirectory);
            if (last.isPresent()) {
                opened = open(last.get());
            }
        }
        if (!opened && desk.commission().isEmpty()) {
            closeEaselsOf(Optional.empty());
            welcome();
        }
    }

    /** Asks for a folder. */
    public void choose() {
        DirectoryDialog dialog = new DirectoryDialog(window.getShell());
        dialog.setText(Messages.Open_title);
        dialog.setMessage(Messages.Open_message);
        recent.all().stream().findFirst().map(Path::getParent).ifPresent(folder -> dialog.setFilterPath(folder.toString()));
        String chosen = dialog.open();
        if (chosen != null) {
            open(Path.of(chosen));
        }
    }

    /**
     * Opens a commission's folder, or the commission that a file lies in.
     *
     * @return whether it lies open now
     */
    public boolean open(Path path) {
        return mayClose() && openInstead(path);
    }

    /** As {@link #open}, after {@link #mayClose} has been asked. */
    public boolean openInstead(Path path) {
        Path folder = Files.isRegularFile(path) && path.getFileName().toString().equals("commission.saddlebar") ? path.getParent() : path;
        try {
            OpenCommission opened = desk.open(folder.toAbsolutePath());
            recent.opened(opened.path());
            Optional<UnsavedWork> unsaved = opened.unsavedWork();
            if (unsaved.isPresent()) {
                if (!settled(opened, unsaved.get())) {
                    desk.close();
                    return false;
                }
                opened = desk.commission().orElseThrow();
            }
            OpenCommission shown = opened;
            opened.readOnlyBecause().ifPresent(why -> MessageDialog.openInformation(window.getShell(), Messages.Open_readOnlyTitle,
                    NLS.bind(Messages.Open_readOnly, shown.title(), why)));
            showFirst(shown);
            return true;
        } catch (Refusal e) {
            recent.forget(folder.toAbsolutePath().normalize());
            MessageDialog.openError(window.getShell(), Messages.Open_failedTitle, e.getMessage());
        } catch (IOException e) {
            MessageDialog.openError(window.getShell(), Messages.Open_failedTitle, NLS.bind(Messages.Open_failed, folder, e.getMessage()));
        }
        return false;
    }

    /** Asks what becomes of work that was not saved; false: the commission is not to be opened. */
    private boolean settled(OpenCommission opened, UnsavedWork work) throws IOException {
        String when = DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT).withZone(ZoneId.systemDefault()).format(work.at());
        int answer = MessageDialog.open(MessageDialog.QUESTION, window.getShell(), Messages.Unsaved_title,
                NLS.bind(Messages.Unsaved_question, opened.title(), when), 0, Messages.Unsaved_takeUp, Messages.Unsaved_throwAway, Messages.Unsaved_notOpen);
        if (answer == 0) {
            opened.folder().takeUp(work);
            desk.reopen();
        } else if (answer == 1) {
            opened.folder().forgetUnsaved();
        }
        return answer == 0 || answer == 1;
    }

    /** Puts the commission away and shows the welcome. */
    public void close() {
        if (desk.commission().isPresent() && mayClose()) {
            closeEaselsOf(Optional.empty());
            try {
                desk.close();
            } catch (IOException e) {
                MessageDialog.openError(window.getShell(), Messages.Close_failedTitle, e.getMessage());
            }
            welcome();
        }
    }

    /** Takes back all that is not saved, after asking. */
    public void revert() {
        Optional<OpenCommission> open = desk.commission();
        if (open.isEmpty() || !open.get().isDirty() || desk.isMaking()
                || !MessageDialog.openQuestion(window.getShell(), Messages.Revert_title, NLS.bind(Messages.Revert_question, open.get().title()))) {
            return;
        }
        try {
            desk.reopen();
        } catch (IOException | Refusal e) {
            MessageDialog.openError(window.getShell(), Messages.Open_failedTitle, e.getMessage());
        }
    }

    /** Whether nothing is unsaved, or it was saved or given up when asked. */
    public boolean mayClose() {
        if (desk.isMaking()) {
            MessageDialog.openInformation(window.getShell(), Messages.Make_runningTitle, Messages.Make_running);
            return false;
        }
        if (desk.commission().isEmpty() || !desk.commission().get().isDirty()) {
            return true;
        }
        OpenCommission dirty = desk.commission().get();
        int answer = MessageDialog.open(MessageDialog.QUESTION_WITH_CANCEL, window.getShell(), Messages.Save_title,
                NLS.bind(Messages.Save_question, dirty.title()), 0, Messages.Save_save, Messages.Save_discard, Messages.Save_cancel);
        if (answer == 0) {
            return new SavingCommission(window.getShell()).save(dirty);
        }
        return answer == 1;
    }

    private void showFirst(OpenCommission opened) {
        IWorkbenchPage page = window.getActivePage();
        closeEaselsOf(Optional.of(opened.path()));
        boolean shown = List.of(page.getEditorReferences()).stream().anyMatch(editor -> Ids.EASEL_EDITOR.equals(editor.getId()));
        Optional<String> first = opened.windowNames().stream().findFirst();
        if (!shown && first.isPresent()) {
            showWindow(opened, first.get());
        } else if (first.isEmpty()) {
            welcome();
        }
    }

    /** Puts a window on the Easel, or brings forward the Easel on which it lies. */
    public void showWindow(OpenCommission opened, String windowName) {
        try {
            window.getActivePage().openEditor(new WindowInput(opened.path(), windowName), Ids.EASEL_EDITOR);
            closeEaselsOf(Optional.of(opened.path())); // the welcome has said what it had to say
        } catch (PartInitException e) {
            MessageDialog.openError(window.getShell(), Messages.Open_failedTitle, e.getMessage());
        }
    }

    private void welcome() {
        try {
            window.getActivePage().openEditor(new WelcomeInput(), Ids.WELCOME_EDITOR);
        } catch (PartInitException e) {
            MessageDialog.openError(window.getShell(), Messages.Open_failedTitle, e.getMessage());
        }
    }

    /** Closes the Easels that show other commissions, and the welcome; without a path all Easels, but not the welcome. */
    private void closeEaselsOf(Optional<Path> butNot) {
        IWorkbenchPage page = window.getActivePage();
        for (IEditorReference editor : page.getEditorReferences()) {
            boolean close;
            try {
                close = editor.getEditorInput() instanceof WindowInput input
                        ? butNot.isEmpty() || !input.commission().equals(butNot.get())
                        : butNot.isPresent();
            } catch (PartInitException e) {
                close = true; // what cannot be restored is of no use
            }
            if (close) {
                page.closeEditors(new IEditorReference[] {editor}, false);
            }
        }
    }
}
