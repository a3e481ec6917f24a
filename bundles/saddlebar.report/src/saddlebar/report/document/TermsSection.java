package saddlebar.report.document;

import java.util.List;
import java.util.Set;

import org.osgi.service.component.annotations.Component;

/** Terms of business, and where to sign. */
@Component(service = ReportSection.class)
public final class TermsSection implements ReportSection {
    @Override
    public Set<ReportKind> kinds() {
        return Set.of(ReportKind.PROPOSAL);
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
        leaf.together().heading(words.of("terms"));
        String own = Leaf.text(matter.studio().getTerms());
        if (own.isEmpty()) {
            leaf.list(List.of(words.of("terms.1"), words.of("terms.2"), words.of("terms.3"), words.of("terms.4"), words.of("terms.5")));
        } else {
            leaf.list(own.lines().map(String::strip).filter(line -> !line.isEmpty()).toList());
        }
        leaf.subheading(words.of("approval"));
        leaf.paragraph(words.of("approval.words"));
        leaf.blanks(List.of(words.of("place.and.day"), words.of("for.the.client"), words.of("for.the.studio"))).endTogether();
    }
}
