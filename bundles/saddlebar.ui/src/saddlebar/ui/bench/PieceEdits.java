package saddlebar.ui.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchWindow;

import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.production.pieces.NumberOrder;
import saddlebar.production.pieces.PieceNumbering;
import saddlebar.production.pieces.RecordedPieces;
import saddlebar.ui.Ids;
import saddlebar.ui.Messages;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;

/** What is done to many pieces of a window, or to one with a look at others, as steps that can be taken back. */
final class PieceEdits {
    private final IWorkbenchWindow window;
    private final CommissionDesk desk;

    PieceEdits(IWorkbenchWindow window) {
        this.window = window;
        this.desk = window.getService(CommissionDesk.class);
    }

    boolean isPossible() {
        return desk.canEdit();
    }

    /** Locks or unlocks a piece, and those of its group with it if it has one. */
    void lock(Piece piece, boolean locked) {
        desk.commission().filter(open -> desk.canEdit()).ifPresent(open -> {
            List<Piece> all = new ArrayList<>();
            all.add(piece);
            if (piece.getGroup() != null) {
                piece.getPanel().getPieces().stream().filter(other -> other != piece && !other.isRetired() && piece.getGroup().equals(other.getGroup()))
                        .forEach(all::add);
            }
            open.edits().perform(NLS.bind(locked ? Messages.Pieces_stepLock : Messages.Pieces_stepUnlock, piece.getNumber()), piece,
                    () -> all.forEach(one -> one.setLocked(locked)));
        });
    }

    /** Numbers a window's pieces anew; what records name is read in the background first. */
    void number(String windowName, NumberOrder order) {
        OpenCommission open = desk.commission().filter(one -> desk.canEdit()).orElse(null);
        if (open == null) {
            return;
        }
        Job job = Job.create(Messages.Pieces_numbering, (ICoreRunnable) monitor -> {
            try {
                Set<String> recorded = RecordedPieces.ids(open.folder());
                window.getShell().getDisplay().asyncExec(() -> enter(open, windowName, order, recorded));
            } catch (IOException e) {
                throw new CoreException(new Status(IStatus.ERROR, Ids.PLUGIN, e.getMessage(), e));
            }
        });
        job.schedule();
    }

    private void enter(OpenCommission open, String windowName, NumberOrder order, Set<String> recorded) {
        if (!desk.canEdit() || desk.commission().orElse(null) != open) {
            return;
        }
        Window numbered = open.window(windowName).orElse(null);
        if (numbered == null) {
            return;
        }
        List<Panel> panels = numbered.getPanels();
        PieceNumbering plan = PieceNumbering.plan(panels, order, false, recorded);
        open.edits().perform(Messages.Pieces_numbering, numbered, plan::enter);
        if (!plan.kept().isEmpty()) {
            String kept = plan.kept().keySet().stream().map(Piece::getNumber).sorted().map(String::valueOf).collect(Collectors.joining(Messages.List_comma));
            MessageDialog.openInformation(window.getShell(), Messages.Pieces_numbering, NLS.bind(Messages.Pieces_numbersKept, kept));
        }
    }
}
