package saddlebar.ui.desk;

import org.eclipse.ui.IViewSite;
import org.eclipse.ui.operations.UndoRedoActionGroup;

/** Undo and Redo of the open commission while a part is active: a part in which something is changed lets it be taken back there. */
public final class UndoHere implements CommissionDesk.Listener {
    private final IViewSite site;
    private final CommissionDesk desk;
    private UndoRedoActionGroup actions;

    /** Works at once if a commission is open, and with each that is opened; {@link #dispose} ends it. */
    public UndoHere(IViewSite site, CommissionDesk desk) {
        this.site = site;
        this.desk = desk;
        desk.addListener(this);
        desk.commission().ifPresent(this::opened);
    }

    @Override
    public void opened(OpenCommission commission) {
        drop();
        actions = new UndoRedoActionGroup(site, commission.edits().context(), true);
        actions.fillActionBars(site.getActionBars());
        site.getActionBars().updateActionBars();
    }

    private void drop() {
        if (actions != null) {
            actions.dispose();
            actions = null;
        }
    }

    public void dispose() {
        desk.removeListener(this);
        drop();
    }
}
