package saddlebar.ui.desk;

import java.util.Optional;

import org.eclipse.ui.ISaveablesLifecycleListener;
import org.eclipse.ui.ISaveablesSource;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.Saveable;
import org.eclipse.ui.SaveablesLifecycleEvent;

/** What a part needs to take part in saving the open commission: gives its saveable, and tells the workbench when that has changed. */
public final class SaveableParts {
    private final ISaveablesSource source;
    private final IWorkbenchPart part;
    private Optional<CommissionSaveable> current = Optional.empty();

    /** @param part the part itself, which is the source */
    public SaveableParts(IWorkbenchPart part) {
        this.part = part;
        this.source = (ISaveablesSource) part;
    }

    public Saveable[] saveables() {
        return current.stream().toArray(Saveable[]::new);
    }

    public boolean isDirty() {
        return current.isPresent() && current.get().isDirty();
    }

    /** Before the part is shown; the workbench asks for itself when it is. */
    public void begin(Optional<OpenCommission> commission) {
        current = commission.map(CommissionSaveable::new);
    }

    /** While the part is shown. */
    public void opened(OpenCommission commission) {
        current = Optional.of(new CommissionSaveable(commission));
        fire(SaveablesLifecycleEvent.POST_OPEN);
    }

    public void closing() {
        if (current.isPresent()) {
            fire(SaveablesLifecycleEvent.POST_CLOSE);
            current = Optional.empty();
        }
    }

    public void changed() {
        if (current.isPresent()) {
            fire(SaveablesLifecycleEvent.DIRTY_CHANGED);
        }
    }

    private void fire(int what) {
        ISaveablesLifecycleListener listener = part.getSite().getService(ISaveablesLifecycleListener.class);
        listener.handleLifecycleEvent(new SaveablesLifecycleEvent(source, what, saveables(), false));
    }
}
