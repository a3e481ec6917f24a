package saddlebar.ui.glazing;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Composite;

import saddlebar.materials.cost.PanelList;
import saddlebar.materials.metal.Reinforcement;
import saddlebar.production.cost.CommissionCosts;

/** Bars and ties of each panel by the studio's rule of thumb; the structural caution stands above them. */
public final class BarsView extends CostPart {
    private LineTable<PanelList.Row> bars;

    @Override
    void fill(Composite parent) {
        bars = new LineTable<>(parent, PanelList.Row.class).text(Messages.Metal_panel, 2, "W01 east", PanelList.Row::panel)
                .text(Messages.Bars_heights, 4, "000, 000 mm", row -> row.bars().heightsMm().isEmpty()
                        ? Messages.Bars_noBar
                        : row.bars().heightsMm().stream().map(mm -> CostWords.number(mm, 0)).collect(Collectors.joining(", ")) + " mm")
                .number(Messages.Bars_length, 2, "0000 mm", row -> row.bars().heightsMm().isEmpty() ? "" : CostWords.number(row.bars().barMm(), 0) + " mm")
                .number(Messages.Bars_ties, 1, "00", row -> row.bars().heightsMm().isEmpty() ? "" : String.valueOf(row.bars().ties()))
                .text(Messages.Bars_reason, 4, "", row -> row.bars().reason());
        GridDataFactory.fillDefaults().grab(true, true).hint(NARROW_PT, NARROW_PT).applyTo(bars.frame());
    }

    @Override
    String show(CommissionCosts now) {
        bars.show(now.panels().rows());
        return NLS.bind(Messages.Bars_caution, Reinforcement.CAUTION);
    }

    @Override
    void clear() {
        bars.show(List.of());
    }
}
