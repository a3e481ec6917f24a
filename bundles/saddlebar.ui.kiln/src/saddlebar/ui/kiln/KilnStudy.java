package saddlebar.ui.kiln;

import java.util.List;
import java.util.Optional;

import saddlebar.kiln.advice.Advisor;
import saddlebar.kiln.fire.FireSettings;
import saddlebar.kiln.fire.Firing;
import saddlebar.kiln.fire.Kiln;
import saddlebar.kiln.fire.Load;
import saddlebar.kiln.fire.Simulation;
import saddlebar.kiln.paint.PaintFlux;
import saddlebar.kiln.paint.PaintHistory;
import saddlebar.kiln.schedule.HeatCurve;
import saddlebar.kiln.schedule.Schedule;
import saddlebar.model.problem.Problem;
import saddlebar.model.work.Work;

/** A schedule simulated and advised on. Immutable. */
public record KilnStudy(Ask ask, Firing firing, List<Problem> advice) {
    public KilnStudy {
        advice = List.copyOf(advice);
    }

    /**
     * What is asked.
     *
     * @param paint   new in this firing
     * @param earlier what the pieces on the shelf went through before
     * @param log     of the firing that is looked at
     */
    public record Ask(Schedule schedule, Load load, Kiln kiln, Optional<PaintFlux> paint, List<PaintHistory.Fired> earlier, Optional<HeatCurve> log) {
        public Ask {
            earlier = List.copyOf(earlier);
        }
    }

    static KilnStudy of(Ask ask, Work work) {
        Firing firing = Simulation.run(ask.schedule, ask.load, ask.kiln, FireSettings.FINE, work);
        return new KilnStudy(ask, firing, Advisor.on(firing, ask.paint, ask.earlier));
    }
}
