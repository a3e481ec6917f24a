package saddlebar.ui.bench;

import java.util.Map;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.jface.preference.IPreferenceStore;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.menus.UIElement;

import saddlebar.ui.StudioPreferences;
import saddlebar.production.light.EaselLook.Overlay;

/** Lays something over the glass or takes it off; what, {@code plugin.xml} says after the colon. {@code RULERS} holds for all Easels. */
public final class OverlayHandler extends AbstractHandler implements IExecutableExtension, IElementUpdater {
    private static final String RULERS = "RULERS";
    private String what = RULERS;

    @Override
    public void setInitializationData(IConfigurationElement config, String property, Object data) {
        what = (String) data;
    }

    @Override
    public Object execute(ExecutionEvent event) {
        if (what.equals(RULERS)) {
            IPreferenceStore preferences = StudioPreferences.store();
            preferences.setValue(StudioPreferences.RULERS, !preferences.getBoolean(StudioPreferences.RULERS));
        } else if (HandlerUtil.getActiveEditor(event) instanceof EaselEditor editor) {
            Overlay overlay = Overlay.valueOf(what);
            editor.easel().setLook(editor.easel().look().with(overlay, !editor.easel().look().shows(overlay)));
        }
        PlatformUI.getWorkbench().getService(ICommandService.class).refreshElements(event.getCommand().getId(), null);
        return null;
    }

    @Override
    public void updateElement(UIElement element, @SuppressWarnings("rawtypes") Map parameters) {
        element.setChecked(isOn());
    }

    private boolean isOn() {
        if (what.equals(RULERS)) {
            return StudioPreferences.store().getBoolean(StudioPreferences.RULERS);
        }
        IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
        IEditorPart editor = window == null || window.getActivePage() == null ? null : window.getActivePage().getActiveEditor();
        return editor instanceof EaselEditor easel && easel.easel().look().shows(Overlay.valueOf(what));
    }
}
