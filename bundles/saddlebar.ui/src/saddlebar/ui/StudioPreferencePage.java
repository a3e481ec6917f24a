package saddlebar.ui;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.preference.BooleanFieldEditor;
import org.eclipse.jface.preference.ComboFieldEditor;
import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.jface.preference.RadioGroupFieldEditor;
import org.eclipse.jface.preference.StringFieldEditor;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;

import saddlebar.model.units.Units;

/** Units, the true size of the screen, rulers, the room around the window. */
public final class StudioPreferencePage extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {
    private static final int RULE_MM = 100;
    private static final int RULE_HEIGHT_PT = 28;
    private Canvas rule;
    private DpiField dpi;

    public StudioPreferencePage() {
        super(GRID);
        setDescription(Messages.Preferences_description);
    }

    @Override
    public void init(IWorkbench workbench) {
        setPreferenceStore(StudioPreferences.store());
    }

    @Override
    protected void createFieldEditors() {
        Composite parent = getFieldEditorParent();
        addField(new RadioGroupFieldEditor(StudioPreferences.UNIT, Messages.Preferences_unit, 1,
                new String[][] {{Messages.Preferences_mm, "mm"}, {Messages.Preferences_inch, "inch"}}, parent));
        dpi = new DpiField(parent);
        addField(dpi);
        rule = new Canvas(parent, SWT.NONE);
        GridDataFactory.fillDefaults().span(2, 1).hint(SWT.DEFAULT, RULE_HEIGHT_PT).applyTo(rule);
        rule.addListener(SWT.Paint, event -> drawRule(event.gc));
        rule.setToolTipText(Messages.Preferences_rule);
        addField(new BooleanFieldEditor(StudioPreferences.RULERS, Messages.Preferences_rulers, parent));
        addField(new ComboFieldEditor(StudioPreferences.SURROUND, Messages.Preferences_surround,
                new String[][] {{Messages.Preferences_surroundTheme, StudioPreferences.Surround.THEME.name()},
                        {Messages.Preferences_surroundLight, StudioPreferences.Surround.LIGHT.name()},
                        {Messages.Preferences_surroundDark, StudioPreferences.Surround.DARK.name()}},
                parent));
    }

    /** A line that is 100 mm long when the number is right: held against a ruler it shows how far off it is. */
    private void drawRule(GC gc) {
        int length = (int) Math.round(RULE_MM / Units.MM_PER_INCH * dpi.number());
        int y = RULE_HEIGHT_PT / 2;
        gc.setForeground(rule.getForeground());
        gc.drawLine(1, y, 1 + length, y);
        for (int mm = 0; mm <= RULE_MM; mm += 10) {
            int x = 1 + (int) Math.round(length * mm / (double) RULE_MM);
            int half = mm % 50 == 0 ? 8 : 4;
            gc.drawLine(x, y - half, x, y + half);
        }
        gc.drawText("100 mm", 8 + length, y - gc.getFontMetrics().getHeight() / 2, true);
    }

    private final class DpiField extends StringFieldEditor {
        DpiField(Composite parent) {
            super(StudioPreferences.SCREEN_DPI, Messages.Preferences_dpi, 8, parent);
            setErrorMessage(NLS.bind(Messages.Preferences_dpiWrong, (int) StudioPreferences.LEAST_DPI, (int) StudioPreferences.MOST_DPI));
            setEmptyStringAllowed(false);
            setValidateStrategy(VALIDATE_ON_KEY_STROKE);
        }

        @Override
        protected boolean doCheckState() {
            boolean right = !Double.isNaN(typed());
            if (right && rule != null) {
                rule.redraw();
            }
            return right;
        }

        /** What is typed, or what held before while that is no number. */
        double number() {
            double number = typed();
            return Double.isNaN(number) ? StudioPreferences.screenDpi() : number;
        }

        private double typed() {
            try {
                double number = Double.parseDouble(getStringValue().strip().replace(',', '.'));
                return number >= StudioPreferences.LEAST_DPI && number <= StudioPreferences.MOST_DPI ? number : Double.NaN;
            } catch (NumberFormatException e) {
                return Double.NaN;
            }
        }

        @Override
        protected void doStore() {
            getPreferenceStore().setValue(getPreferenceName(), number());
        }
    }
}
