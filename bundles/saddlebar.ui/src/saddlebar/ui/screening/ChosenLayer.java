package saddlebar.ui.screening;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;

import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.tree.WindowNode;

/** Follows what is chosen on a page to its layer, and tells when another layer is meant or when something has changed. */
public final class ChosenLayer implements ISelectionListener {
    private final IWorkbenchPage page;
    private final CommissionDesk desk;
    private final Consumer<Optional<DesignLayer>> told;
    private Optional<DesignLayer> layer = Optional.empty();
    private Optional<String> windowName = Optional.empty();
    private Optional<URI> before = Optional.empty();
    private final CommissionDesk.Listener onDesk = new CommissionDesk.Listener() {
        @Override
        public void changed(OpenCommission commission) {
            told.accept(layer);
        }

        @Override
        public void closing(OpenCommission commission) {
            before = layer.filter(chosen -> chosen.eResource() != null).map(EcoreUtil::getURI);
            layer = Optional.empty();
            told.accept(layer);
        }

        @Override
        public void opened(OpenCommission commission) {
            before.ifPresent(uri -> again(commission, uri));
            before = Optional.empty();
        }
    };

    /** @param told on the screen's thread, at once with what is chosen now */
    public ChosenLayer(IWorkbenchPage page, CommissionDesk desk, Consumer<Optional<DesignLayer>> told) {
        this.page = page;
        this.desk = desk;
        this.told = told;
        desk.addListener(onDesk);
        page.addSelectionListener(this);
        ISelection now = page.getSelection();
        if (now != null) {
            selectionChanged(null, now);
        }
        if (layer.isEmpty()) {
            others().ifPresent(this::mean);
        }
        if (layer.isEmpty() && page.getActiveEditor() != null && page.getActiveEditor().getSite().getSelectionProvider() != null) {
            selectionChanged(null, page.getActiveEditor().getSite().getSelectionProvider().getSelection());
        }
        told.accept(layer);
    }

    /** Of which layer the other parts speak. */
    private Optional<DesignLayer> others() {
        return Arrays.stream(page.getViewReferences()).map(part -> part.getView(false)).filter(LayerPart.class::isInstance)
                .flatMap(part -> ((LayerPart) part).layer().stream()).findFirst();
    }

    private void mean(DesignLayer next) {
        layer = Optional.of(next);
        windowName = EcoreUtil.getRootContainer(next) instanceof Window window ? Optional.ofNullable(window.getName()) : Optional.empty();
    }

    public Optional<DesignLayer> layer() {
        return layer;
    }

    private void again(OpenCommission commission, URI uri) {
        try {
            if (windowName.isPresent() && commission.window(windowName.get()).isPresent()
                    && commission.folder().resourceSet().getEObject(uri, false) instanceof DesignLayer same) {
                layer = Optional.of(same);
                told.accept(layer);
            }
        } catch (Refusal e) {
            layer = Optional.empty(); // it is said where the window was to be shown
        }
    }

    @Override
    public void selectionChanged(IWorkbenchPart part, ISelection selection) {
        if (selection instanceof IStructuredSelection structured && desk.commission().isPresent()) {
            Object first = structured.getFirstElement();
            Object thing = first instanceof WindowNode node && desk.commission().get().isLoaded(node.name())
                    ? desk.commission().get().window(node.name()).orElse(null)
                    : first;
            // a piece keeps the layer that was chosen, if it is one of its own panel
            boolean same = thing instanceof Piece piece && layer.isPresent() && layer.get().eContainer() == piece.eContainer();
            Optional<DesignLayer> next = same ? layer : LayerScreen.layer(thing);
            if (next.isPresent() && !next.equals(layer)) {
                mean(next.get());
                told.accept(layer);
            }
        }
    }

    public void dispose() {
        desk.removeListener(onDesk);
        page.removeSelectionListener(this);
    }
}
