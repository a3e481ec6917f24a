package saddlebar.report.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.osgi.service.component.annotations.Component;

import saddlebar.model.commission.Milestone;
import saddlebar.report.document.Leaf.Column;

/** How far the work has come, and the days agreed on. */
@Component(service = ReportSection.class)
public final class StandingSection implements ReportSection {
    @Override
    public Set<ReportKind> kinds() {
        return Set.of(ReportKind.PROGRESS);
    }

    @Override
    public int order() {
        return 150;
    }

    @Override
    public boolean speaks(ReportMatter matter) {
        return !matter.states().isEmpty();
    }

    @Override
    public void write(ReportMatter matter, Leaf leaf) {
        Words words = leaf.words();
        leaf.heading(words.of("standing"));
        List<List<String>> rows = new ArrayList<>();
        for (ReportMatter.WindowState state : matter.states()) {
            int all = state.pieces().values().stream().mapToInt(Integer::intValue).sum();
            List<String> counts = new ArrayList<>();
            state.pieces().forEach((word, count) -> counts.add(count + " " + words.known("state.", word)));
            rows.add(List.of(state.window(), words.known("state.", state.state()), all == 0 ? words.of("no.pieces") : String.join(", ", counts)));
        }
        leaf.table(List.of(words.of("window"), words.of("stands"), words.of("pieces")), List.of(Column.TEXT, Column.NARROW, Column.TEXT), rows);
        List<Milestone> milestones = matter.commission().getMilestones();
        if (!milestones.isEmpty()) {
            leaf.subheading(words.of("days"));
            leaf.table(List.of(words.of("what"), words.of("due.on"), words.of("done.on")), List.of(Column.TEXT, Column.NARROW, Column.NARROW),
                    milestones.stream().map(stone -> List.of(Leaf.text(stone.getName()), stone.getDue() == null ? "" : words.day(stone.getDue()),
                            stone.getDone() == null ? "" : words.day(stone.getDone()))).toList());
        }
    }
}
