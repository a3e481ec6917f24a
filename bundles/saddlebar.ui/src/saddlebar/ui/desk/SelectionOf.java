package saddlebar.ui.desk;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;

/** Gives what a viewer's lines stand for as the part's selection. */
public abstract class SelectionOf implements ISelectionProvider {
    private final TableViewer viewer;
    private boolean focusing;
    private final List<ISelectionChangedListener> listeners = new CopyOnWriteArrayList<>();

    /** @param viewer of a table */
    protected SelectionOf(TableViewer viewer) {
        this.viewer = viewer;
        viewer.addSelectionChangedListener(event -> {
            if (focusing) {
                return;
            }
            SelectionChangedEvent ours = new SelectionChangedEvent(this, getSelection());
            listeners.forEach(listener -> listener.selectionChanged(ours));
        });
    }

    /**
     * Gives the table the keys without choosing a line: GTK would choose the first one, and the Easel would jump to it though nobody has asked for that.
     */
    public final void focus() {
        boolean none = viewer.getTable().getSelectionCount() == 0;
        focusing = none;
        try {
            viewer.getTable().setFocus();
        } finally {
            focusing = false;
        }
        if (none) {
            viewer.getTable().deselectAll();
        }
    }

    protected final boolean isFocusing() {
        return focusing;
    }

    /** What a line stands for. */
    protected abstract Object thing(Object line);

    @Override
    public ISelection getSelection() {
        List<?> lines = viewer.getStructuredSelection().toList();
        return new StructuredSelection(lines.stream().map(this::thing).toList());
    }

    @Override
    public void setSelection(ISelection selection) {
        // lines are chosen in the table, or follow the Easel
    }

    @Override
    public void addSelectionChangedListener(ISelectionChangedListener listener) {
        listeners.add(listener);
    }

    @Override
    public void removeSelectionChangedListener(ISelectionChangedListener listener) {
        listeners.remove(listener);
    }
}
