package saddlebar.ui;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.resource.JFaceColors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The line under a field of a dialog: what is wrong with what was typed, in the theme's colour for errors, or what will come of it. */
public final class FieldWords {
    private final Label label;
    private final Color plain;

    /** @param columns of the parent's grid; the words stand under the field, which is in the second */
    public FieldWords(Composite parent, int columns) {
        new Label(parent, SWT.NONE);
        label = new Label(parent, SWT.WRAP);
        plain = label.getForeground();
        GridDataFactory.fillDefaults().grab(true, false).span(columns - 1, 1).applyTo(label);
    }

    /** How wide the words may be, in pixels, before they are broken; said once, so that a long word does not widen the dialog. */
    public FieldWords width(int widthPx) {
        GridDataFactory.createFrom((GridData) label.getLayoutData()).hint(widthPx, SWT.DEFAULT).applyTo(label);
        return this;
    }

    public void wrong(String words) {
        show(words, JFaceColors.getErrorText(label.getDisplay()));
    }

    public void hint(String words) {
        show(words, plain);
    }

    private void show(String words, Color colour) {
        if (!words.equals(label.getText())) {
            label.setText(words);
            label.getParent().layout(true, true);
        }
        label.setForeground(colour);
    }
}
