package saddlebar.report.document;

import java.util.List;
import java.util.Set;

import org.osgi.service.component.annotations.Component;

import saddlebar.report.document.Leaf.Column;

/** What was found wrong, the way back to where it came from, and what else may be like it. */
@Component(service = ReportSection.class)
public final class DefectSection implements ReportSection {
    @Override
    public Set<ReportKind> kinds() {
        return Set.of(ReportKind.DEFECT);
    }

    @Override
    public int order() {
        return 200;
    }

    @Override
    public boolean speaks(ReportMatter matter) {
        return !matter.defects().isEmpty();
    }

    @Override
    public void write(ReportMatter matter, Leaf leaf) {
        Words words = leaf.words();
        leaf.heading(words.of("defects"));
        leaf.table(List.of(words.of("piece"), words.of("layer"), words.of("what"), words.of("severity"), words.of("day"), words.of("decided")),
                List.of(Column.NARROW, Column.NARROW, Column.TEXT, Column.NARROW, Column.NARROW, Column.TEXT),
                matter.defects().stream()
                        .map(defect -> List.of(defect.piece(), defect.layer(), words.known("defect.", defect.kind()),
                                words.known("severity.", defect.severity()),
                                words.shortDay(defect.day()), words.known("disposition.", defect.disposition())))
                        .toList());
        leaf.remark(words.of("not.a.fault"));
        for (ReportMatter.DefectFound defect : matter.defects()) {
            if (defect.wayBack().isEmpty() && defect.note().isEmpty()) {
                continue;
            }
            leaf.subheading(defect.piece() + "  " + words.known("defect.", defect.kind()));
            if (!defect.note().isEmpty()) {
                leaf.paragraph(defect.note());
            }
            if (!defect.wayBack().isEmpty()) {
                leaf.table(List.of(words.of("way.back"), words.of("which"), words.of("day")), List.of(Column.TEXT, Column.TEXT, Column.NARROW),
                        defect.wayBack().stream().map(row -> List.of(words.known("step.", row.get(0)), row.get(1), row.get(2))).toList());
            }
            if (!defect.exposed().isEmpty()) {
                leaf.paragraph(words.of("exposed", String.join(", ", defect.exposed())));
            }
        }
    }
}
