package saddlebar.ui.desk;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.commands.operations.IOperationHistory;
import org.eclipse.core.commands.operations.IOperationHistoryListener;
import org.eclipse.core.commands.operations.IUndoContext;
import org.eclipse.core.commands.operations.IUndoableOperation;
import org.eclipse.core.commands.operations.ObjectUndoContext;
import org.eclipse.core.commands.operations.OperationHistoryEvent;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.change.ChangeDescription;
import org.eclipse.emf.ecore.change.util.ChangeRecorder;

/**
 * Every edit of a commission goes through here: it is recorded, can be taken back and done again, and marks the commission as not saved. Nothing
 * else writes to the model.
 */
public final class Edits {
    /** More steps than anybody takes back. */
    private static final int MOST_STEPS = 10_000;

    private final IOperationHistory history;
    private final IUndoContext context;
    private final List<Runnable> listeners = new ArrayList<>();
    /** Told by the history after it has moved a step, so that {@link #isDirty} is right by then. */
    private final IOperationHistoryListener onHistory = this::stepped;
    private IUndoableOperation lastSaved;

    /** @param label names the commission in the history */
    public Edits(IOperationHistory history, String label) {
        this.history = history;
        this.context = new ObjectUndoContext(this, label);
        history.setLimit(context, MOST_STEPS);
        history.addOperationHistoryListener(onHistory);
    }

    /** By which the workbench's Undo and Redo find these edits. */
    public IUndoContext context() {
        return context;
    }

    /**
     * Makes a change as one step. What changes nothing leaves no step.
     *
     * @param label  what the Edit menu calls it, such as {@code rename window}
     * @param target an object of the file that changes; only that file is watched
     * @param change sets what is to be set
     */
    public void perform(String label, EObject target, Runnable change) {
        if (target.eResource() == null) {
            throw new IllegalArgumentException("the target of an edit must lie in a file: " + target);
        }
        ChangeRecorder recorder = new ChangeRecorder(target.eResource());
        ChangeDescription made;
        try {
            change.run();
        } finally {
            made = recorder.endRecording();
            recorder.dispose();
        }
        if (made.getObjectChanges().isEmpty() && made.getResourceChanges().isEmpty()) {
            return;
        }
        ChangeOperation step = new ChangeOperation(label, made);
        step.addContext(context);
        history.add(step);
        changed();
    }

    public boolean isDirty() {
        return history.getUndoOperation(context) != lastSaved;
    }

    /** What the disk now holds is what the model is. */
    public void saved() {
        lastSaved = history.getUndoOperation(context);
        changed();
    }

    /** Forgets all steps, and hears of no more: the commission is closed. */
    public void forget() {
        history.removeOperationHistoryListener(onHistory);
        history.dispose(context, true, true, false);
        lastSaved = null;
    }

    /** Called after each edit, each step back or forth, and each save. */
    public void whenChanged(Runnable listener) {
        listeners.add(listener);
    }

    private void stepped(OperationHistoryEvent event) {
        boolean moved = event.getEventType() == OperationHistoryEvent.UNDONE || event.getEventType() == OperationHistoryEvent.REDONE;
        if (moved && event.getOperation().hasContext(context)) {
            changed();
        }
    }

    private void changed() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
