package saddlebar.materials.cost;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

import org.osgi.service.component.annotations.Component;

import saddlebar.materials.job.CostJob;
import saddlebar.materials.job.PanelJob;
import saddlebar.materials.job.WindowJob;
import saddlebar.materials.metal.FoilNeed;
import saddlebar.materials.metal.Reinforcement;
import saddlebar.materials.money.Prices;
import saddlebar.model.problem.Refusal;

/** Foil or came, solder, flux, patina or cement, and bars. */
@Component(service = CostSource.class)
public final class MetalCost implements CostSource {
    /** Ends of came that are cut off (studio setting, no source). */
    static final double CAME_WASTE = 0.15;
    private static final Spread SPREAD = new Spread(0.9, 1.25);

    @Override
    public String key() {
        return "metal";
    }

    @Override
    public int order() {
        return 50;
    }

    @Override
    public List<ReckonedLine> reckon(CostJob job, Prices prices, List<ReckonedLine> before) {
        List<ReckonedLine> lines = new ArrayList<>();
        for (WindowJob window : job.windows()) {
            for (PanelJob panel : window.panels()) {
                if (!panel.pieces().isEmpty()) {
                    panel(job, window, panel, prices, lines);
                }
            }
        }
        return lines;
    }

    private void panel(CostJob job, WindowJob window, PanelJob panel, Prices prices, List<ReckonedLine> lines) {
        double metres = panel.leaded() ? (panel.innerMm() + panel.edgeMm()) / 1000 * (1 + CAME_WASTE) : FoilNeed.of(panel.perimetersMm()).totalM();
        String name = panel.joints().name();
        BigDecimal perM = panel.joints().pricePerM().orElseThrow(() -> new Refusal(name, "it has no price", "put in what a metre costs"));
        BigDecimal perKg = panel.solder().pricePerKg().orElseThrow(() -> new Refusal("solder " + panel.solder().name(), "it has no price",
                "put in what a kg costs"));
        add(lines, window, name, metres, "m", prices.ofStudio(perM), prices);
        add(lines, window, "solder " + panel.solder().name(), panel.solderG(), "g", prices.ofStudio(perKg).scaleByPowerOfTen(-3), prices);
        add(lines, window, "flux", panel.areaM2(), "m2", prices.need("flux", "m2 of panel"), prices);
        String finish = panel.leaded() ? "cement" : "patina";
        add(lines, window, finish, panel.areaM2(), "m2", prices.need(finish, "m2 of panel"), prices);
        Reinforcement bars = Reinforcement.of(panel.widthMm(), panel.heightMm(), window.barRule());
        if (!bars.heightsMm().isEmpty()) {
            BigDecimal bar = job.studio().bar().pricePerM().orElseThrow(() -> new Refusal(job.studio().bar().name(), "it has no price",
                    "put in what a metre costs"));
            add(lines, window, job.studio().bar().name(), bars.heightsMm().size() * bars.barMm() / 1000, "m", prices.ofStudio(bar), prices);
            if (job.studio().bar().round()) {
                prices.find("tie").ifPresent(tie -> add(lines, window, "copper ties", bars.ties(), "piece", tie, prices));
            }
        }
    }

    private void add(List<ReckonedLine> lines, WindowJob window, String what, double each, String unit, BigDecimal price, Prices prices) {
        lines.add(ReckonedLine.of(key(), what, window.name(), each * window.alike(), unit, price, prices.rounding(), SPREAD));
    }
}
