package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.production.check.Checking;

/** Every problem of a commission, without making anything. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "check", sortOptions = false, description = "Lists every problem of a commission, worst first, without making anything.",
        footer = {"", "Example: saddlebar check demo-projects/first-panel"})
public final class CheckCommand implements BenchCommand {
    private final Checking checking;

    @Parameters(index = "0", paramLabel = "C", description = "Folder of the commission.")
    private Path folder;

    @Mixin
    private CommonOptions common;

    @Activate
    public CheckCommand(@Reference Checking checking) {
        this.checking = checking;
    }

    /** The JSON document. */
    record Answer(List<ProblemRow> problems) {
    }

    @Override
    public Integer call() throws IOException {
        try (CommissionFolder commission = CommissionFolder.open(folder, Access.READ)) {
            List<Problem> problems = checking.check(commission, common.work(Checking.WORK_UNITS));
            List<String> words = new ArrayList<>();
            words.add(problems.isEmpty() ? "No problem found." : problems.size() + " problems, worst first:");
            problems.forEach(problem -> words.add("  " + CommonOptions.line(problem)));
            common.answer(new Answer(problems.stream().map(ProblemRow::of).toList()), words);
            return problems.stream().anyMatch(problem -> problem.severity() != Severity.NOTE) ? ATTENTION : DONE;
        }
    }
}
