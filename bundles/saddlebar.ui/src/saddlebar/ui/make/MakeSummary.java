package saddlebar.ui.make;

import java.nio.file.Path;
import java.util.List;

import saddlebar.model.problem.Problem;

/**
 * What a making brought about.
 *
 * @param made     files made now
 * @param kept     files that were still good
 * @param folder   where they lie
 * @param problems what somebody should look at
 */
public record MakeSummary(int made, int kept, Path folder, List<Problem> problems) {
    public MakeSummary {
        problems = List.copyOf(problems);
    }
}
