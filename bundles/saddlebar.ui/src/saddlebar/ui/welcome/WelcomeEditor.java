package saddlebar.ui.welcome;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.PixelConverter;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.forms.events.IHyperlinkListener;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.Hyperlink;
import org.eclipse.ui.forms.widgets.ScrolledForm;
import org.eclipse.ui.part.EditorPart;

import saddlebar.ui.Messages;
import saddlebar.ui.StudioPreferences;
import saddlebar.ui.begin.BeginningCommission;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.CommissionOpening;
import saddlebar.ui.desk.FileDrop;
import saddlebar.ui.desk.RecentCommissions;
import saddlebar.ui.make.BringingArtwork;

/** Says what to do next: begin or open a commission, or bring the first drawing of one that has no windows yet. */
public final class WelcomeEditor extends EditorPart {
    private static final int READABLE_WIDTH_CHARS = 70;
    private ScrolledForm form;

    @Override
    public void init(IEditorSite site, IEditorInput input) {
        setSite(site);
        setInput(input);
    }

    @Override
    public void createPartControl(Composite parent) {
        FormToolkit toolkit = new FormToolkit(parent.getDisplay());
        parent.addListener(SWT.Dispose, event -> toolkit.dispose());
        form = toolkit.createScrolledForm(parent);
        Composite body = form.getBody();
        GridLayoutFactory.swtDefaults().margins(8, 12).spacing(0, 10).applyTo(body);
        IWorkbenchWindow window = getSite().getWorkbenchWindow();
        getSite().getService(CommissionDesk.class).commission().ifPresentOrElse(open -> bringFirst(toolkit, body, open.title()),
                () -> openFirst(toolkit, body));
        new FileDrop(window).on(body);
    }

    /** A commission lies open, but has no windows yet. */
    private void bringFirst(FormToolkit toolkit, Composite body, String title) {
        form.setText(title);
        paragraph(toolkit, body, Messages.Welcome_noWindows);
        link(toolkit, body, Messages.Welcome_bring, () -> new BringingArtwork(getSite().getWorkbenchWindow()).choose());
        paragraph(toolkit, body, Messages.Welcome_dragArt);
    }

    private void openFirst(FormToolkit toolkit, Composite body) {
        form.setText(Messages.Welcome_title);
        paragraph(toolkit, body, Messages.Welcome_what);
        link(toolkit, body, Messages.Welcome_new, () -> new BeginningCommission(getSite().getWorkbenchWindow()).choose());
        link(toolkit, body, Messages.Welcome_open, () -> new CommissionOpening(getSite().getWorkbenchWindow()).choose());
        paragraph(toolkit, body, Messages.Welcome_drag);
        List<Path> recent = new RecentCommissions(StudioPreferences.store()).all().stream().filter(Files::isDirectory).toList();
        if (!recent.isEmpty()) {
            paragraph(toolkit, body, Messages.Welcome_recent);
            for (Path path : recent) {
                link(toolkit, body, path.getFileName() + "  (" + path.getParent() + ")",
                        () -> new CommissionOpening(getSite().getWorkbenchWindow()).open(path));
            }
        }
    }

    private static void paragraph(FormToolkit toolkit, Composite body, String words) {
        Label label = toolkit.createLabel(body, words, SWT.WRAP);
        int width = new PixelConverter(label).convertWidthInCharsToPixels(READABLE_WIDTH_CHARS);
        GridDataFactory.swtDefaults().hint(width, SWT.DEFAULT).applyTo(label);
    }

    private void link(FormToolkit toolkit, Composite body, String words, Runnable deed) {
        Hyperlink link = toolkit.createHyperlink(body, words, SWT.NONE);
        link.addHyperlinkListener(IHyperlinkListener.linkActivatedAdapter(event -> deed.run()));
    }

    @Override
    public void setFocus() {
        form.setFocus();
    }

    @Override
    public boolean isDirty() {
        return false;
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        throw new UnsupportedOperationException("there is nothing to save");
    }

    @Override
    public void doSaveAs() {
        throw new UnsupportedOperationException("there is nothing to save");
    }
}
