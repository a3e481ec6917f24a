package saddlebar.ui.make;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Text;

import saddlebar.production.bring.ArtLook;
import saddlebar.ui.FieldWords;
import saddlebar.ui.Messages;
import saddlebar.ui.TypedLength;
import saddlebar.ui.easel.ScreenPicture;

/** Asks to which window a drawing belongs, which page of it, how large it is in glass, and what its layers are for. */
final class BringDialog extends TitleAreaDialog {
    static final int PREVIEW_PX = 200;
    private static final int FIELD_CHARS = 64;

    /** Reads what a page shows, away from the screen's thread, and tells on it. */
    interface Looker {
        void look(String window, int page, Consumer<ArtLook> done, Consumer<String> refused);
    }

    private final Path art;
    private final List<String> windows;
    private final TypedLength lengths;
    private final Looker looker;
    private final RoleRows rows = new RoleRows();
    private Combo window;
    private Text title;
    private Text width;
    private Spinner page;
    private Label pages;
    private Label preview;
    private RoleTable roles;
    private FieldWords aboutWindow;
    private FieldWords aboutWidth;
    private FieldWords aboutRoles;
    private Image shown;
    private String lookedFor = "";
    private boolean looked;
    private BringChoice choice;

    BringDialog(Shell shell, Path art, List<String> windows, TypedLength lengths, Looker looker) {
        super(shell);
        this.art = art;
        this.windows = List.copyOf(windows);
        this.lengths = lengths;
        this.looker = looker;
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
        GridLayoutFactory.swtDefaults().numColumns(3).margins(12, 12).spacing(8, 4).applyTo(body);
        int wide = convertWidthInCharsToPixels(FIELD_CHARS);
        new Label(body, SWT.NONE).setText(Messages.Bring_window);
        window = new Combo(body, SWT.DROP_DOWN);
        window.add(BringChoice.nextName(windows));
        windows.forEach(window::add);
        window.select(0);
        field(window);
        preview = new Label(body, SWT.BORDER | SWT.CENTER);
        GridDataFactory.swtDefaults().align(SWT.END, SWT.BEGINNING).span(1, 8).hint(PREVIEW_PX + 12, PREVIEW_PX + 12).applyTo(preview);
        aboutWindow = new FieldWords(body, 2).width(wide);
        new Label(body, SWT.NONE).setText(Messages.Bring_windowTitle);
        title = new Text(body, SWT.BORDER);
        field(title);
        title.setMessage(Messages.Bring_titleFromFile);
        new Label(body, SWT.NONE).setText(Messages.Bring_page);
        pageField(body);
        new Label(body, SWT.NONE).setText(Messages.Bring_width);
        width = new Text(body, SWT.BORDER);
        width.setMessage(Messages.Bring_asDrawn);
        field(width);
        aboutWidth = new FieldWords(body, 2).width(wide);
        Label layers = new Label(body, SWT.WRAP);
        layers.setText(Messages.Bring_layers);
        GridDataFactory.fillDefaults().grab(true, false).span(3, 1).indent(0, 8).applyTo(layers);
        roles = new RoleTable(body, rows, 3, this::check);
        aboutRoles = new FieldWords(body, 3).width(wide);
        for (Control field : new Control[] {window, title, width}) {
            field.addListener(SWT.Modify, event -> check());
        }
        window.addListener(SWT.Modify, event -> look());
        page.addListener(SWT.Selection, event -> look());
        body.addListener(SWT.Dispose, event -> show(null));
        return area;
    }

    private void pageField(Composite body) {
        Composite row = new Composite(body, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(row);
        field(row);
        page = new Spinner(row, SWT.BORDER);
        page.setValues(1, 1, 1, 0, 1, 10);
        pages = new Label(row, SWT.NONE);
        pages.setText(Messages.Bring_reading);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(pages);
    }

    private static void field(Control field) {
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(field);
    }

    @Override
    protected Control createContents(Composite parent) {
        Control contents = super.createContents(parent);
        check();
        look();
        return contents;
    }

    private boolean known() {
        return windows.contains(window.getText().strip());
    }

    /** Reads the page anew if it, or the window whose layers are remembered, is another. */
    private void look() {
        String asked = (known() ? window.getText().strip() : "") + "/" + page.getSelection();
        if (asked.equals(lookedFor)) {
            return;
        }
        lookedFor = asked;
        looked = false;
        pages.setText(Messages.Bring_reading);
        check();
        looker.look(known() ? window.getText().strip() : "", page.getSelection(), look -> {
            if (asked.equals(lookedFor) && !pages.isDisposed()) {
                show(look);
            }
        }, refusal -> {
            if (asked.equals(lookedFor) && !pages.isDisposed()) {
                pages.setText("");
                setErrorMessage(refusal);
            }
        });
    }

    private void show(ArtLook look) {
        Image before = shown;
        shown = null;
        if (look != null) {
            setErrorMessage(null);
            looked = true;
            page.setValues(look.page(), 1, look.pages(), 0, 1, 10);
            page.setEnabled(look.pages() > 1);
            pages.setText(NLS.bind(Messages.Bring_ofPages, look.pages()));
            rows.read(look.layers());
            roles.show();
            BufferedImage paper = new BufferedImage(look.preview().getWidth(), look.preview().getHeight(), BufferedImage.TYPE_INT_RGB);
            Graphics2D g = paper.createGraphics();
            g.drawImage(look.preview(), 0, 0, Color.WHITE, null);
            g.dispose();
            shown = ScreenPicture.of(paper, 100).toImage(preview.getDisplay());
            preview.setImage(shown);
            check();
        }
        if (before != null) {
            before.dispose();
        }
    }

    private void check() {
        boolean known = known();
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
        Optional<RoleRows.Fault> fault = rows.fault();
        if (fault.isPresent()) {
            aboutRoles.wrong(fault.get() == RoleRows.Fault.TWICE ? Messages.Roles_twice : Messages.Roles_noCutline);
        } else {
            aboutRoles.hint(looked && rows.rows().isEmpty() ? Messages.Roles_noLayers : Messages.Roles_kept);
        }
        boolean right = named && measured && looked && !rows.rows().isEmpty() && fault.isEmpty();
        choice = right
                ? new BringChoice(art, window.getText().strip(), known ? "" : title.getText().strip(), widthMm, page.getSelection(), rows.rows())
                : null;
        Button ok = getButton(OK);
        if (ok != null) {
            ok.setEnabled(right);
        }
    }
}
