package saddlebar.ui.make;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;

import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

import saddlebar.ui.Messages;
import saddlebar.ui.TypedLength;

/** Asks to which window a drawing belongs and how large it is in glass. */
final class BringDialog extends TitleAreaDialog {
    private final Path art;
    private final List<String> windows;
    private final TypedLength lengths;
    private Combo window;
    private Text title;
    private Text width;
    private BringChoice choice;

    BringDialog(Shell shell, Path art, List<String> windows, TypedLength lengths) {
        super(shell);
        this.art = art;
        this.windows = List.copyOf(windows);
        this.lengths = lengths;
        setHelpAvailable(false);
    }

    /** What was chosen; only after OK. */
    BringChoice choice() {
        return choice;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(Messages.Bring_title);
    }

    @Override
    protected boolean isResizable() {
        return true;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        setTitle(NLS.bind(Messages.Bring_heading, art.getFileName()));
        setMessage(Messages.Bring_message);
        Composite body = new Composite(area, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(body);
        new Label(body, SWT.NONE).setText(Messages.Bring_window);
        window = new Combo(body, SWT.DROP_DOWN);
        window.add(BringChoice.nextName(windows));
        windows.forEach(window::add);
        window.select(0);
        new Label(body, SWT.NONE).setText(Messages.Bring_windowTitle);
        title = new Text(body, SWT.BORDER);
        new Label(body, SWT.NONE).setText(Messages.Bring_width);
        width = new Text(body, SWT.BORDER);
        width.setMessage(Messages.Bring_asDrawn);
        for (Control field : new Control[] {window, title, width}) {
            field.addListener(SWT.Modify, event -> check());
        }
        GridLayoutFactory.swtDefaults().numColumns(2).margins(10, 10).generateLayout(body);
        return area;
    }

    @Override
    protected Control createContents(Composite parent) {
        Control contents = super.createContents(parent);
        check();
        return contents;
    }

    private void check() {
        boolean known = windows.contains(window.getText().strip());
        title.setEnabled(!known);
        String wrong = null;
        OptionalDouble widthMm = OptionalDouble.empty();
        if (window.getText().isBlank()) {
            wrong = Messages.Bring_noWindow;
        } else if (!width.getText().isBlank()) {
            widthMm = lengths.mm(width.getText());
            wrong = widthMm.isEmpty() || widthMm.getAsDouble() < 1 ? Messages.Bring_noLength : null;
        }
        setErrorMessage(wrong);
        choice = wrong == null ? new BringChoice(art, window.getText().strip(), known ? "" : title.getText().strip(), widthMm) : null;
        setMessage(known ? Messages.Bring_revision : Messages.Bring_message);
        Button ok = getButton(OK);
        if (ok != null) {
            ok.setEnabled(wrong == null);
        }
    }
}
