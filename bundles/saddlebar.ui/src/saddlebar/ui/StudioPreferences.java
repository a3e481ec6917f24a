package saddlebar.ui;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.preference.IPreferenceStore;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.preferences.ScopedPreferenceStore;

import saddlebar.colour.picture.ColourVision;
import saddlebar.production.light.LightBehind;
import saddlebar.production.light.LightLook;
import saddlebar.ui.easel.RulerScale;

/** What a person has chosen for the desktop as a whole. Defaults stand in {@link StudioDefaults}. */
public final class StudioPreferences {
    public static final String UNIT = "unit";
    public static final String SCREEN_DPI = "screenDpi";
    public static final String RULERS = "rulers";
    public static final String SURROUND = "surround";
    public static final String LIGHT = "light";
    public static final String EYE_USED = "eyeUsed";
    public static final String EYE = "eye";
    public static final String SPREAD = "spread";

    static final double LEAST_DPI = 40;
    static final double MOST_DPI = 400;
    private static final int DARK_ROOM_RGB = 0x232427;
    private static final int LIGHT_ROOM_RGB = 0xDCD9D3;

    /** The room around a window on the Easel. */
    public enum Surround {
        /** As the rest of the desktop. */
        THEME, LIGHT, DARK
    }

    private StudioPreferences() {
    }

    /** A view of the platform's preferences; cheap to make. Whoever listens keeps it, to stop listening later. */
    public static IPreferenceStore store() {
        return new ScopedPreferenceStore(InstanceScope.INSTANCE, Ids.PLUGIN);
    }

    public static RulerScale.Unit unit() {
        return "inch".equals(store().getString(UNIT)) ? RulerScale.Unit.INCH : RulerScale.Unit.MM;
    }

    public static Lengths lengths() {
        return new Lengths(unit(), Locale.getDefault(Locale.Category.FORMAT));
    }

    /** Rulers in the unit chosen, or none. */
    public static Optional<RulerScale.Unit> ruler() {
        return store().getBoolean(RULERS) ? Optional.of(unit()) : Optional.empty();
    }

    /** Points of the screen an inch. */
    public static double screenDpi() {
        return Math.max(LEAST_DPI, Math.min(MOST_DPI, store().getDouble(SCREEN_DPI)));
    }

    /** The light behind all windows, and the eyes that look. */
    public static LightLook light() {
        IPreferenceStore store = store();
        LightBehind behind = LightBehind.of(store.getString(LIGHT)).orElse(LightBehind.NORTH);
        ColourVision eye = Arrays.stream(ColourVision.values()).filter(one -> one.name().equals(store.getString(EYE))).findFirst()
                .orElse(ColourVision.USUAL);
        return new LightLook(behind, store.getBoolean(EYE_USED), eye, store.getBoolean(SPREAD));
    }

    /** Looks at all windows in another light. */
    public static void setLight(LightLook light) {
        IPreferenceStore store = store();
        store.setValue(LIGHT, light.behind().word());
        store.setValue(EYE_USED, light.eyeIsUsed());
        store.setValue(EYE, light.eye().name());
        store.setValue(SPREAD, light.spread());
    }

    /** The colour of the room around the window, by choice or by the theme that the control stands in. */
    public static int surroundRgb(Control control) {
        String chosen = store().getString(SURROUND);
        if (Surround.LIGHT.name().equals(chosen)) {
            return LIGHT_ROOM_RGB;
        }
        return Surround.DARK.name().equals(chosen) || isDark(control.getParent().getBackground()) || isDark(list(control))
                ? DARK_ROOM_RGB
                : LIGHT_ROOM_RGB;
    }

    private static Color list(Control control) {
        return control.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND);
    }

    private static boolean isDark(Color colour) {
        return 0.299 * colour.getRed() + 0.587 * colour.getGreen() + 0.114 * colour.getBlue() < 110;
    }
}
