package saddlebar.ui.begin;

import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

import saddlebar.model.commission.UnitSystem;
import saddlebar.ui.FieldWords;
import saddlebar.ui.Messages;

/** Asks what a new commission is called, where it lies, with which studio, in which units. What is wrong stands under its field. */
final class NewDialog extends TitleAreaDialog {
    private static final int COLUMNS = 3;
    private static final int FIELD_CHARS = 56;

    private final Path parentFolder;
    private final UnitSystem usualUnits;
    private final boolean hasTables;
    private Text title;
    private Text folder;
    private Button own;
    private Button shared;
    private Text studio;
    private Button browseStudio;
    private Button inches;
    private FieldWords aboutTitle;
    private FieldWords aboutFolder;
    private FieldWords aboutStudio;
    private boolean titleTouched;
    private boolean folderByHand;
    private boolean following;
    private Optional<NewChoice> choice = Optional.empty();

    /**
     * @param parentFolder where the folder is proposed
     * @param usualUnits   chosen at first
     * @param hasTables    whether there is something to stock a studio from
     */
    NewDialog(Shell shell, Path parentFolder, UnitSystem usualUnits, boolean hasTables) {
        super(shell);
        this.parentFolder = parentFolder;
        this.usualUnits = usualUnits;
        this.hasTables = hasTables;
        setHelpAvailable(false);
    }

    /** What was chosen; only after OK. */
    Optional<NewChoice> choice() {
        return choice;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(Messages.New_title);
    }

    @Override
    protected boolean isResizable() {
        return true;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.New_create, true);
        createButton(parent, IDialogConstants.CANCEL_ID, Messages.Save_cancel, false);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        setTitle(Messages.New_title);
        setMessage(Messages.New_message);
        Composite body = new Composite(area, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(body);
        GridLayoutFactory.swtDefaults().numColumns(COLUMNS).margins(12, 12).spacing(8, 4).applyTo(body);
        int width = convertWidthInCharsToPixels(FIELD_CHARS);

        title = field(body, Messages.New_titleField, width, 2);
        aboutTitle = new FieldWords(body, COLUMNS).width(width);
        folder = field(body, Messages.New_folder, width, 1);
        browse(body, Messages.New_chooseParent, folder, true);
        aboutFolder = new FieldWords(body, COLUMNS).width(width);

        label(body, Messages.New_studio);
        Composite studios = new Composite(body, SWT.NONE);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(studios);
        GridLayoutFactory.fillDefaults().numColumns(1).spacing(0, 4).applyTo(studios);
        own = radio(studios, hasTables ? Messages.New_ownStudio : Messages.New_ownEmptyStudio, true);
        shared = radio(studios, Messages.New_sharedStudio, false);
        new Label(body, SWT.NONE);
        studio = new Text(body, SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(studio);
        browseStudio = browse(body, Messages.New_chooseStudio, studio, false);
        aboutStudio = new FieldWords(body, COLUMNS).width(width);

        label(body, Messages.New_units);
        Composite units = new Composite(body, SWT.NONE);
        GridDataFactory.fillDefaults().span(2, 1).applyTo(units);
        GridLayoutFactory.fillDefaults().numColumns(1).spacing(0, 4).applyTo(units);
        radio(units, Messages.New_mm, usualUnits != UnitSystem.INCH);
        inches = radio(units, Messages.New_inch, usualUnits == UnitSystem.INCH);

        follow();
        title.addListener(SWT.Modify, event -> {
            titleTouched = true;
            follow();
            check();
        });
        folder.addListener(SWT.Modify, event -> {
            folderByHand |= !following;
            check();
        });
        studio.addListener(SWT.Modify, event -> check());
        for (Button button : new Button[] {own, shared, inches}) {
            button.addListener(SWT.Selection, event -> check());
        }
        return area;
    }

    private Text field(Composite body, String words, int width, int columns) {
        label(body, words);
        Text text = new Text(body, SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, false).span(columns, 1).align(SWT.FILL, SWT.CENTER).hint(width, SWT.DEFAULT).applyTo(text);
        return text;
    }

    private static void label(Composite body, String words) {
        Label label = new Label(body, SWT.NONE);
        label.setText(words);
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.BEGINNING).indent(0, 4).applyTo(label);
    }

    private static Button radio(Composite parent, String words, boolean on) {
        Button button = new Button(parent, SWT.RADIO);
        button.setText(words);
        button.setSelection(on);
        return button;
    }

    private Button browse(Composite body, String message, Text into, boolean parentOnly) {
        Button button = new Button(body, SWT.PUSH);
        button.setText(Messages.New_browse);
        setButtonLayoutData(button);
        button.addListener(SWT.Selection, event -> {
            DirectoryDialog dialog = new DirectoryDialog(getShell());
            dialog.setText(Messages.New_title);
            dialog.setMessage(message);
            dialog.setFilterPath(parentFolder.toString());
            String chosen = dialog.open();
            if (chosen != null) {
                into.setText(parentOnly ? proposed(Path.of(chosen)).toString() : chosen);
            }
        });
        return button;
    }

    /** The folder follows the title until somebody writes another one. */
    private void follow() {
        if (!folderByHand) {
            following = true;
            folder.setText(proposed(parentFolder).toString());
            following = false;
        }
    }

    private Path proposed(Path parent) {
        String name = NewChoice.folderName(title.getText());
        return name.isEmpty() ? parent : parent.resolve(name);
    }

    @Override
    protected Control createContents(Composite parent) {
        Control contents = super.createContents(parent);
        check();
        title.setFocus();
        return contents;
    }

    private void check() {
        NewForm form = new NewForm(title.getText(), folder.getText(), shared.getSelection(), studio.getText(),
                inches.getSelection() ? UnitSystem.INCH : UnitSystem.MM);
        studio.setEnabled(shared.getSelection());
        browseStudio.setEnabled(shared.getSelection());
        show(aboutTitle, titleTouched ? form.aboutTitle() : NewForm.Words.NONE);
        show(aboutFolder, titleTouched || folderByHand ? form.aboutFolder() : NewForm.Words.NONE);
        show(aboutStudio, form.aboutStudio());
        choice = form.choice();
        Button ok = getButton(IDialogConstants.OK_ID);
        if (ok != null) {
            ok.setEnabled(choice.isPresent());
        }
    }

    private static void show(FieldWords at, NewForm.Words words) {
        if (words.wrong()) {
            at.wrong(words.text());
        } else {
            at.hint(words.text());
        }
    }
}
