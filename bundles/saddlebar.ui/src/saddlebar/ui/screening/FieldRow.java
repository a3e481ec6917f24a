package saddlebar.ui.screening;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.resource.JFaceColors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** A field of the recipe on the screen: label, text or list, and under it, only when there is something wrong, what it is. */
final class FieldRow {
    private static final int FIELD_PT = 130;

    private final RecipeField field;
    private final BiFunction<RecipeField, String, Optional<String>> take;
    private final Runnable laidOut;
    private final Control control;
    private final Label wrong;
    private String shown = "";

    /**
     * @param parent  a grid of two columns
     * @param take    takes a value and says what is wrong with it
     * @param laidOut called when the row has become higher or lower
     */
    FieldRow(Composite parent, RecipeField field, BiFunction<RecipeField, String, Optional<String>> take, Runnable laidOut) {
        this.field = field;
        this.take = take;
        this.laidOut = laidOut;
        Label label = new Label(parent, SWT.NONE);
        label.setText(field.label());
        control = field.choices().isEmpty() ? text(parent) : combo(parent);
        GridDataFactory.fillDefaults().grab(true, false).hint(FIELD_PT, SWT.DEFAULT).applyTo(control);
        wrong = new Label(parent, SWT.WRAP);
        wrong.setForeground(JFaceColors.getErrorText(parent.getDisplay()));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(FIELD_PT, SWT.DEFAULT).exclude(true).applyTo(wrong);
        wrong.setVisible(false);
    }

    private Text text(Composite parent) {
        Text text = new Text(parent, SWT.BORDER | SWT.SINGLE);
        text.setData(RecipeField.class.getName(), field);
        if (field == RecipeField.COURSE) {
            text.setToolTipText(ScreenWords.Recipe_courseHelp);
        }
        if (field.mayBeEmpty()) {
            text.setMessage(field.emptyMeans());
        }
        text.addListener(SWT.FocusOut, event -> taken(text.getText()));
        text.addListener(SWT.DefaultSelection, event -> taken(text.getText()));
        text.addListener(SWT.KeyDown, event -> {
            if (event.character == SWT.ESC) {
                text.setText(shown);
                say("");
            }
        });
        return text;
    }

    private Combo combo(Composite parent) {
        Combo combo = new Combo(parent, SWT.READ_ONLY | SWT.DROP_DOWN);
        combo.setData(RecipeField.class.getName(), field);
        combo.setItems(field.choices().stream().map(field::words).toArray(String[]::new));
        combo.addListener(SWT.Selection, event -> {
            if (combo.getSelectionIndex() >= 0) {
                taken(field.choices().get(combo.getSelectionIndex()));
            }
        });
        // the wheel scrolls the part; it must not change a recipe in passing
        combo.addListener(SWT.MouseVerticalWheel, event -> event.doit = false);
        return combo;
    }

    private void taken(String value) {
        if (!value.equals(shown)) {
            say(take.apply(field, value).orElse(""));
        } else {
            say("");
        }
    }

    void show(RecipeSheet sheet) {
        String value = sheet.value(field);
        if (!value.equals(shown)) {
            say("");
        }
        shown = value;
        if (control instanceof Text text) {
            if (!text.isFocusControl() || wrong.getText().isEmpty()) {
                if (!text.getText().equals(value)) {
                    text.setText(value);
                }
            }
        } else if (control instanceof Combo combo) {
            List<String> choices = field.choices();
            if (choices.contains(value)) {
                combo.select(choices.indexOf(value));
            } else {
                combo.deselectAll();
            }
        }
        control.setEnabled(sheet.canEdit() && sheet.matters(field));
    }

    private void say(String words) {
        if (!words.equals(wrong.getText())) {
            wrong.setText(words);
            wrong.setVisible(!words.isEmpty());
            ((GridData) wrong.getLayoutData()).exclude = words.isEmpty();
            laidOut.run();
        }
    }
}
