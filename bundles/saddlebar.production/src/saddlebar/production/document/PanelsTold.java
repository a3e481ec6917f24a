package saddlebar.production.document;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import saddlebar.materials.job.CostJob;
import saddlebar.materials.job.JobReader;
import saddlebar.materials.job.JobRecords;
import saddlebar.materials.job.PanelJob;
import saddlebar.materials.job.WindowJob;
import saddlebar.materials.metal.LiftingLimit;
import saddlebar.materials.metal.Reinforcement;
import saddlebar.model.commission.Window;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.work.Work;
import saddlebar.report.document.ReportMatter.PanelPart;

/** Sizes, weights and bars of panels, as materials reckons them. */
final class PanelsTold {
    /** Above the limit of one person by this, two may lift (studio setting, no source). */
    private static final double TWO_PEOPLE = 1.33;

    private PanelsTold() {
    }

    static List<PanelPart> of(CommissionFolder folder, List<Window> windows, Work work) throws IOException {
        CostJob job = JobReader.read(folder, JobRecords.of(folder));
        List<PanelPart> panels = new ArrayList<>();
        for (WindowJob window : job.windows()) {
            if (windows.stream().noneMatch(wanted -> window.name().equals(wanted.getName()))) {
                continue;
            }
            for (PanelJob panel : window.panels()) {
                work.checkpoint();
                if (!panel.pieces().isEmpty()) {
                    double mass = panel.weight().totalKg();
                    double index = LiftingLimit.PANEL.index(mass);
                    Reinforcement bars = Reinforcement.of(panel.widthMm(), panel.heightMm(), window.barRule());
                    panels.add(new PanelPart(window.name(), panel.name(), panel.leaded(), panel.widthMm(), panel.heightMm(), panel.pieces().size(), mass,
                            index <= 1 ? "one person" : index <= TWO_PEOPLE ? "two people" : "lifting aid", bars.heightsMm(),
                            (panel.leaded() ? panel.innerMm() + panel.edgeMm() : panel.perimetersMm()) / 1000));
                }
            }
        }
        return panels;
    }
}
