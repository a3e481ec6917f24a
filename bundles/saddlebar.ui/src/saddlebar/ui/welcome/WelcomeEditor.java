package saddlebar.ui.welcome;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.PixelConverter;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.forms.events.IHyperlinkListener;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.Hyperlink;
import org.eclipse.ui.forms.widgets.ScrolledForm;
import org.eclipse.ui.part.EditorPart;

import saddlebar.ui.Messages;
import saddlebar.ui.StudioPreferences;
import saddlebar.ui.desk.CommissionOpening;
import saddlebar.ui.desk.FileDrop;
import saddlebar.ui.desk.RecentCommissions;

/** Says what to do next: open a commission, or one of the last ones. */
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
        form.setText(Messages.Welcome_title);
        Composite body = form.getBody();
        GridLayoutFactory.swtDefaults().margins(24, 16).spacing(0, 10).applyTo(body);
        paragraph(toolkit, body, Messages.Welcome_what);
        link(toolkit, body, Messages.Welcome_open, opening -> opening.choose());
        paragraph(toolkit, body, Messages.Welcome_drag);
        List<Path> recent = new RecentCommissions(StudioPreferences.store()).all().stream().filter(Files::isDirectory).toList();
        if (!recent.isEmpty()) {
            paragraph(toolkit, body, Messages.Welcome_recent);
            for (Path path : recent) {
                link(toolkit, body, path.getFileName() + "  (" + path.getParent() + ")", opening -> opening.open(path));
            }
        }
        paragraph(toolkit, body, Messages.Welcome_new);
        new FileDrop(getSite().getWorkbenchWindow()).on(body);
    }

    private static void paragraph(FormToolkit toolkit, Composite body, String words) {
        Label label = toolkit.createLabel(body, words, SWT.WRAP);
        int width = new PixelConverter(label).convertWidthInCharsToPixels(READABLE_WIDTH_CHARS);
        GridDataFactory.swtDefaults().hint(width, SWT.DEFAULT).applyTo(label);
    }

    private void link(FormToolkit toolkit, Composite body, String words, Consumer<CommissionOpening> deed) {
        Hyperlink link = toolkit.createHyperlink(body, words, SWT.NONE);
        link.addHyperlinkListener(IHyperlinkListener.linkActivatedAdapter(event -> deed.accept(new CommissionOpening(getSite().getWorkbenchWindow()))));
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
