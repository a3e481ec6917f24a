package saddlebar.report.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.osgi.service.component.annotations.Component;

/** The head of the first page: who, what, for whom, when. */
@Component(service = ReportSection.class)
public final class TitleSection implements ReportSection {
    @Override
    public Set<ReportKind> kinds() {
        return Set.of(ReportKind.PROPOSAL, ReportKind.PROGRESS, ReportKind.WORKSHOP, ReportKind.DOSSIER, ReportKind.COMPETITION, ReportKind.REMAKE,
                ReportKind.DEFECT);
    }

    @Override
    public int order() {
        return 100;
    }

    @Override
    public boolean speaks(ReportMatter matter) {
        return true;
    }

    @Override
    public void write(ReportMatter matter, Leaf leaf) {
        Words words = leaf.words();
        List<List<String>> rows = new ArrayList<>();
        if (matter.commission().getClient() != null && !Leaf.text(matter.commission().getClient().getName()).isEmpty()) {
            rows.add(List.of(words.of("client"), Leaf.text(matter.commission().getClient().getName()) + line(matter.commission().getClient().getAddress())));
        }
        if (matter.commission().getSite() != null && !Leaf.text(matter.commission().getSite().getName()).isEmpty()) {
            rows.add(List.of(words.of("site"), Leaf.text(matter.commission().getSite().getName()) + line(matter.commission().getSite().getAddress())));
        }
        if (!Leaf.text(matter.commission().getNumber()).isEmpty()) {
            rows.add(List.of(words.of("number"), Leaf.text(matter.commission().getNumber())));
        }
        if (matter.remake().isPresent()) {
            rows.add(List.of(words.of("piece"), matter.remake().get().piece()));
        }
        rows.add(List.of(words.of("date"), words.day(matter.day())));
        leaf.title(matter, words.of("kind." + matter.kind().word()), Reports.title(matter, words), rows);
        if (matter.kind() == ReportKind.PROPOSAL || matter.kind() == ReportKind.PROGRESS || matter.kind() == ReportKind.DOSSIER) {
            leaf.paragraph(words.of("lead." + matter.kind().word(), matter.windows().size()));
        }
        if (matter.kind() == ReportKind.PROPOSAL || matter.kind() == ReportKind.DOSSIER) {
            matter.pictures().stream().filter(ReportMatter.WindowPicture::chosen).findFirst()
                    .ifPresent(picture -> leaf.figures(List.of(picture.picture()), List.of(""), 120, 118));
        }
    }

    private static String line(String text) {
        return Leaf.text(text).isEmpty() ? "" : "\n" + Leaf.text(text);
    }
}
