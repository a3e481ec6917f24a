package saddlebar.ui.documents;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

import saddlebar.model.problem.Refusal;
import saddlebar.report.document.ReportKind;
import saddlebar.report.document.ReportPaper;
import saddlebar.ui.Ids;
import saddlebar.ui.Messages;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.desk.SavingCommission;
import saddlebar.ui.make.MonitorWork;

/** A document of the open commission: what kind, in which language, on which paper; written in the background and shown page by page. */
public final class DocumentsView extends ViewPart {
    private static final List<String> LANGUAGES = List.of("en", "de");
    private Combo kind;
    private Combo language;
    private Combo paper;
    private Text piece;
    private Label pieceLabel;
    private Button write;
    private Button save;
    private PagesCanvas pages;
    private CommissionDesk desk;
    private Optional<Path> shown = Optional.empty();
    private final CommissionDesk.Listener onDesk = new CommissionDesk.Listener() {
        @Override
        public void opened(OpenCommission commission) {
            forget();
        }

        @Override
        public void closing(OpenCommission commission) {
            forget();
        }
    };

    @Override
    public void createPartControl(Composite parent) {
        desk = getSite().getService(CommissionDesk.class);
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(body);
        Composite row = new Composite(body, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(7).applyTo(row);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        kind = combo(row, List.of(ReportKind.values()).stream().map(DocumentsView::words).toList());
        language = combo(row, List.of(Messages.Documents_english, Messages.Documents_german));
        language.select(Locale.getDefault().getLanguage().equals("de") ? 1 : 0);
        paper = combo(row, List.of(Messages.Documents_a4, Messages.Documents_letter));
        pieceLabel = new Label(row, SWT.NONE);
        pieceLabel.setText(Messages.Documents_piece);
        piece = new Text(row, SWT.BORDER);
        piece.setMessage("W01/12");
        GridDataFactory.fillDefaults().hint(90, SWT.DEFAULT).applyTo(piece);
        write = new Button(row, SWT.PUSH);
        write.setText(Messages.Documents_write);
        save = new Button(row, SWT.PUSH);
        save.setText(Messages.Documents_saveAs);
        pages = new PagesCanvas(body);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(pages);
        kind.addListener(SWT.Selection, event -> state());
        piece.addListener(SWT.Modify, event -> state());
        write.addListener(SWT.Selection, event -> write());
        save.addListener(SWT.Selection, event -> saveAs());
        desk.addListener(onDesk);
        forget();
    }

    private static Combo combo(Composite row, List<String> items) {
        Combo combo = new Combo(row, SWT.READ_ONLY | SWT.DROP_DOWN);
        combo.setItems(items.toArray(String[]::new));
        combo.select(0);
        return combo;
    }

    static String words(ReportKind kind) {
        return switch (kind) {
            case PROPOSAL -> Messages.Documents_proposal;
            case PROGRESS -> Messages.Documents_progress;
            case WORKSHOP -> Messages.Documents_workshop;
            case DOSSIER -> Messages.Documents_dossier;
            case COMPETITION -> Messages.Documents_competition;
            case REMAKE -> Messages.Documents_remake;
            case DEFECT -> Messages.Documents_defect;
        };
    }

    /** Takes a kind from the menu and writes it, if all is there that it needs. */
    void choose(ReportKind wanted) {
        kind.select(wanted.ordinal());
        state();
        if (write.isEnabled()) {
            write();
        } else if (wanted == ReportKind.REMAKE) {
            piece.setFocus();
        }
    }

    private DocumentWish wish() {
        return new DocumentWish(ReportKind.values()[kind.getSelectionIndex()], LANGUAGES.get(language.getSelectionIndex()),
                ReportPaper.values()[paper.getSelectionIndex()],
                piece.getText().strip());
    }

    private void state() {
        boolean remake = wish().kind() == ReportKind.REMAKE;
        piece.setEnabled(remake);
        pieceLabel.setEnabled(remake);
        write.setEnabled(desk.commission().isPresent() && wish().complete());
        save.setEnabled(shown.isPresent());
    }

    private void forget() {
        if (!pages.isDisposed()) {
            shown = Optional.empty();
            pages.show(Optional.empty());
            pages.say(desk.commission().isPresent() ? Messages.Documents_chooseAndWrite : Messages.Documents_openFirst);
            state();
        }
    }

    private void write() {
        OpenCommission commission = desk.commission().orElseThrow();
        DocumentWriter writer = getSite().getService(DocumentWriter.class);
        if (writer == null || commission.isDirty() && !(MessageDialog.openConfirm(getSite().getShell(), Messages.Make_saveTitle, Messages.Documents_saveFirst)
                && new SavingCommission(getSite().getShell()).save(commission))) {
            return;
        }
        DocumentWish wish = wish();
        Path folder = commission.path();
        write.setEnabled(false);
        pages.say(NLS.bind(Messages.Documents_writing, words(wish.kind())));
        Job job = Job.create(NLS.bind(Messages.Documents_writing, words(wish.kind())), (ICoreRunnable) monitor -> {
            try {
                DocumentWriter.Written written = writer.write(folder, wish, new MonitorWork(SubMonitor.convert(monitor, DocumentWriter.WORK_UNITS)));
                later(() -> show(folder, written));
            } catch (IOException | Refusal e) {
                later(() -> refused(e.getMessage()));
                if (!(e instanceof Refusal)) {
                    throw new CoreException(new Status(IStatus.WARNING, Ids.PLUGIN, e.getMessage(), e));
                }
            }
        });
        job.setUser(false);
        job.schedule();
    }

    private void later(Runnable then) {
        getSite().getShell().getDisplay().asyncExec(() -> {
            if (!pages.isDisposed()) {
                then.run();
            }
        });
    }

    private void show(Path folder, DocumentWriter.Written written) {
        if (desk.commission().isPresent() && desk.commission().get().path().equals(folder)) {
            shown = Optional.of(written.file());
            pages.show(shown);
            setContentDescription(written.untold().isEmpty() ? "" : NLS.bind(Messages.Documents_untold, String.join(" ", written.untold())));
        }
        state();
    }

    private void refused(String sentence) {
        pages.show(Optional.empty());
        pages.say(sentence);
        state();
    }

    private void saveAs() {
        FileDialog dialog = new FileDialog(getSite().getShell(), SWT.SAVE);
        dialog.setOverwrite(true);
        dialog.setFilterExtensions(new String[] {"*.pdf"});
        dialog.setFileName(shown.orElseThrow().getFileName().toString());
        String chosen = dialog.open();
        if (chosen != null) {
            try {
                Files.copy(shown.orElseThrow(), Path.of(chosen), StandardCopyOption.REPLACE_EXISTING);
            } catch (IOException e) {
                MessageDialog.openError(getSite().getShell(), Messages.Save_failedTitle, e.getMessage());
            }
        }
    }

    @Override
    public void setFocus() {
        kind.setFocus();
    }

    @Override
    public void dispose() {
        desk.removeListener(onDesk);
        super.dispose();
    }
}
