package saddlebar.ui.bench;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.StructuredViewer;

/** Gives what a viewer's lines stand for as the part's selection. */
abstract class SelectionOf implements ISelectionProvider {
    private final StructuredViewer viewer;
    private final List<ISelectionChangedListener> listeners = new CopyOnWriteArrayList<>();

    SelectionOf(StructuredViewer viewer) {
        this.viewer = viewer;
        viewer.addSelectionChangedListener(event -> {
            SelectionChangedEvent ours = new SelectionChangedEvent(this, getSelection());
            listeners.forEach(listener -> listener.selectionChanged(ours));
        });
    }

    /** What a line stands for. */
    abstract Object thing(Object line);

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
