package saddlebar.report.document;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferencePolicyOption;

import saddlebar.model.file.PendingFile;
import saddlebar.model.problem.Refusal;
import saddlebar.report.document.Leaf.Heading;

/** Puts documents together from all sections that are installed. */
@Component(service = Reports.class)
public final class Reports {
    private final List<ReportSection> sections;

    @Activate // static and greedy: a newcomer makes a new collector
    public Reports(@Reference(policyOption = ReferencePolicyOption.GREEDY) List<ReportSection> sections) {
        this.sections = sections.stream().sorted(Comparator.comparingInt(ReportSection::order).thenComparing(section -> section.getClass().getName())).toList();
    }

    /** Those of this product, for tests and programs without a platform. */
    public static Reports own() {
        return new Reports(List.of(new TitleSection(), new VidimusSection(), new SizesSection(), new PriceSection(), new TermsSection(), new StandingSection(),
                new CuttingSection(), new CardsSection(), new AsMadeSection(), new CareSection(), new EntrySection(), new RemakeSection(),
                new DefectSection()));
    }

    /** @throws Refusal if there is nothing to say but the title */
    public void writePdf(ReportMatter matter, Words words, ReportPaper paper, Path target) throws IOException {
        Leaf leaf = written(matter, words, paper);
        String studio = Leaf.text(matter.studio().getName());
        String head = studio.isEmpty() || studio.equals(title(matter, words)) ? title(matter, words) : studio + "  \u00b7  " + title(matter, words);
        String foot = words.of("kind." + matter.kind().word()) + "  \u00b7  " + words.day(matter.day());
        String css = ReportStyle.css(paper, ReportStyle.accent(matter.studio().getAccent()), head, foot);
        ReportPdf.write(page(matter, words, leaf, css, true), matter.day(), matter.data(), target);
    }

    /** The same as one HTML file with its pictures within, to be sent by mail. */
    public void writeHtml(ReportMatter matter, Words words, Path target) throws IOException {
        Leaf leaf = written(matter, words, ReportPaper.A4);
        String css = ReportStyle.plain(ReportStyle.accent(matter.studio().getAccent()))
                + "body { max-width: 175mm; margin: 8mm auto; padding: 0 4mm; } img { max-width: 100%; }";
        try (PendingFile pending = PendingFile.beside(target)) {
            pending.out().write(page(matter, words, leaf, css, false).getBytes(StandardCharsets.UTF_8));
            pending.commit();
        }
    }

    private Leaf written(ReportMatter matter, Words words, ReportPaper paper) {
        Leaf leaf = new Leaf(words);
        List<ReportSection> speaking = sections.stream().filter(section -> section.kinds().contains(matter.kind()) && section.speaks(matter)).toList();
        if (speaking.size() < 2) {
            throw new Refusal(matter.kind().word(), "there is nothing to write about yet", words.of("nothing." + matter.kind().word()));
        }
        for (ReportSection section : speaking) {
            section.write(matter, leaf);
        }
        return leaf;
    }

    static String title(ReportMatter matter, Words words) {
        String title = Leaf.text(matter.commission().getTitle());
        return title.isEmpty() ? words.of("untitled") : title;
    }

    private static String page(ReportMatter matter, Words words, Leaf leaf, String css, boolean bookmarks) {
        StringBuilder html = new StringBuilder("<!DOCTYPE html>\n<html lang=\"").append(words.language()).append("\"><head><meta charset=\"UTF-8\"/><title>");
        String kind = words.of("kind." + matter.kind().word());
        html.append(Leaf.escaped(kind + ": " + title(matter, words))).append("</title><meta name=\"author\" content=\"")
                .append(Leaf.escaped(Leaf.text(matter.studio().getName())))
                .append("\"/><meta name=\"subject\" content=\"").append(Leaf.escaped(kind)).append("\"/><meta name=\"description\" content=\"")
                .append(Leaf.escaped(kind)).append("\"/>");
        if (bookmarks) {
            html.append("<bookmarks><bookmark name=\"").append(Leaf.escaped(title(matter, words))).append("\" href=\"#h0\"/>");
            bookmarks(html, leaf.headings());
            html.append("</bookmarks>");
        }
        return html.append("<style>\n").append(css).append("</style></head>\n<body>\n").append(leaf.html()).append("</body></html>\n").toString();
    }

    private static void bookmarks(StringBuilder html, List<Heading> headings) {
        boolean open = false;
        for (Heading heading : new ArrayList<>(headings)) {
            if (heading.level() == 2) {
                html.append(open ? "</bookmark>" : "").append("<bookmark name=\"").append(Leaf.escaped(heading.title())).append("\" href=\"#")
                        .append(heading.id()).append("\">");
                open = true;
            } else {
                html.append("<bookmark name=\"").append(Leaf.escaped(heading.title())).append("\" href=\"#").append(heading.id()).append("\"/>");
            }
        }
        html.append(open ? "</bookmark>" : "");
    }
}
