package saddlebar.ui.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.CompoundContributionItem;

import saddlebar.ui.Messages;
import saddlebar.ui.StudioPreferences;

/** File, Open Recent. */
public final class RecentMenu extends CompoundContributionItem {
    @Override
    protected IContributionItem[] getContributionItems() {
        List<IContributionItem> items = new ArrayList<>();
        for (Path path : new RecentCommissions(StudioPreferences.store()).all()) {
            if (Files.isDirectory(path)) {
                items.add(new ActionContributionItem(action(path)));
            }
        }
        if (items.isEmpty()) {
            Action none = new Action(Messages.Recent_none) {
                // only says so
            };
            none.setEnabled(false);
            items.add(new ActionContributionItem(none));
        }
        return items.toArray(IContributionItem[]::new);
    }

    private static Action action(Path path) {
        Action action = new Action(path.getFileName().toString().replace("&", "&&")) {
            @Override
            public void run() {
                IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
                if (window != null) {
                    new CommissionOpening(window).open(path);
                }
            }
        };
        action.setDescription(path.toString());
        action.setToolTipText(path.toString());
        return action;
    }
}
