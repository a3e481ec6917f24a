package saddlebar.ui.tree;

import java.util.Iterator;
import java.util.Optional;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.ISaveablePart;
import org.eclipse.ui.ISaveablesSource;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.Saveable;
import org.eclipse.ui.dialogs.FilteredTree;
import org.eclipse.ui.dialogs.PatternFilter;
import org.eclipse.ui.operations.UndoRedoActionGroup;
import org.eclipse.ui.part.ViewPart;

import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.ui.Messages;
import saddlebar.ui.StudioPreferences;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.CommissionOpening;
import saddlebar.ui.desk.FileDrop;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.desk.SaveableParts;
import saddlebar.ui.properties.PropertiesPage;

/** The commission at a glance, left on every bench. A double click puts the window on the Easel, and the chosen piece in view. */
public final class CommissionTreeView extends ViewPart implements ISaveablesSource, ISaveablePart, ISelectionListener {
    /** Between one window that is read beforehand and the next, so that the desktop stays quick meanwhile. */
    private static final int PAUSE_MS = 30;

    private CommissionDesk desk;
    private TreeViewer tree;
    private StateBoard states;
    private SaveableParts saveables;
    private final Runnable onStates = this::refresh;
    private final CommissionDesk.Listener onDesk = new CommissionDesk.Listener() {
        @Override
        public void opened(OpenCommission commission) {
            saveables.opened(commission);
            firePropertyChange(PROP_DIRTY);
            show(commission);
        }

        @Override
        public void closing(OpenCommission commission) {
            saveables.closing();
            tree.getTree().getDisplay().asyncExec(CommissionTreeView.this::refresh);
        }

        @Override
        public void changed(OpenCommission commission) {
            saveables.changed();
            firePropertyChange(PROP_DIRTY);
            refresh();
        }
    };

    @Override
    public void createPartControl(Composite parent) {
        desk = getSite().getService(CommissionDesk.class);
        states = getSite().getService(StateBoard.class);
        states.addListener(onStates);
        saveables = new SaveableParts(this);
        saveables.begin(desk.commission());
        FilteredTree filtered = new FilteredTree(parent, SWT.SINGLE | SWT.H_SCROLL | SWT.V_SCROLL, new PatternFilter(), true, true);
        filtered.setInitialText(Messages.Tree_filter);
        tree = filtered.getViewer();
        tree.setContentProvider(new CommissionContent(desk::commission));
        NodeWords words = new NodeWords(desk::commission, StudioPreferences::lengths, states::states);
        tree.setLabelProvider(new DelegatingStyledCellLabelProvider(new NodeLabels(words, tree.getTree())));
        tree.setUseHashlookup(true);
        tree.addDoubleClickListener(event -> open((IStructuredSelection) event.getSelection()));
        new FileDrop(getSite().getWorkbenchWindow()).on(tree.getTree());
        getSite().setSelectionProvider(tree);
        getSite().getPage().addSelectionListener(this);
        desk.addListener(onDesk);
        tree.setInput(desk);
        desk.commission().ifPresent(this::show);
    }

    private void show(OpenCommission commission) {
        new UndoRedoActionGroup(getSite(), commission.edits().context(), true).fillActionBars(getViewSite().getActionBars());
        refresh();
        tree.expandToLevel(2);
        readOn(commission, commission.windowNames().iterator());
    }

    /** Reads one window after the other between two breaths of the screen, so that titles and states come and the filter finds all. */
    private void readOn(OpenCommission commission, Iterator<String> names) {
        if (!names.hasNext()) {
            return;
        }
        tree.getTree().getDisplay().timerExec(PAUSE_MS, () -> {
            boolean still = !tree.getTree().isDisposed() && desk.commission().filter(open -> open == commission).isPresent();
            if (still) {
                String name = names.next();
                try {
                    commission.window(name);
                } catch (Refusal e) {
                    return; // told when somebody looks into it
                } finally {
                    tree.update(new WindowNode(name), null);
                    readOn(commission, names);
                }
            }
        });
    }

    private void refresh() {
        if (!tree.getTree().isDisposed()) {
            tree.refresh();
        }
    }

    private void open(IStructuredSelection selection) {
        Object node = selection.getFirstElement();
        desk.commission().ifPresent(commission -> {
            windowOf(node).ifPresentOrElse(name -> {
                new CommissionOpening(getSite().getWorkbenchWindow()).showWindow(commission, name);
                tree.setSelection(selection); // tell the Easel, now that it is there
            }, () -> tree.setExpandedState(node, !tree.getExpandedState(node)));
        });
    }

    private static Optional<String> windowOf(Object node) {
        if (node instanceof WindowNode window) {
            return Optional.of(window.name());
        }
        Object at = node instanceof GroupNode group ? group.owner() : node;
        while (at instanceof EObject object) {
            if (object instanceof Window window) {
                return Optional.of(window.getName());
            }
            at = object.eContainer();
        }
        return Optional.empty();
    }

    /** A piece chosen elsewhere is shown here if its panel lies open. */
    @Override
    public void selectionChanged(IWorkbenchPart part, ISelection selection) {
        if (part != this && selection instanceof IStructuredSelection structured && structured.getFirstElement() instanceof Piece piece
                && piece.eContainer() instanceof Panel panel && tree.getExpandedState(new GroupNode(panel, GroupNode.Kind.PIECES))) {
            tree.setSelection(new StructuredSelection(piece), true);
        }
    }

    @Override
    public void setFocus() {
        tree.getControl().setFocus();
    }

    @Override
    public void dispose() {
        if (desk != null) {
            desk.removeListener(onDesk);
            states.removeListener(onStates);
            getSite().getPage().removeSelectionListener(this);
        }
        super.dispose();
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        T properties = PropertiesPage.adapt(adapter, this);
        return properties != null ? properties : super.getAdapter(adapter);
    }

    // ---- saving

    @Override
    public Saveable[] getSaveables() {
        return saveables == null ? new Saveable[0] : saveables.saveables();
    }

    @Override
    public Saveable[] getActiveSaveables() {
        return getSaveables();
    }

    @Override
    public boolean isDirty() {
        return saveables != null && saveables.isDirty();
    }

    @Override
    public boolean isSaveOnCloseNeeded() {
        return isDirty();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        // the workbench saves the saveables
    }

    @Override
    public void doSaveAs() {
        throw new UnsupportedOperationException("a commission stays in its folder");
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }
}
