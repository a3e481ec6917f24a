package saddlebar.ui.colourway;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.jface.action.Separator;
import org.eclipse.ui.actions.CompoundContributionItem;

import saddlebar.colour.picture.ColourVision;
import saddlebar.production.light.LightBehind;
import saddlebar.production.light.LightLook;
import saddlebar.ui.StudioPreferences;

/** View, Light: which light stands behind all windows, and whose eyes look. */
public final class LightMenu extends CompoundContributionItem {
    @Override
    protected IContributionItem[] getContributionItems() {
        LightLook now = StudioPreferences.light();
        List<IContributionItem> items = new ArrayList<>();
        for (LightBehind behind : LightBehind.values()) {
            items.add(item(words(behind), IAction.AS_RADIO_BUTTON, now.behind() == behind, look -> look.withBehind(behind)));
        }
        items.add(new Separator());
        items.add(item(ColourWords.Light_eyeUsed, IAction.AS_CHECK_BOX, now.eyeIsUsed(), look -> look.withEyeUsed(!look.eyeIsUsed())));
        items.add(item(ColourWords.Light_spread, IAction.AS_CHECK_BOX, now.spread(), look -> look.withSpread(!look.spread())));
        items.add(new Separator());
        for (ColourVision eye : ColourVision.values()) {
            items.add(item(words(eye), IAction.AS_RADIO_BUTTON, now.eye() == eye, look -> look.withEye(eye)));
        }
        return items.toArray(IContributionItem[]::new);
    }

    static String words(LightBehind behind) {
        return switch (behind) {
            case NORTH -> ColourWords.Light_north;
            case LAMP -> ColourWords.Light_lamp;
            case DUSK -> ColourWords.Light_dusk;
        };
    }

    private static String words(ColourVision eye) {
        return switch (eye) {
            case USUAL -> ColourWords.Eye_usual;
            case PROTANOPE -> ColourWords.Eye_protanope;
            case DEUTERANOPE -> ColourWords.Eye_deuteranope;
            case TRITANOPE -> ColourWords.Eye_tritanope;
        };
    }

    private static IContributionItem item(String words, int style, boolean on, UnaryOperator<LightLook> change) {
        Action action = new Action(words, style) {
            @Override
            public void run() {
                if (getStyle() != IAction.AS_RADIO_BUTTON || isChecked()) {
                    StudioPreferences.setLight(change.apply(StudioPreferences.light()));
                }
            }
        };
        action.setChecked(on);
        return new ActionContributionItem(action);
    }
}
