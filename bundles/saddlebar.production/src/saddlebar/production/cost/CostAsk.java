package saddlebar.production.cost;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import saddlebar.kiln.fire.Kiln;
import saddlebar.kiln.schedule.Schedule;
import saddlebar.materials.cost.BookReader;
import saddlebar.materials.job.CostJob;
import saddlebar.materials.job.JobReader;
import saddlebar.materials.job.JobRecords;
import saddlebar.materials.money.EarnedValue;
import saddlebar.materials.money.Prices;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.FiringSchedule;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.Milestone;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.CommissionFolder;
import saddlebar.production.kiln.StudioHeat;
import saddlebar.production.stock.LayoutFile;

/**
 * Everything that the cost of a commission is reckoned from, as values: read where the model may be read, reckoned anywhere.
 *
 * @param schedules by which the layers of each firing order are fired; orders whose paint has no schedule are left out
 * @param steps     milestones, for earned value
 * @param unfired   firing orders without a schedule
 * @param yields    share of the sheets of a glass that becomes pieces, from sheets that were laid out; empty where none were
 */
public record CostAsk(CostJob job, JobRecords records, Prices prices, Optional<Kiln> kiln, Map<Integer, Schedule> schedules, List<EarnedValue.Step> steps,
        Set<Integer> unfired, Map<String, Double> yields) {
    public CostAsk {
        yields = Map.copyOf(yields);
        schedules = Map.copyOf(schedules);
        steps = List.copyOf(steps);
        unfired = Set.copyOf(unfired);
    }

    /**
     * @param day      whose prices count
     * @param currency empty for the studio's
     */
    public static CostAsk read(CommissionFolder folder, StudioHeat heat, LocalDate day, Optional<String> currency) throws IOException {
        JobRecords records = JobRecords.of(folder);
        CostJob job = JobReader.read(folder, records);
        Studio studio = folder.studio();
        Prices prices = BookReader.read(studio, day, currency.orElse(studio.getCurrency()));
        Map<Integer, Schedule> schedules = new HashMap<>();
        Set<Integer> unfired = new HashSet<>();
        for (Window window : folder.windows()) {
            for (Panel panel : window.getPanels()) {
                for (DesignLayer layer : panel.getLayers()) {
                    if (layer.getRole() != LayerRole.CUTLINE) {
                        schedule(studio, layer).ifPresentOrElse(found -> schedules.putIfAbsent(layer.getFiringOrder(), found),
                                () -> unfired.add(layer.getFiringOrder()));
                    }
                }
            }
        }
        unfired.removeAll(schedules.keySet());
        Optional<Kiln> kiln = studio.getKilns().stream().findFirst().map(heat::kiln);
        return new CostAsk(job, records, prices, kiln, schedules, steps(folder.commission().getMilestones()), unfired,
                LayoutFile.yields(folder.path()));
    }

    private static Optional<Schedule> schedule(Studio studio, DesignLayer layer) {
        return layer.getPaint() == null
                ? Optional.empty()
                : studio.getSchedules().stream().filter(known -> known.getPurpose() == layer.getPaint().getKind() && !known.getSegments().isEmpty()).findFirst()
                        .or(() -> studio.getSchedules().stream().filter((FiringSchedule known) -> !known.getSegments().isEmpty()).findFirst())
                        .map(StudioHeat::schedule);
    }

    private static List<EarnedValue.Step> steps(List<Milestone> milestones) {
        List<EarnedValue.Step> steps = new ArrayList<>();
        for (Milestone milestone : milestones) {
            double share = milestone.getWorkShare() == null ? 0 : milestone.getWorkShare();
            if (share < 0 || share > 1) {
                throw new Refusal("milestone " + milestone.getName(), "its share of the work is " + share, "put in 0 to 1");
            }
            steps.add(new EarnedValue.Step(milestone.getName() == null ? "" : milestone.getName(), BigDecimal.valueOf(share), Optional.ofNullable(
                    milestone.getDue()), Optional.ofNullable(milestone.getDone())));
        }
        return steps;
    }
}
