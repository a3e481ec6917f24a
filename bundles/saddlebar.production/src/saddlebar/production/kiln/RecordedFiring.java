package saddlebar.production.kiln;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

import saddlebar.kiln.schedule.Schedule;

/**
 * One firing of the kiln as the records tell it: every line that names it taken together.
 *
 * @param name         such as F031; of one line without a name the record's id
 * @param when         the earliest time told
 * @param kilnId       empty if not told
 * @param scheduleName empty if not told
 * @param asRun        the schedule as it was run that day
 * @param pieces       what lay in it
 * @param logFile      path of its log within the studio's folder
 * @param peakC        as told by a person
 * @param kWh          as read from a meter
 * @param witnesses    what witnesses showed, by place
 * @param headId       id of the line that tells of the firing as a whole, if there is one
 * @param note         words of the person
 */
public record RecordedFiring(String name, Instant when, String kilnId, String scheduleName, Optional<Schedule> asRun, List<FiredPiece> pieces,
        Optional<String> logFile, Optional<Double> peakC, Optional<Double> kWh, List<Witness> witnesses, Optional<String> headId, String note) {
    public RecordedFiring {
        pieces = List.copyOf(pieces);
        witnesses = List.copyOf(witnesses);
    }

    /** A cone, a test tile or a second thermocouple that lay at a place. */
    public record Witness(String place, double shownC) {
    }
}
