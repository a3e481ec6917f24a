package saddlebar.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import saddlebar.model.problem.Problem;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.RecordReading;
import saddlebar.model.work.Work;
import saddlebar.trace.history.WorkHistory;
import saddlebar.trace.suspect.WorkUnit;

/** Units of work as a commission's own records and those of a shared studio tell them. */
record WorkReading(List<WorkUnit> units, List<Problem> problems) {
    static WorkReading of(CommissionFolder commission, Optional<String> kind, Optional<String> window, Work work) throws IOException {
        WorkHistory history = new WorkHistory(kind, window);
        List<Problem> problems = new ArrayList<>();
        try (RecordReading reading = commission.records().read()) {
            reading.forEach(history::take, work);
            problems.addAll(reading.problems());
        }
        if (!commission.hasOwnStudio()) {
            try (RecordReading reading = commission.studioFolder().records().read()) {
                reading.forEach(history::take, work);
                problems.addAll(reading.problems());
            }
        }
        return new WorkReading(history.units(), problems);
    }
}
