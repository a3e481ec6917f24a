package saddlebar.report.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.osgi.service.component.annotations.Component;

import saddlebar.model.commission.Window;

/** A sheet a window for a jury: the picture large, and what it is made of. */
@Component(service = ReportSection.class)
public final class EntrySection implements ReportSection {
    @Override
    public Set<ReportKind> kinds() {
        return Set.of(ReportKind.COMPETITION);
    }

    @Override
    public int order() {
        return 200;
    }

    @Override
    public boolean speaks(ReportMatter matter) {
        return !matter.pictures().isEmpty();
    }

    @Override
    public void write(ReportMatter matter, Leaf leaf) {
        Words words = leaf.words();
        boolean first = true;
        for (Window window : matter.windows()) {
            ReportMatter.WindowPicture picture = matter.picturesOf(window.getName()).stream().filter(ReportMatter.WindowPicture::chosen).findFirst()
                    .orElse(matter.picturesOf(window.getName()).stream().findFirst().orElse(null));
            if (picture == null) {
                continue;
            }
            String title = Leaf.text(window.getTitle()).isEmpty() ? Leaf.text(window.getName()) : Leaf.text(window.getTitle());
            if (first) {
                leaf.heading(title);
            } else {
                leaf.headingOnNewPage(title);
            }
            leaf.figures(List.of(picture.picture()), List.of(title), 168, first ? 120 : 165);
            List<List<String>> rows = new ArrayList<>();
            matter.panels().stream().filter(panel -> panel.window().equals(window.getName())).forEach(panel -> rows.add(List.of(words.of("size"),
                    words.size(panel.widthMm(), panel.heightMm()) + ", " + words.of("n.pieces", panel.pieces()) + ", " + words.number(panel.massKg(), 1)
                            + " kg")));
            boolean leaded = matter.panels().stream().anyMatch(panel -> panel.window().equals(window.getName()) && panel.leaded());
            rows.add(List.of(words.of("technique"), words.of(leaded ? "technique.leaded" : "technique.foiled")));
            rows.add(List.of(words.of("year"), String.valueOf(matter.day().getYear())));
            leaf.facts(rows);
            if (!Leaf.text(window.getNote()).isEmpty()) {
                leaf.paragraph(Leaf.text(window.getNote()));
            }
            first = false;
        }
    }
}
