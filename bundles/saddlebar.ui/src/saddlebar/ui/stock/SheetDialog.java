package saddlebar.ui.stock;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

import saddlebar.ui.Messages;

/** Asks for a few lengths in mm, and above them for one of several things if there are some. The refusal of a length stands in its head. */
final class SheetDialog extends TitleAreaDialog {
    private final String title;
    private final String message;
    private final List<String> things;
    private final List<String> labels;
    private final List<String> first;
    private final double mostMm;
    private final List<Text> fields = new ArrayList<>();
    private Combo choice;
    private int chosen;
    private final double[] lengthsMm;

    SheetDialog(Shell shell, String title, String message, List<String> things, List<String> labels, List<String> first, double mostMm) {
        super(shell);
        this.title = title;
        this.message = message;
        this.things = things;
        this.labels = labels;
        this.first = first;
        this.mostMm = mostMm;
        this.lengthsMm = new double[labels.size()];
    }

    int chosen() {
        return chosen;
    }

    double lengthMm(int field) {
        return lengthsMm[field];
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(title);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        setTitle(title);
        setMessage(message);
        Composite body = new Composite(area, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(body);
        if (!things.isEmpty()) {
            new Label(body, SWT.NONE).setText(Messages.Stock_glass);
            choice = new Combo(body, SWT.READ_ONLY);
            choice.setItems(things.toArray(String[]::new));
            choice.select(0);
            choice.addListener(SWT.Selection, event -> chosen = choice.getSelectionIndex());
        }
        for (int i = 0; i < labels.size(); i++) {
            new Label(body, SWT.NONE).setText(labels.get(i));
            Text field = new Text(body, SWT.BORDER);
            field.setText(first.get(i));
            field.addListener(SWT.Modify, event -> check());
            fields.add(field);
        }
        GridLayoutFactory.swtDefaults().margins(10, 10).numColumns(2).generateLayout(body);
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        super.createButtonsForButtonBar(parent);
        check();
    }

    private void check() {
        String wrong = null;
        for (int i = 0; i < fields.size(); i++) {
            try {
                lengthsMm[i] = Double.parseDouble(fields.get(i).getText().strip().replace(',', '.'));
            } catch (NumberFormatException e) {
                lengthsMm[i] = Double.NaN;
            }
            if (!(lengthsMm[i] >= 1 && lengthsMm[i] <= mostMm)) {
                wrong = org.eclipse.osgi.util.NLS.bind(Messages.Stock_badLength, labels.get(i), (int) mostMm);
            }
        }
        setErrorMessage(wrong);
        if (getButton(IDialogConstants.OK_ID) != null) {
            getButton(IDialogConstants.OK_ID).setEnabled(wrong == null);
        }
    }
}
