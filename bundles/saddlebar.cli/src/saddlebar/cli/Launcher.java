package saddlebar.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CancellationException;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import saddlebar.model.problem.LockedException;
import saddlebar.model.problem.Refusal;

/** One run of the command line over the commands that are there: parses, runs, and turns whatever rises into a sentence and an exit code. */
public final class Launcher {
    /** The words before any command. */
    @Command(name = "saddlebar", mixinStandardHelpOptions = false, sortOptions = false, synopsisSubcommandLabel = "COMMAND",
            header = "Saddlebar: stained glass with screen-printed paint, from the opening to the record of the making.",
            footer = {"", "Try: saddlebar COMMAND --help"})
    static final class Root implements Runnable {
        @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help.")
        private boolean help;

        @Option(names = "--version", versionHelp = true, description = "Show the version.")
        private boolean version;

        @picocli.CommandLine.Spec
        private CommandSpec spec;

        @Override
        public void run() {
            throw new ParameterException(spec.commandLine(), "Which command? See saddlebar --help.");
        }
    }

    private final List<BenchCommand> commands;
    private final String version;
    private final Voice voice;
    private final StopSign stop;

    public Launcher(List<BenchCommand> commands, String version, Voice voice, StopSign stop) {
        this.commands = commands.stream().sorted(Comparator.comparing(c -> nameOf(c.getClass()))).toList();
        this.version = version;
        this.voice = voice;
        this.stop = stop;
    }

    static String nameOf(Class<?> command) {
        return command.getAnnotation(Command.class).name();
    }

    /** Runs the words; never ends the process. */
    public int run(String... words) {
        CommandLine line = new CommandLine(new Root());
        line.getCommandSpec().version("saddlebar " + version);
        CommandLine.IFactory factory = new CommandLine.IFactory() {
            @Override
            public <K> K create(Class<K> type) throws Exception {
                return type == CommonOptions.class ? type.cast(new CommonOptions(voice, stop)) : CommandLine.defaultFactory().create(type);
            }
        };
        for (BenchCommand command : commands) {
            CommandLine sub = new CommandLine(command, factory);
            if (sub.getCommandSpec().findOption("--help") == null) {
                sub.getCommandSpec().addOption(CommandLine.Model.OptionSpec.builder("-h", "--help").usageHelp(true).type(boolean.class)
                        .description("Show this help.").build());
            }
            line.addSubcommand(nameOf(command.getClass()), sub);
        }
        voice.lendTo(line);
        line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        line.setUsageHelpWidth(110).setAbbreviatedOptionsAllowed(false).setExpandAtFiles(false);
        line.setParameterExceptionHandler((wrong, args) -> {
            String name = wrong.getCommandLine().getCommandSpec().qualifiedName();
            voice.tell(sentence(plain(wrong)) + " See " + name + " --help.");
            return ExitCode.WRONG_WORDS;
        });
        line.setExecutionExceptionHandler((risen, where, parsed) -> tell(risen, String.join(" ", words)));
        return line.execute(words);
    }

    /** What the parser says of types and places, in the words of someone who types. */
    private static String plain(ParameterException wrong) {
        if (wrong instanceof CommandLine.UnmatchedArgumentException unmatched && !unmatched.getUnmatched().isEmpty()) {
            String word = unmatched.getUnmatched().get(0);
            boolean first = wrong.getCommandLine().getParent() == null;
            if (!word.startsWith("-")) {
                return first ? "There is no command '" + word + "'." : "The word '" + word + "' is one too many.";
            }
        }
        return wrong.getMessage() == null ? null : wrong.getMessage().replace("is not a double", "is no number").replace("is not an int", "is no whole number");
    }

    private static String sentence(String message) {
        String text = message == null ? "These words make no command." : message.strip();
        return text.endsWith(".") || text.endsWith("?") || text.endsWith("!") ? text : text + ".";
    }

    private int tell(Throwable risen, String words) throws IOException {
        if (risen instanceof ParameterException wrong) {
            voice.tell(sentence(wrong.getMessage()));
            return ExitCode.WRONG_WORDS;
        }
        if (risen instanceof Refusal refusal) {
            voice.tell(refusal.getMessage());
            return ExitCode.INPUT_REFUSED;
        }
        if (risen instanceof CancellationException) {
            voice.tell("Stopped; nothing is half written.");
            return ExitCode.STOPPED;
        }
        if (risen instanceof LockedException) {
            voice.tell(risen.getMessage());
            return ExitCode.CANNOT_WRITE;
        }
        if (risen instanceof IOException) {
            voice.tell(WriteTrouble.sentence((IOException) risen));
            return ExitCode.CANNOT_WRITE;
        }
        Path report = Files.createTempFile("saddlebar-fault-", ".txt");
        try (PrintWriter to = new PrintWriter(Files.newBufferedWriter(report, StandardCharsets.UTF_8))) {
            to.println("saddlebar " + version + " " + words);
            to.println("Java " + System.getProperty("java.version") + " on " + System.getProperty("os.name") + " " + System.getProperty("os.arch"));
            risen.printStackTrace(to);
        }
        voice.tell("This is a fault of Saddlebar, not of your work; nothing was changed. Please send the report " + report + ".");
        return ExitCode.OUR_FAULT;
    }

    /** What the system said about a file, in a sentence. */
    private static final class WriteTrouble {
        static String sentence(IOException trouble) {
            if (trouble instanceof FileSystemException file && file.getFile() != null) {
                String reason = file.getReason() == null ? plain(file) : file.getReason();
                return file.getFile() + ": " + reason + "; nothing was changed. Choose another place, or make room there.";
            }
            return "Could not write: " + trouble.getMessage() + "; nothing was changed.";
        }

        private static String plain(FileSystemException trouble) {
            return switch (trouble.getClass().getSimpleName()) {
                case "AccessDeniedException" -> "may not be written";
                case "NoSuchFileException" -> "is not there";
                case "FileAlreadyExistsException" -> "exists already";
                case "NotDirectoryException" -> "is no folder";
                default -> "cannot be written";
            };
        }
    }
}
