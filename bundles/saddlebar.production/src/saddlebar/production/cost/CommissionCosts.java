package saddlebar.production.cost;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import saddlebar.kiln.fire.FireSettings;
import saddlebar.kiln.fire.Load;
import saddlebar.kiln.fire.Simulation;
import saddlebar.kiln.glass.Glass;
import saddlebar.kiln.schedule.Schedule;
import saddlebar.materials.cost.BookedCosts;
import saddlebar.materials.cost.BookedLine;
import saddlebar.materials.cost.CostSource;
import saddlebar.materials.cost.Estimate;
import saddlebar.materials.cost.PaintList;
import saddlebar.materials.cost.PanelList;
import saddlebar.materials.cost.ShoppingList;
import saddlebar.materials.cost.SourceVariance;
import saddlebar.materials.cost.WindowProfit;
import saddlebar.materials.job.CostHints;
import saddlebar.materials.job.CostJob;
import saddlebar.materials.money.EarnedValue;
import saddlebar.materials.money.Prices;
import saddlebar.materials.paint.PaintRules;
import saddlebar.model.work.Work;

/**
 * What a commission costs, is quoted at, and came to.
 *
 * @param job      with the kiln's energy by simulation and the studio's own breakage within
 * @param variance by source, against the frozen quote where there is one, else against the estimate; empty while nothing is booked
 * @param profits  by window
 * @param earned   empty where no milestone has a share of the work
 */
public record CommissionCosts(CostJob job, Prices prices, Estimate estimate, PaintList paints, PanelList panels, BookedCosts booked,
        List<SourceVariance> variance, List<WindowProfit> profits, Optional<EarnedValue> earned, ShoppingList shopping) {
    /** The same seed gives the same range. */
    public static final long SEED = 1;
    private static final double USUAL_THICKNESS_MM = 3;

    public CommissionCosts {
        variance = List.copyOf(variance);
        profits = List.copyOf(profits);
    }

    /**
     * @param work asked whether to stop; no units are told
     */
    public static CommissionCosts of(CostAsk ask, List<CostSource> sources, Work work) {
        CostJob job = ask.job().with(new CostHints(firings(ask, work), ask.yields(), ask.records().remakeShare()));
        Prices prices = ask.prices();
        Estimate estimate = Estimate.of(job, prices, sources, SEED);
        PaintList paints = PaintList.of(job, PaintRules.USUAL);
        PanelList panels = PanelList.of(job, work);
        BookedCosts booked = BookedCosts.of(job, ask.records(), prices);
        List<BookedLine> against = booked.frozen().isEmpty() ? estimate.lines().stream().map(BookedLine::of).toList() : booked.frozen();
        List<SourceVariance> variance = booked.actual().isEmpty() ? List.of() : SourceVariance.of(against, booked.actual(), prices.rounding());
        BigDecimal actual = booked.actual().stream().map(BookedLine::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal budget = against.stream().map(BookedLine::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
        return new CommissionCosts(job, prices, estimate, paints, panels, booked, variance, WindowProfit.of(estimate, booked.actual(), prices.rounding()),
                EarnedValue.of(ask.steps(), prices.day(), budget, actual, prices.rounding()), ShoppingList.of(job, prices, paints, panels));
    }

    /** kWh of one firing by firing order: the simulation of the schedule in the studio's kiln, shelves full. */
    private static Map<Integer, Double> firings(CostAsk ask, Work work) {
        Map<Integer, Double> kwh = new HashMap<>();
        Map<Schedule, Double> same = new HashMap<>();
        ask.kiln().ifPresent(kiln -> ask.schedules().forEach((order, schedule) -> kwh.put(order, same.computeIfAbsent(schedule, run -> Simulation.run(run,
                Load.of(Glass.floatGlass(), USUAL_THICKNESS_MM), kiln, FireSettings.COARSE, work).energy().kWh()))));
        return kwh;
    }
}
