package saddlebar.ui.documents;

import saddlebar.report.document.ReportKind;
import saddlebar.report.document.ReportPaper;

/**
 * A document that is wanted.
 *
 * @param language {@code en} or {@code de}
 * @param piece    for a remake sheet, such as {@code W01/12}; else empty
 */
public record DocumentWish(ReportKind kind, String language, ReportPaper paper, String piece) {
    /** Whether all is there that it needs. */
    public boolean complete() {
        return kind != ReportKind.REMAKE || !piece.isBlank();
    }
}
