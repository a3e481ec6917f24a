package saddlebar.production.document;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

import saddlebar.report.document.ReportKind;
import saddlebar.report.document.ReportPaper;

/**
 * A document that is asked for.
 *
 * @param windows  names; empty for all
 * @param language {@code en} or {@code de}
 * @param day      that stands on it
 * @param piece    for a remake, such as {@code W01/12}; else empty
 * @param html     for mail instead of PDF
 * @param target   replaced if it exists
 */
public record ReportRequest(ReportKind kind, List<String> windows, String language, ReportPaper paper, LocalDate day, String piece, boolean html, Path target) {
    public ReportRequest {
        Objects.requireNonNull(kind, "kind");
        windows = List.copyOf(windows);
        Objects.requireNonNull(language, "language");
        Objects.requireNonNull(paper, "paper");
        Objects.requireNonNull(day, "day");
        Objects.requireNonNull(piece, "piece");
        Objects.requireNonNull(target, "target");
    }
}
