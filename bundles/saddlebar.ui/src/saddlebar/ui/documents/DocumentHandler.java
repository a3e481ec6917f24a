package saddlebar.ui.documents;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

import saddlebar.report.document.ReportKind;
import saddlebar.ui.Ids;

/** Report menu: shows the documents' part with one kind chosen, and writes it. */
public final class DocumentHandler extends AbstractHandler {
    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        ReportKind kind = ReportKind.ofWord(String.valueOf(event.getParameter(Ids.DOCUMENT_KIND))).orElse(ReportKind.PROPOSAL);
        try {
            DocumentsView view = (DocumentsView) HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage().showView(Ids.DOCUMENTS_VIEW);
            view.choose(kind);
        } catch (PartInitException e) {
            throw new ExecutionException("the documents' part is part of the product", e);
        }
        return null;
    }
}
