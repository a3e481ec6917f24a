package saddlebar.report.document;

import java.util.List;
import java.util.Set;

import org.osgi.service.component.annotations.Component;

import saddlebar.report.document.Leaf.Column;

/** A piece to be made again: what it is, its settings then and now, its shape. */
@Component(service = ReportSection.class)
public final class RemakeSection implements ReportSection {
    @Override
    public Set<ReportKind> kinds() {
        return Set.of(ReportKind.REMAKE);
    }

    @Override
    public int order() {
        return 200;
    }

    @Override
    public boolean speaks(ReportMatter matter) {
        return matter.remake().isPresent();
    }

    @Override
    public void write(ReportMatter matter, Leaf leaf) {
        Words words = leaf.words();
        ReportMatter.Remake remake = matter.remake().orElseThrow();
        leaf.heading(words.of("piece.n", remake.piece()));
        leaf.facts(remake.facts());
        remake.shape().ifPresent(shape -> leaf.figures(List.of(shape), List.of(words.of("shape.caption")), 90, 90));
        leaf.heading(words.of("then.and.now"));
        if (remake.rows().isEmpty()) {
            leaf.paragraph(words.of("nothing.recorded"));
        } else {
            leaf.table(List.of(words.of("layer"), words.of("setting"), words.of("then"), words.of("now"), ""),
                    List.of(Column.NARROW, Column.TEXT, Column.TEXT, Column.TEXT, Column.NARROW),
                    remake.rows().stream().map(row -> List.of(row.layer(), row.setting(), row.then(), row.now(), row.differs() ? words.of("differs") : ""))
                            .toList());
        }
        leaf.caution(words.of("caution.cutting"));
        leaf.caution(words.of("caution.mix"));
        leaf.caution(words.of("caution.kiln"));
    }
}
