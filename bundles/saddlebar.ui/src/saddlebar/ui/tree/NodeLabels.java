package saddlebar.ui.tree;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.resource.ResourceLocator;
import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider.IStyledLabelProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.StyledString;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Control;

import saddlebar.model.commission.Commission;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.Kiln;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.ScreenFrame;
import saddlebar.model.commission.Sheet;
import saddlebar.model.commission.Stencil;
import saddlebar.model.commission.Studio;
import saddlebar.ui.Ids;

/** Names with their state in the platform's quieter colour, and our icons. */
final class NodeLabels extends LabelProvider implements IStyledLabelProvider {
    private final NodeWords words;
    private final LocalResourceManager images;

    /** @param owner takes the images with it when it goes */
    NodeLabels(NodeWords words, Control owner) {
        this.words = words;
        this.images = new LocalResourceManager(JFaceResources.getResources(), owner);
    }

    @Override
    public StyledString getStyledText(Object node) {
        StyledString text = new StyledString(words.name(node));
        String state = words.state(node);
        if (!state.isEmpty()) {
            text.append("  " + state, StyledString.DECORATIONS_STYLER);
        }
        return text;
    }

    /** For the filter, which looks into states too. */
    @Override
    public String getText(Object node) {
        return words.name(node) + " " + words.state(node);
    }

    @Override
    public Image getImage(Object node) {
        return ResourceLocator.imageDescriptorFromBundle(Ids.PLUGIN, "icons/" + icon(node) + ".svg").map(images::create).orElse(null);
    }

    private static String icon(Object node) {
        if (node instanceof Commission) {
            return "commission";
        }
        if (node instanceof WindowNode) {
            return "window";
        }
        if (node instanceof Panel) {
            return "panel";
        }
        if (node instanceof DesignLayer) {
            return "brush";
        }
        if (node instanceof Piece) {
            return "piece";
        }
        if (node instanceof Stencil) {
            return "stencil";
        }
        if (node instanceof Sheet) {
            return "sheet";
        }
        if (node instanceof Studio) {
            return "studio";
        }
        if (node instanceof ScreenFrame) {
            return "frame";
        }
        if (node instanceof Kiln) {
            return "kiln";
        }
        return node instanceof GroupNode group ? icon(group.kind()) : "jar";
    }

    private static String icon(GroupNode.Kind kind) {
        return switch (kind) {
            case PIECES -> "piece";
            case SHEETS -> "sheet";
            case FRAMES -> "frame";
            case PAINTS -> "jar";
            case GLASS -> "glass";
            case KILNS -> "kiln";
        };
    }
}
