package saddlebar.ui.bench;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;

import saddlebar.ui.Ids;

/** What every bench has: the Commission tree at the left, properties, problems and progress below. */
public final class Benches {
    private Benches() {
    }

    /** For perspectives of other bundles too; the editor area is shown. */
    public static void common(IPageLayout layout) {
        layout.setEditorAreaVisible(true);
        layout.addView(Ids.TREE_VIEW, IPageLayout.LEFT, 0.24f, layout.getEditorArea());
        IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, 0.76f, layout.getEditorArea());
        below.addView(Ids.PROPERTIES_VIEW);
        below.addView(Ids.PROBLEMS_VIEW);
        below.addView(Ids.PROGRESS_VIEW);
        for (String view : new String[] {Ids.TREE_VIEW, Ids.WALL_VIEW, Ids.PIECES_VIEW, Ids.LAYERS_VIEW, Ids.DOTS_VIEW, Ids.RECIPE_VIEW,
                Ids.MESH_VIEW, Ids.PROPERTIES_VIEW, Ids.PROBLEMS_VIEW, Ids.PROGRESS_VIEW}) {
            layout.addShowViewShortcut(view);
        }
        layout.addPerspectiveShortcut(Ids.DESK_BENCH);
        layout.addPerspectiveShortcut(Ids.DRAWING_BENCH);
        layout.addPerspectiveShortcut(Ids.SCREEN_BENCH);
    }
}
