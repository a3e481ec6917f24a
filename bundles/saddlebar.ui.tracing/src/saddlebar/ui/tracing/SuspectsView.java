package saddlebar.ui.tracing;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;

import saddlebar.trace.suspect.Findings;
import saddlebar.trace.suspect.Level;
import saddlebar.trace.suspect.Suspect;
import saddlebar.ui.Columns;

/** What goes with flaws, the clearest first; choosing one lists every piece that met it. It says where to look, not who is at fault. */
public final class SuspectsView extends TraceTableView<Suspect> {
    @Override
    protected void columns(Columns columns) {
        column(columns, Messages.Column_factor, 2, "shelf_place back left", suspect -> suspect.levels().stream().map(Level::toString)
                .collect(Collectors.joining(" / ")));
        column(columns, Messages.Column_exposed, 0, "888 of 888", suspect -> NLS.bind(Messages.Suspects_share, suspect.table().badExposed(),
                suspect.table().exposed()));
        column(columns, Messages.Column_other, 0, "888 of 8888", suspect -> NLS.bind(Messages.Suspects_share, suspect.table().badOther(),
                suspect.table().total() - suspect.table().exposed()));
        column(columns, Messages.Column_q, 0, "0.00012", suspect -> String.format(Locale.getDefault(), "%.2g", suspect.adjusted()));
        column(columns, Messages.Column_follows, 3, Messages.Follows_leading, suspect -> KindWords.of(suspect.standing()));
    }

    @Override
    protected List<Suspect> lines(TraceDesk from) {
        return from.overview().findings().suspects();
    }

    @Override
    protected String heading(TraceDesk from) {
        Findings findings = from.overview().findings();
        return findings.units() == 0 ? Messages.Suspects_none : NLS.bind(Messages.Suspects_count, findings.units(), findings.bad());
    }

    @Override
    protected void chosen(Suspect suspect) {
        desk().meet(suspect.levels().get(0));
    }
}
