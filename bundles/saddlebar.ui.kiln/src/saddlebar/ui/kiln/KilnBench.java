package saddlebar.ui.kiln;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

import saddlebar.ui.Ids;

/** The kiln: its chart above the schedule, the shelf and the firings beside; the Easel makes room. */
public final class KilnBench implements IPerspectiveFactory {
    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(false);
        layout.addView(Ids.TREE_VIEW, IPageLayout.LEFT, 0.18f, layout.getEditorArea());
        layout.addView(KilnIds.CHART_VIEW, IPageLayout.TOP, 0.56f, layout.getEditorArea());
        IFolderLayout right = layout.createFolder("kilnRight", IPageLayout.RIGHT, 0.6f, KilnIds.CHART_VIEW);
        right.addView(KilnIds.SHELF_VIEW);
        IFolderLayout schedule = layout.createFolder("kilnSchedule", IPageLayout.BOTTOM, 0.56f, layout.getEditorArea());
        schedule.addView(KilnIds.SCHEDULE_VIEW);
        schedule.addView(Ids.PROBLEMS_VIEW);
        schedule.addView(Ids.PROGRESS_VIEW);
        IFolderLayout firings = layout.createFolder("kilnFirings", IPageLayout.RIGHT, 0.6f, "kilnSchedule");
        firings.addView(KilnIds.FIRINGS_VIEW);
    }
}
