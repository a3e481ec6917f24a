package saddlebar.cli;

import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;

/** What every command takes, and how every command speaks: JSON or words on standard output, progress and warnings on standard error. */
public final class CommonOptions {
    private static final Gson JSON = new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().serializeNulls().create();

    /** How progress is told. */
    enum Progress {
        AUTO, PLAIN, NONE
    }

    private final Voice voice;
    private final StopSign stop;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    @Option(names = "--json", description = "Print exactly one JSON document on standard output.")
    private boolean json;

    @Option(names = "--progress", paramLabel = "HOW", defaultValue = "auto", description = "auto (a bar on a terminal, lines in a log), plain or none.")
    private String progress;

    @Option(names = "--jobs", paramLabel = "N", description = "Work on N things at once; as many as there are processors if not given.")
    private Integer jobs;

    @Option(names = "--quiet", description = "Say only what is wrong.")
    private boolean quiet;

    CommonOptions(Voice voice, StopSign stop) {
        this.voice = voice;
        this.stop = stop;
    }

    /** Prints the answer: as JSON, or as words. */
    public void answer(Object document, List<String> words) {
        if (json) {
            voice.answer(JSON.toJson(document));
        } else if (!quiet) {
            words.forEach(voice::answer);
        }
    }

    public boolean json() {
        return json;
    }

    /** Lists problems, worst first, on standard error; the JSON document carries them too where the contract says so. */
    public void tell(List<Problem> problems) {
        problems.stream().sorted(Problem.WORST_FIRST).forEach(problem -> voice.tell(line(problem)));
    }

    static String line(Problem problem) {
        String at = problem.at().map(p -> String.format(Locale.ROOT, " at %.1f, %.1f mm", p.xMm(), p.yMm())).orElse("");
        return problem.severity().key() + ": " + (problem.where().isEmpty() ? "" : problem.where() + ": ") + problem.message() + at;
    }

    /** The watcher of this run, told in the way that the user asked for. */
    public Work work(long units) {
        return TerminalWork.start(voice, progressKind(), units, stop);
    }

    private Progress progressKind() {
        return switch (progress.toLowerCase(Locale.ROOT)) {
            case "auto" -> quiet ? Progress.NONE : Progress.AUTO;
            case "plain" -> Progress.PLAIN;
            case "none" -> Progress.NONE;
            default -> throw new ParameterException(command.commandLine(), "--progress takes auto, plain or none, not '" + progress + "'.");
        };
    }

    public int jobs() {
        if (jobs == null) {
            return Runtime.getRuntime().availableProcessors();
        }
        if (jobs < 1 || jobs > 256) {
            throw new ParameterException(command.commandLine(), "--jobs takes a whole number from 1 to 256, not " + jobs + ".");
        }
        return jobs;
    }

    /** What is made of the words of the command line alone: a value out of range there is a wrong word (exit code 2), no refused input. */
    public <T> T ofWords(Supplier<T> made) {
        try {
            return made.get();
        } catch (Refusal outOfRange) {
            String where = outOfRange.where();
            String option = command.commandLine().getCommandSpec().findOption("--" + where) != null ? "--" + where : where;
            throw wrong(option + ": " + outOfRange.what() + "; " + outOfRange.remedy() + ".");
        }
    }

    /** Words or values that make no sense together: exit code 2. */
    public ParameterException wrong(String message) {
        return new ParameterException(command.commandLine(), message);
    }
}
