package saddlebar.model.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.common.util.WrappedException;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;

import saddlebar.model.problem.Refusal;

/** The loaded model files of one commission and its studio. A link loads a file only if that lies in one of the folders opened. */
final class FolderSet extends ResourceSetImpl {
    private final Surroundings surroundings;
    private final List<InnerPaths> folders = new ArrayList<>();

    FolderSet(Surroundings surroundings) {
        this.surroundings = surroundings;
        ModelResource.registerPackage();
        setURIResourceMap(new HashMap<>());
        getResourceFactoryRegistry().getExtensionToFactoryMap().put(ModelResource.EXTENSION, new ModelResourceFactory());
    }

    void allow(InnerPaths folder) {
        folders.add(folder);
    }

    static URI uri(Path file) {
        return URI.createFileURI(file.toString());
    }

    /** @throws Refusal telling why it cannot be read */
    ModelResource load(Path file) {
        return (ModelResource) getResource(uri(file), true);
    }

    boolean isLoaded(Path file) {
        return getResource(uri(file), false) != null;
    }

    /** A file that is not yet on the disk. */
    ModelResource create(Path file) {
        ModelResource resource = (ModelResource) createResource(uri(file));
        resource.setTrackingModification(true);
        resource.setModified(true);
        return resource;
    }

    @Override
    public Resource createResource(URI uri, String contentType) {
        Resource resource = super.createResource(uri, contentType);
        if (resource instanceof ModelResource model) {
            model.idsFrom(surroundings::newId);
        }
        return resource;
    }

    @Override
    protected void demandLoad(Resource resource) throws IOException {
        requireAllowed(resource.getURI());
        super.demandLoad(resource);
    }

    @Override
    protected void demandLoadHelper(Resource resource) {
        try {
            super.demandLoadHelper(resource);
        } catch (RuntimeException e) {
            getResources().remove(resource); // else the next call would find an empty file that seems whole
            getURIResourceMap().values().remove(resource);
            throw e instanceof WrappedException wrapped && wrapped.exception() instanceof RuntimeException cause ? cause : e;
        }
        resource.setTrackingModification(true);
        if (resource instanceof ModelResource model && model.wasBroughtUpToDate()) {
            model.setModified(true);
        }
    }

    private void requireAllowed(URI uri) throws IOException {
        Path file = uri.isFile() ? Path.of(uri.toFileString()).toAbsolutePath().normalize() : null;
        if (file == null || !ModelResource.EXTENSION.equals(uri.fileExtension())) {
            throw new Refusal(uri.toString(), "is no model file", "mend the link that leads there");
        }
        for (InnerPaths folder : folders) {
            if (file.startsWith(folder.root())) {
                folder.requireInside(file);
                if (!Files.isRegularFile(file)) {
                    throw new Refusal(file.toString(), "is missing", Refusals.RESTORE);
                }
                return;
            }
        }
        throw new Refusal(file.toString(), "lies outside the commission and its studio", "mend the link that leads there");
    }
}
