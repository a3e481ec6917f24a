package saddlebar.production.pieces;

import java.util.ArrayList;
import java.util.List;

import saddlebar.cartoon.mend.Mend;
import saddlebar.production.facts.CommissionFacts.PlacedPanel;
import saddlebar.production.facts.CutFacts;
import saddlebar.production.facts.CutFacts.AgreedMend;
import saddlebar.production.facts.PanelFacts;

/** A panel's facts as they would be if somebody agreed to mends: for looking at the pieces before anything is changed. */
public final class MendedPanel {
    private MendedPanel() {
    }

    /** With these mends beside those that are agreed to. */
    public static PlacedPanel with(PlacedPanel placed, List<Mend> mends) {
        List<AgreedMend> all = new ArrayList<>(placed.panel().cut().mends());
        mends.forEach(mend -> all.add(new AgreedMend(mend.key(), mend.message(), mend.at().xMm(), mend.at().yMm())));
        return changed(placed, all);
    }

    /** As drawn. */
    public static PlacedPanel without(PlacedPanel placed) {
        return changed(placed, List.of());
    }

    private static PlacedPanel changed(PlacedPanel placed, List<AgreedMend> mends) {
        PanelFacts panel = placed.panel();
        CutFacts cut = panel.cut();
        CutFacts changed = new CutFacts(mends, cut.edgeAllowanceMm(), cut.outlineElement(), cut.joins(), cut.limits(), cut.locked());
        return new PlacedPanel(placed.window(), new PanelFacts(panel.id(), panel.name(), panel.art(), panel.cutlineLayer(), panel.join(), panel.gapMm(),
                panel.pieces(), panel.highestEver(), "", panel.layers(), changed));
    }
}
