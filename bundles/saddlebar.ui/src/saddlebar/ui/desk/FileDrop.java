package saddlebar.ui.desk;

import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IWorkbenchWindow;

import saddlebar.ui.make.BringingArtwork;

/** What is dragged onto the window: a commission's folder is opened, a drawing is brought. */
public final class FileDrop extends DropTargetAdapter {
    private final IWorkbenchWindow window;

    public FileDrop(IWorkbenchWindow window) {
        this.window = window;
    }

    /** Takes what is dropped on this control too; goes with the control. */
    public void on(Control control) {
        DropTarget target = new DropTarget(control, DND.DROP_COPY | DND.DROP_LINK | DND.DROP_DEFAULT);
        target.setTransfer(new Transfer[] {FileTransfer.getInstance()});
        target.addDropListener(this);
    }

    @Override
    public void dragEnter(DropTargetEvent event) {
        if (event.detail == DND.DROP_DEFAULT) {
            event.detail = DND.DROP_COPY;
        }
    }

    @Override
    public void drop(DropTargetEvent event) {
        if (event.data instanceof String[] files && files.length > 0) {
            Path first = Path.of(files[0]);
            window.getShell().getDisplay().asyncExec(() -> take(first)); // the drag ends first
        }
    }

    private void take(Path path) {
        if (Files.isDirectory(path) || path.endsWith("commission.saddlebar")) {
            new CommissionOpening(window).open(path);
        } else {
            new BringingArtwork(window).bring(path);
        }
    }
}
