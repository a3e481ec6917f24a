package saddlebar.ui;

import java.util.Locale;
import java.util.Set;

import org.eclipse.core.runtime.preferences.AbstractPreferenceInitializer;
import org.eclipse.core.runtime.preferences.DefaultScope;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;

import saddlebar.production.light.LightLook;

/** What holds until somebody chooses otherwise. */
public final class StudioDefaults extends AbstractPreferenceInitializer {
    /** Countries that measure glass in inches. */
    private static final Set<String> INCH_COUNTRIES = Set.of("US", "LR", "MM");
    /** What toolkits call 100 %. A screen's own value is rarely told truly; the preference page helps to measure it. */
    private static final double USUAL_DPI = 96;

    @Override
    public void initializeDefaultPreferences() {
        IEclipsePreferences defaults = DefaultScope.INSTANCE.getNode(Ids.PLUGIN);
        defaults.put(StudioPreferences.UNIT, INCH_COUNTRIES.contains(Locale.getDefault().getCountry()) ? "inch" : "mm");
        defaults.putDouble(StudioPreferences.SCREEN_DPI, USUAL_DPI);
        defaults.putBoolean(StudioPreferences.RULERS, true);
        defaults.put(StudioPreferences.LIGHT, LightLook.USUAL.behind().word());
        defaults.putBoolean(StudioPreferences.EYE_USED, LightLook.USUAL.eyeIsUsed());
        defaults.put(StudioPreferences.EYE, LightLook.USUAL.eye().name());
        defaults.putBoolean(StudioPreferences.SPREAD, LightLook.USUAL.spread());
        defaults.put(StudioPreferences.SURROUND, StudioPreferences.Surround.THEME.name());
    }
}
