package saddlebar.kiln.search;

import java.util.List;

import saddlebar.kiln.fire.Firing;
import saddlebar.kiln.schedule.Schedule;

/**
 * The shortest schedule that was found.
 *
 * @param schedule   to be fired
 * @param firing     its simulation at the fine step
 * @param heatWork   Phi that the painted face gets, 1/Pa
 * @param wanted     Phi that was wanted
 * @param runs       simulations that it took
 * @param heldBackBy which limits it touches, in words
 */
public record FoundSchedule(Schedule schedule, Firing firing, double heatWork, double wanted, int runs, List<String> heldBackBy) {
    public FoundSchedule {
        heldBackBy = List.copyOf(heldBackBy);
    }
}
