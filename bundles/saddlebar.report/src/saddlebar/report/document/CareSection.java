package saddlebar.report.document;

import java.util.List;
import java.util.Set;

import org.osgi.service.component.annotations.Component;

import saddlebar.report.document.Leaf.Column;

/** How a window is fixed, cleaned and looked after, and what whoever mends it must know. */
@Component(service = ReportSection.class)
public final class CareSection implements ReportSection {
    @Override
    public Set<ReportKind> kinds() {
        return Set.of(ReportKind.DOSSIER);
    }

    @Override
    public int order() {
        return 500;
    }

    @Override
    public boolean speaks(ReportMatter matter) {
        return true;
    }

    @Override
    public void write(ReportMatter matter, Leaf leaf) {
        Words words = leaf.words();
        leaf.heading(words.of("fixing"));
        leaf.paragraph(words.of("fixing.words"));
        List<ReportMatter.Deed> fixed = matter.deeds().stream().filter(deed -> deed.kind().equals("fix")).toList();
        if (!fixed.isEmpty()) {
            leaf.table(List.of(words.of("day"), words.of("window"), words.of("who"), words.of("note")),
                    List.of(Column.NARROW, Column.NARROW, Column.TEXT, Column.TEXT),
                    fixed.stream().map(deed -> List.of(words.shortDay(deed.day()), deed.word("window"), deed.who(), deed.note())).toList());
        }
        leaf.caution(words.of("caution.building"));
        leaf.heading(words.of("care"));
        leaf.list(List.of(words.of("care.1"), words.of("care.2"), words.of("care.3"), words.of("care.4")));
        leaf.heading(words.of("conservation"));
        leaf.paragraph(words.of("conservation.1"));
        leaf.paragraph(words.of("conservation.2"));
        leaf.caution(words.of("caution.conservation"));
        if (!matter.data().isEmpty()) {
            leaf.remark(words.of("data.within", String.join(", ", matter.data().stream().map(ReportMatter.Attachment::name).toList())));
        }
    }
}
