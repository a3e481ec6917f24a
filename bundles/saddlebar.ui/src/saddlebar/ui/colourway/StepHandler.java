package saddlebar.ui.colourway;

import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.handlers.HandlerUtil;

import saddlebar.production.light.EaselScene;
import saddlebar.production.light.LightBehind;
import saddlebar.production.light.LightLook;
import saddlebar.ui.StudioPreferences;
import saddlebar.ui.bench.EaselEditor;
import saddlebar.ui.easel.EaselCanvas;

/** Goes on to the next light or the next colourway; which, {@code plugin.xml} says after the colon of the class name. */
public final class StepHandler extends AbstractHandler implements IExecutableExtension {
    /** What can be gone through. */
    public enum What {
        LIGHT, COLOURWAY
    }

    private What what = What.LIGHT;

    @Override
    public void setInitializationData(IConfigurationElement config, String property, Object data) {
        what = What.valueOf((String) data);
    }

    @Override
    public Object execute(ExecutionEvent event) {
        if (what == What.LIGHT) {
            LightLook now = StudioPreferences.light();
            LightBehind[] lights = LightBehind.values();
            StudioPreferences.setLight(now.withBehind(lights[(now.behind().ordinal() + 1) % lights.length]));
        } else if (HandlerUtil.getActiveEditor(event) instanceof EaselEditor editor) {
            EaselCanvas easel = editor.easel();
            Optional<EaselScene> scene = easel.scene();
            scene.ifPresent(shown -> easel.setLook(easel.look().withColourway((easel.look().colourway() + 1) % shown.colourways().size())));
        }
        return null;
    }
}
