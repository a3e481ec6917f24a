package saddlebar.ui.bench;

import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.List;

import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;

import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Problem;
import saddlebar.ui.easel.EaselCanvas;
import saddlebar.production.light.ScenePiece;
import saddlebar.ui.problems.PlacedProblem;

/** The Easel's side of the one selection: a piece chosen here is shown everywhere, a piece or problem chosen anywhere is shown here. */
final class EaselSelection implements ISelectionProvider, ISelectionListener {
    private final EaselEditor editor;
    private final List<ISelectionChangedListener> listeners = new CopyOnWriteArrayList<>();
    private ISelection current = StructuredSelection.EMPTY;

    EaselSelection(EaselEditor editor) {
        this.editor = editor;
    }

    void chosenOnEasel(Optional<ScenePiece> piece) {
        setSelection(piece.map(chosen -> new StructuredSelection(thing(chosen))).orElseGet(this::window));
    }

    /** The commission has been read anew: what was chosen is of yesterday's model. */
    void forget() {
        current = StructuredSelection.EMPTY;
    }

    /** With no piece chosen, the window itself is. */
    void sceneShown() {
        if (current.isEmpty()) {
            chosenOnEasel(editor.easel().chosen());
        }
    }

    private Object thing(ScenePiece piece) {
        Optional<Piece> made = editor.ours().flatMap(commission -> commission.piece(editor.window().windowName(), piece.id()));
        return made.isPresent() ? made.get() : new DrawnPiece(editor.window().windowName(), piece);
    }

    private StructuredSelection window() {
        Optional<Window> window = editor.ours().flatMap(commission -> commission.window(editor.window().windowName()));
        return window.map(StructuredSelection::new).orElse(StructuredSelection.EMPTY);
    }

    @Override
    public void selectionChanged(IWorkbenchPart part, ISelection selection) {
        if (part == editor || !(selection instanceof IStructuredSelection structured) || structured.isEmpty()) {
            return;
        }
        EaselCanvas easel = editor.easel();
        Object first = structured.getFirstElement();
        if (first instanceof Piece piece && belongsHere(piece)) {
            easel.choose(Optional.of(piece.getId()), true);
        } else if (first instanceof DrawnPiece drawn && drawn.windowName().equals(editor.window().windowName())) {
            easel.choose(Optional.of(drawn.piece().id()), true);
        } else if (first instanceof PlacedProblem problem && problem.windowName().equals(editor.window().windowName())) {
            Problem told = problem.problem();
            told.at().ifPresent(place -> easel.showPlace(place.xMm(), place.yMm()));
        }
    }

    private boolean belongsHere(Piece piece) {
        return piece.eContainer() instanceof Panel panel && panel.eContainer() instanceof Window window
                && editor.window().windowName().equals(window.getName());
    }

    @Override
    public ISelection getSelection() {
        return current;
    }

    @Override
    public void setSelection(ISelection selection) {
        current = selection;
        SelectionChangedEvent event = new SelectionChangedEvent(this, selection);
        listeners.forEach(listener -> listener.selectionChanged(event));
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
