package saddlebar.ui.tracing;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

import saddlebar.ui.Ids;

/** Defects at the left, the Easel in the middle, what follows from them around it. */
public final class TracingBench implements IPerspectiveFactory {
    static final String PLUGIN = "saddlebar.ui.tracing";

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(true);
        IFolderLayout left = layout.createFolder("left", IPageLayout.LEFT, 0.3f, layout.getEditorArea());
        left.addView("saddlebar.ui.view.flaws");
        left.addView(Ids.TREE_VIEW);
        IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, 0.5f, layout.getEditorArea());
        below.addView("saddlebar.ui.view.wayBack");
        below.addView("saddlebar.ui.view.suspects");
        below.addView("saddlebar.ui.view.thenNow");
        below.addView(Ids.PROBLEMS_VIEW);
        IFolderLayout right = layout.createFolder("right", IPageLayout.RIGHT, 0.62f, layout.getEditorArea());
        right.addView("saddlebar.ui.view.exposed");
    }
}
