package saddlebar.ui.bench;

import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

import saddlebar.ui.Ids;

/** The whole commission: its tree, all its windows on the wall, and one on the Easel. */
public final class DeskBench implements IPerspectiveFactory {
    @Override
    public void createInitialLayout(IPageLayout layout) {
        Benches.common(layout);
        layout.addView(Ids.WALL_VIEW, IPageLayout.RIGHT, 0.8f, layout.getEditorArea());
    }
}
