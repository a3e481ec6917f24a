package saddlebar.report.document;

import java.util.Set;

/** A part of documents. Whoever wants another part adds a bundle with one such service; a new method here without a default would break them. */
public interface ReportSection {
    /** Documents that it is a part of. */
    Set<ReportKind> kinds();

    /** Its place: lower numbers first; the product's own are 100, 200, … */
    int order();

    /** Whether there is anything to say; a section with nothing to say leaves no heading. */
    boolean speaks(ReportMatter matter);

    void write(ReportMatter matter, Leaf leaf);
}
