package saddlebar.ui.make;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;

import org.eclipse.jface.dialogs.IDialogConstants;
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

import saddlebar.ui.FieldWords;
import saddlebar.ui.Messages;
import saddlebar.ui.TypedLength;

/** Asks to which window a drawing belongs and how large it is in glass. */
final class BringDialog extends TitleAreaDialog {
    private static final int FIELD_CHARS = 64;

    private final Path art;
    private final List<String> windows;
    private final TypedLength lengths;
    private Combo window;
    private Text title;
    private Text width;
    private FieldWords aboutWindow;
    private FieldWords aboutWidth;
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
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.Bring_bring, true);
        createButton(parent, IDialogConstants.CANCEL_ID, Messages.Save_cancel, false);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        setTitle(NLS.bind(Messages.Bring_heading, art.getFileName()));
        setMessage(Messages.Bring_message);
        Composite body = new Composite(area, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(body);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(12, 12).spacing(8, 4).applyTo(body);
        int wide = convertWidthInCharsToPixels(FIELD_CHARS);
        new Label(body, SWT.NONE).setText(Messages.Bring_window);
        window = new Combo(body, SWT.DROP_DOWN);
        window.add(BringChoice.nextName(windows));
        windows.forEach(window::add);
        window.select(0);
        field(window);
        aboutWindow = new FieldWords(body, 2).width(wide);
        new Label(body, SWT.NONE).setText(Messages.Bring_windowTitle);
        title = new Text(body, SWT.BORDER);
        field(title);
        title.setMessage(Messages.Bring_titleFromFile);
        new FieldWords(body, 2);
        new Label(body, SWT.NONE).setText(Messages.Bring_width);
        width = new Text(body, SWT.BORDER);
        width.setMessage(Messages.Bring_asDrawn);
        field(width);
        aboutWidth = new FieldWords(body, 2).width(wide);
        for (Control field : new Control[] {window, title, width}) {
            field.addListener(SWT.Modify, event -> check());
        }
        return area;
    }

    private static void field(Control field) {
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(field);
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
        boolean named = !window.getText().isBlank();
        if (named) {
            aboutWindow.hint(known ? Messages.Bring_revision : Messages.Bring_newWindow);
        } else {
            aboutWindow.wrong(Messages.Bring_noWindow);
        }
        OptionalDouble widthMm = width.getText().isBlank() ? OptionalDouble.empty() : lengths.mm(width.getText());
        boolean measured = width.getText().isBlank() || widthMm.isPresent() && widthMm.getAsDouble() >= 1;
        if (measured) {
            aboutWidth.hint("");
        } else {
            aboutWidth.wrong(Messages.Bring_noLength);
        }
        boolean right = named && measured;
        choice = right ? new BringChoice(art, window.getText().strip(), known ? "" : title.getText().strip(), widthMm) : null;
        Button ok = getButton(OK);
        if (ok != null) {
            ok.setEnabled(right);
        }
    }
}
