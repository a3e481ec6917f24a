package saddlebar.ui.tree;

import org.eclipse.emf.ecore.EObject;

/** Things of one kind that belong to one thing, such as the pieces of a panel. */
public record GroupNode(EObject owner, Kind kind) {
    /** Which things. */
    public enum Kind {
        PIECES, SHEETS, FRAMES, PAINTS, GLASS, KILNS
    }
}
