package saddlebar.ui.tracing;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.osgi.util.NLS;

import saddlebar.production.trace.SettingRow;
import saddlebar.ui.Columns;

/** Settings of that day beside today's, those that differ first. */
public final class ThenNowView extends TraceTableView<SettingRow> {
    @Override
    protected void columns(Columns columns) {
        column(columns, Messages.Column_subject, 1, "W08 lettering", SettingRow::subject);
        column(columns, Messages.Column_setting, 1, "sightLineMm", SettingRow::setting);
        column(columns, Messages.Column_then, 2, "trace brown-black", row -> (row.differs() ? "\u2260 " : "") + row.then());
        column(columns, Messages.Column_now, 2, "trace brown-black", SettingRow::now);
    }

    @Override
    protected List<SettingRow> lines(TraceDesk from) {
        List<SettingRow> all = from.trail().settings();
        return Stream.concat(all.stream().filter(SettingRow::differs), all.stream().filter(row -> !row.differs())).toList();
    }

    @Override
    protected String heading(TraceDesk from) {
        List<SettingRow> all = from.trail().settings();
        long differing = all.stream().filter(SettingRow::differs).count();
        return all.isEmpty()
                ? Messages.ThenNow_none
                : differing == 0
                        ? NLS.bind(Messages.ThenNow_all, all.size())
                        : NLS.bind(Messages.ThenNow_count, differing, all.size());
    }
}
