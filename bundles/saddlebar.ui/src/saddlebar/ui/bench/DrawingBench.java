package saddlebar.ui.bench;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

import saddlebar.ui.Ids;

/** One window: the Easel, its pieces and layers, its glass and colourways, its problems. */
public final class DrawingBench implements IPerspectiveFactory {
    @Override
    public void createInitialLayout(IPageLayout layout) {
        Benches.common(layout);
        IFolderLayout right = layout.createFolder("right", IPageLayout.RIGHT, 0.6f, layout.getEditorArea());
        right.addView(Ids.PIECES_VIEW);
        right.addView(Ids.LAYERS_VIEW);
        IFolderLayout glass = layout.createFolder("glass", IPageLayout.BOTTOM, 0.45f, "right");
        glass.addView(Ids.GLASS_VIEW);
        glass.addView(Ids.COLOURWAYS_VIEW);
    }
}
