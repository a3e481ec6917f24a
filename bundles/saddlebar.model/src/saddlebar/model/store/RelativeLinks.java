package saddlebar.model.store;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.xmi.impl.URIHandlerImpl;

import saddlebar.model.problem.Refusal;

/** Links between files are relative: a folder can be moved, and a file cannot point at the network or at an absolute place. */
final class RelativeLinks extends URIHandlerImpl {
    @Override
    public URI resolve(URI uri) {
        if (uri.isCurrentDocumentReference()) {
            return super.resolve(uri);
        }
        if (!uri.isRelative() || uri.hasAbsolutePath() || uri.hasAuthority() || uri.hasDevice()) {
            throw new Refusal(baseURI == null ? "model file" : baseURI.lastSegment(), "links to " + uri + ", which is not a relative path",
                    "write the link as a path relative to this file");
        }
        return super.resolve(uri);
    }

    @Override
    public URI deresolve(URI uri) {
        URI relative = super.deresolve(uri);
        if (!relative.isRelative() || relative.hasAbsolutePath()) {
            throw new IllegalStateException("no relative path leads from " + baseURI + " to " + uri);
        }
        return relative;
    }
}
