package saddlebar.ui.bench;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

import saddlebar.ui.Ids;

/** The whole commission: its tree, all its windows on the wall, one on the Easel, what can be done next and when it is due. */
public final class DeskBench implements IPerspectiveFactory {
    @Override
    public void createInitialLayout(IPageLayout layout) {
        Benches.common(layout);
        layout.addView(Ids.WALL_VIEW, IPageLayout.RIGHT, 0.7f, layout.getEditorArea());
        IFolderLayout next = layout.createFolder("next", IPageLayout.BOTTOM, 0.6f, Ids.WALL_VIEW);
        next.addView(Ids.NEXT_VIEW);
        next.addView(Ids.DATES_VIEW);
    }
}
