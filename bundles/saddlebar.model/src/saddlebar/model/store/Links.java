package saddlebar.model.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.util.ECrossReferenceAdapter;
import org.eclipse.emf.ecore.util.EcoreUtil;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;

/**
 * The way back along links that have no opposite because they lead from one file into another: the layers of a paint, the places of a
 * stencil on sheets, the stencils of a piece. Kept up to date while the model changes.
 */
public final class Links {
    private final CommissionFolder commission;
    private final ECrossReferenceAdapter references;
    private int followed;

    Links(CommissionFolder commission) {
        this.commission = commission;
        ResourceSet set = commission.resourceSet();
        ECrossReferenceAdapter known = ECrossReferenceAdapter.getCrossReferenceAdapter(set);
        if (known == null) {
            known = new Quiet();
            set.eAdapters().add(known);
        }
        references = known;
    }

    /** Follows no link by itself while the model is watched: that would load files whenever something is looked at. */
    private static final class Quiet extends ECrossReferenceAdapter {
        @Override
        protected boolean resolve() {
            return false;
        }
    }

    /** Who names an object, of one class. Loads all windows first: each could name it. */
    public <T extends EObject> List<T> users(EObject target, Class<T> type) {
        loadAll();
        return settings(target).stream().map(EStructuralFeature.Setting::getEObject).filter(type::isInstance).map(type::cast).distinct().toList();
    }

    /** Once all is loaded and every link followed, the adapter knows every way back. */
    private void loadAll() {
        commission.studio();
        commission.windows();
        int files = commission.resourceSet().getResources().size();
        if (files != followed) {
            EcoreUtil.resolveAll(commission.resourceSet());
            followed = files;
        }
    }

    private List<EStructuralFeature.Setting> settings(EObject target) {
        return references.getInverseReferences(target, false).stream().filter(setting -> {
            EReference reference = (EReference) setting.getEStructuralFeature();
            return !reference.isContainment() && !reference.isContainer();
        }).toList();
    }

    /** The object of an id, in any file of the commission or its studio; loads windows until it is found. */
    public Optional<EObject> byId(String id) {
        commission.studio();
        Optional<EObject> found = loadedById(id);
        for (String name : found.isPresent() ? List.<String>of() : commission.windowNames()) {
            commission.window(name);
            found = loadedById(id);
            if (found.isPresent()) {
                break;
            }
        }
        return found;
    }

    private Optional<EObject> loadedById(String id) {
        return commission.resourceSet().getResources().stream().map(resource -> resource.getEObject(id)).filter(found -> found != null).findFirst();
    }

    /** Takes an object and all within it out of the model, and every link to it in any file. */
    public void delete(EObject target) {
        loadAll();
        List<EObject> all = new ArrayList<>(List.of(target));
        target.eAllContents().forEachRemaining(all::add);
        for (EObject gone : all) {
            for (EStructuralFeature.Setting setting : settings(gone)) {
                EcoreUtil.remove(setting, gone);
            }
        }
        EcoreUtil.remove(target);
    }

    /** Links in what is loaded that lead to nothing, for the list of problems. */
    public List<Problem> broken() {
        loadAll();
        List<Problem> problems = new ArrayList<>();
        EcoreUtil.UnresolvedProxyCrossReferencer.find(commission.resourceSet()).forEach((proxy, settings) -> {
            for (EStructuralFeature.Setting setting : settings) {
                EObject from = setting.getEObject();
                URI to = EcoreUtil.getURI(proxy);
                problems.add(Problem.of("broken-link", Severity.ERROR, from.eResource().getURI().lastSegment(),
                        "The " + setting.getEStructuralFeature().getName() + " of " + from.eClass().getName() + " " + EcoreUtil.getID(from)
                                + " leads to " + to.lastSegment() + "#" + to.fragment() + ", where nothing is; choose it again."));
            }
        });
        problems.sort(Problem.WORST_FIRST);
        return problems;
    }
}
