package saddlebar.ui.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.jface.action.Separator;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.CompoundContributionItem;

import saddlebar.ui.Messages;
import saddlebar.ui.easel.EaselCanvas;
import saddlebar.production.light.EaselScene;
import saddlebar.production.light.SceneLayer;

/** The layers and colourways of the window on the Easel, as check items of the View menu. */
public final class LayersMenu extends CompoundContributionItem {
    @Override
    protected IContributionItem[] getContributionItems() {
        IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
        if (window == null || window.getActivePage() == null || !(window.getActivePage().getActiveEditor() instanceof EaselEditor editor)) {
            return new IContributionItem[0];
        }
        EaselCanvas easel = editor.easel();
        Optional<EaselScene> scene = easel.scene();
        List<IContributionItem> items = new ArrayList<>();
        scene.ifPresent(shown -> {
            shown.layers().forEach(layer -> items.add(new ActionContributionItem(layer(easel, layer))));
            if (shown.colourways().size() > 1) {
                items.add(new Separator());
                for (int i = 0; i < shown.colourways().size(); i++) {
                    items.add(new ActionContributionItem(colourway(easel, shown.colourways().get(i), i)));
                }
            }
        });
        return items.toArray(IContributionItem[]::new);
    }

    private static Action layer(EaselCanvas easel, SceneLayer layer) {
        Action action = new Action(layer.name(), IAction.AS_CHECK_BOX) {
            @Override
            public void run() {
                easel.setLook(easel.look().withLayer(layer.id(), isChecked()));
            }
        };
        action.setChecked(easel.look().showsLayer(layer.id()));
        return action;
    }

    private static Action colourway(EaselCanvas easel, String name, int index) {
        Action action = new Action(name.isEmpty() ? Messages.Colourway_unnamed : name, IAction.AS_RADIO_BUTTON) {
            @Override
            public void run() {
                if (isChecked()) {
                    easel.setLook(easel.look().withColourway(index));
                }
            }
        };
        action.setChecked(easel.look().colourway() == index);
        return action;
    }
}
