package saddlebar.model.store;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.Resource.Factory;

/** Makes resources for files that end in {@code .saddlebar}; named in plugin.xml, and registered by {@link CommissionFolder} itself. */
public final class ModelResourceFactory implements Factory {
    @Override
    public Resource createResource(URI uri) {
        return new ModelResource(uri);
    }
}
