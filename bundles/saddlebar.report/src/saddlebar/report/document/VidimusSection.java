package saddlebar.report.document;

import java.util.List;
import java.util.Set;

import org.osgi.service.component.annotations.Component;

import saddlebar.model.commission.Window;

/** Each window as it will look with light behind it, colouring by colouring. */
@Component(service = ReportSection.class)
public final class VidimusSection implements ReportSection {
    @Override
    public Set<ReportKind> kinds() {
        return Set.of(ReportKind.PROPOSAL, ReportKind.PROGRESS, ReportKind.DOSSIER);
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
        leaf.headingOnNewPage(words.of(matter.kind() == ReportKind.PROPOSAL ? "designs" : "windows"));
        if (matter.kind() == ReportKind.PROPOSAL) {
            leaf.remark(words.of("light.promise"));
        }
        for (Window window : matter.windows()) {
            List<ReportMatter.WindowPicture> pictures = shown(matter, window);
            if (pictures.isEmpty()) {
                continue;
            }
            leaf.subheading((window.getName() + "  " + Leaf.text(window.getTitle())).strip());
            int across = pictures.size() == 1 ? 1 : Math.min(3, pictures.size());
            for (int from = 0; from < pictures.size(); from += across) {
                List<ReportMatter.WindowPicture> row = pictures.subList(from, Math.min(pictures.size(), from + across));
                leaf.figures(row.stream().map(ReportMatter.WindowPicture::picture).toList(), row.stream().map(picture -> caption(picture, words)).toList(),
                        168.0 * row.size() / across, pictures.size() == 1 ? 175 : 120);
            }
        }
    }

    /** A proposal shows every colouring, a later document the one that is made. */
    private static List<ReportMatter.WindowPicture> shown(ReportMatter matter, Window window) {
        List<ReportMatter.WindowPicture> all = matter.picturesOf(window.getName());
        return matter.kind() == ReportKind.PROPOSAL ? all : all.stream().filter(ReportMatter.WindowPicture::chosen).limit(1).toList();
    }

    private static String caption(ReportMatter.WindowPicture picture, Words words) {
        String name = picture.colourway().isEmpty() ? words.of("as.drawn") : picture.colourway();
        return picture.approved() ? words.of("colourway.approved", name) : name;
    }
}
