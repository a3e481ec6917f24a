package saddlebar.ui.documents;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.work.Work;
import saddlebar.production.document.ReportRequest;
import saddlebar.production.document.ReportWriting;

/** Documents as production writes them, dated today, under {@code made/reports}. */
@Component(service = DocumentWriter.class)
public final class ProductionDocumentWriter implements DocumentWriter {
    private final ReportWriting writing;

    @Activate
    public ProductionDocumentWriter(@Reference ReportWriting writing) {
        this.writing = writing;
    }

    @Override
    public Written write(Path commission, DocumentWish wish, Work work) throws IOException {
        Path target = commission.resolve("made").resolve("reports").resolve(wish.kind().word() + "-" + wish.language() + ".pdf");
        try (CommissionFolder folder = CommissionFolder.open(commission, Access.READ)) {
            List<String> untold = writing.write(folder,
                    new ReportRequest(wish.kind(), List.of(), wish.language(), wish.paper(), LocalDate.now(), wish.piece(), false, target), work);
            return new Written(target, untold);
        }
    }
}
