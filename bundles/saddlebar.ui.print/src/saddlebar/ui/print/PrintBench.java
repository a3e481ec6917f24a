package saddlebar.ui.print;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

import saddlebar.ui.Ids;

/** The Easel to choose a piece on, the card to write on beside it, the rack below. */
public final class PrintBench implements IPerspectiveFactory {
    static final String PLUGIN = "saddlebar.ui.print";

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(true);
        layout.addView(Ids.TREE_VIEW, IPageLayout.LEFT, 0.22f, layout.getEditorArea());
        IFolderLayout right = layout.createFolder("right", IPageLayout.RIGHT, 0.62f, layout.getEditorArea());
        right.addView("saddlebar.ui.view.pullCard");
        right.addView("saddlebar.ui.view.mix");
        IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, 0.55f, layout.getEditorArea());
        below.addView("saddlebar.ui.view.rack");
        below.addView("saddlebar.ui.view.today");
        below.addView(Ids.PROBLEMS_VIEW);
    }
}
