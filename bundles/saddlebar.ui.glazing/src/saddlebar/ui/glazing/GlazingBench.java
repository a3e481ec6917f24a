package saddlebar.ui.glazing;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

import saddlebar.ui.bench.Benches;

/** The window on the Easel with its foil or came, and beside it the metal it takes, what it weighs, and its bars. */
public final class GlazingBench implements IPerspectiveFactory {
    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.addView(GlazingIds.METAL_VIEW, IPageLayout.RIGHT, 0.5f, layout.getEditorArea());
        IFolderLayout bars = layout.createFolder("bars", IPageLayout.BOTTOM, 0.62f, GlazingIds.METAL_VIEW);
        bars.addView(GlazingIds.BARS_VIEW);
        Benches.common(layout);
    }
}
