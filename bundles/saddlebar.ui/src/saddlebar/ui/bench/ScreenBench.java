package saddlebar.ui.bench;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

import saddlebar.ui.Ids;

/** Stencils: the Easel and, beside it, the chosen layer's dots under a magnifier, and what they are made by. */
public final class ScreenBench implements IPerspectiveFactory {
    @Override
    public void createInitialLayout(IPageLayout layout) {
        // first, so that it has the whole height
        layout.addView(Ids.DOTS_VIEW, IPageLayout.RIGHT, 0.54f, layout.getEditorArea());
        IFolderLayout craft = layout.createFolder("craft", IPageLayout.BOTTOM, 0.42f, Ids.DOTS_VIEW);
        craft.addView(Ids.RECIPE_VIEW);
        craft.addView(Ids.TONE_VIEW);
        craft.addView(Ids.MESH_VIEW);
        craft.addView(Ids.SHEETS_VIEW);
        craft.addView(Ids.NARROW_VIEW);
        craft.addView(Ids.QUALITY_VIEW);
        Benches.common(layout);
    }
}
