package saddlebar.ui.print;

import java.io.IOException;
import java.util.List;
import java.util.Map;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;

/** A part of the print bench: follows its desk, and has fields and a line that says what was entered. */
abstract class PrintPart extends ViewPart {
    private static final int FIELD_PT = 120;

    private PrintDesk desk;
    private final Runnable onChange = this::shown;
    private Label told;
    private Control first;

    @Override
    public final void createPartControl(Composite parent) {
        desk = getSite().getService(PrintDesk.class);
        createParts(parent);
        desk.addListener(onChange);
        show();
    }

    private void shown() {
        if (first == null || !first.isDisposed()) {
            show();
        }
    }

    protected abstract void createParts(Composite parent);

    /** Something on the bench has changed. */
    protected abstract void show();

    protected final PrintDesk desk() {
        return desk;
    }

    protected final Text text(Composite parent, String label) {
        label(parent, label);
        Text text = new Text(parent, SWT.BORDER);
        wide(text);
        return text;
    }

    protected final Combo combo(Composite parent, String label) {
        label(parent, label);
        Combo combo = new Combo(parent, SWT.DROP_DOWN);
        wide(combo);
        return combo;
    }

    private static void label(Composite parent, String words) {
        Label label = new Label(parent, SWT.NONE);
        label.setText(words);
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(label);
    }

    private void wide(Control control) {
        first = first == null ? control : first;
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(FIELD_PT, SWT.DEFAULT).applyTo(control);
    }

    protected final void toldBelow(Composite parent, int columns) {
        told = new Label(parent, SWT.WRAP);
        GridData data = GridDataFactory.fillDefaults().span(columns, 1).grab(true, false).create();
        data.widthHint = 200;
        told.setLayoutData(data);
    }

    /** Keeps what is typed, and offers what is known. */
    protected static void offer(Combo combo, List<String> known) {
        String typed = combo.getText();
        combo.setItems(known.toArray(String[]::new));
        combo.setText(typed);
    }

    protected final void enter(Map<String, String> words, String what) {
        String answer;
        try {
            StringBuilder beside = new StringBuilder(NLS.bind(Messages.Card_recorded, what));
            for (Problem problem : desk.record(words)) {
                beside.append('\n').append(problem.message());
            }
            answer = beside.toString();
        } catch (IOException | Refusal e) {
            answer = e.getMessage();
        }
        told.setText(answer);
        told.getParent().layout(true, true);
    }

    @Override
    public void setFocus() {
        if (first != null) {
            first.setFocus();
        }
    }

    @Override
    public void dispose() {
        if (desk != null) {
            desk.removeListener(onChange);
        }
        super.dispose();
    }
}
