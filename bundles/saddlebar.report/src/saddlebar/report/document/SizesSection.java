package saddlebar.report.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.osgi.service.component.annotations.Component;

import saddlebar.model.commission.Opening;
import saddlebar.model.commission.Window;
import saddlebar.report.document.Leaf.Column;

/** Openings and panels: sizes, pieces, weight, how they are carried. */
@Component(service = ReportSection.class)
public final class SizesSection implements ReportSection {
    @Override
    public Set<ReportKind> kinds() {
        return Set.of(ReportKind.PROPOSAL, ReportKind.DOSSIER);
    }

    @Override
    public int order() {
        return 300;
    }

    @Override
    public boolean speaks(ReportMatter matter) {
        return !matter.panels().isEmpty();
    }

    @Override
    public void write(ReportMatter matter, Leaf leaf) {
        Words words = leaf.words();
        leaf.heading(words.of("sizes"));
        List<List<String>> rows = new ArrayList<>();
        double mass = 0;
        for (ReportMatter.PanelPart panel : matter.panels()) {
            rows.add(List.of(panel.label(), opening(matter, panel, words), words.size(panel.widthMm(), panel.heightMm()),
                    words.of(panel.leaded() ? "leaded" : "foiled"),
                    words.number(panel.pieces(), 0), words.number(panel.massKg(), 1)));
            mass += panel.massKg();
        }
        leaf.table(List.of(words.of("panel"), words.of("opening"), words.of("panel.size"), words.of("joined"), words.of("pieces"), words.of("kg")),
                List.of(Column.NARROW, Column.NARROW, Column.NARROW, Column.TEXT, Column.NUMBER, Column.NUMBER), rows,
                rows.size() > 1 ? List.of(List.of(words.of("in.all"), "", "", "", "", words.number(mass, 1))) : List.of());
        leaf.remark(words.of("weights.reckoned"));
        leaf.caution(words.of("caution.building"));
    }

    private static String opening(ReportMatter matter, ReportMatter.PanelPart panel, Words words) {
        Opening opening = matter.windows().stream().filter(window -> panel.window().equals(window.getName())).map(Window::getOpening)
                .filter(found -> found != null).findFirst().orElse(null);
        if (opening == null || opening.getSightWidthMm() <= 0) {
            return "\u2013";
        }
        return words.size(opening.getSightWidthMm(), opening.getSightHeightMm()) + (opening.getCount() > 1 ? " (" + opening.getCount() + ")" : "");
    }
}
