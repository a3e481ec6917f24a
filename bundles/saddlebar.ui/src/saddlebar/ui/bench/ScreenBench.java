package saddlebar.ui.bench;

import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

import saddlebar.ui.Ids;

/** Stencils: the Easel and, beside it, the dots of the chosen stencil under a magnifier. */
public final class ScreenBench implements IPerspectiveFactory {
    @Override
    public void createInitialLayout(IPageLayout layout) {
        Benches.common(layout);
        layout.addView(Ids.DOTS_VIEW, IPageLayout.RIGHT, 0.5f, layout.getEditorArea());
    }
}
