package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import saddlebar.model.commission.UnitSystem;
import saddlebar.model.problem.LockedException;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.NewCommission;
import saddlebar.model.store.StudioLibrary;

/** An empty commission. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "new", sortOptions = false, description = "Begins an empty commission, with a studio of its own or joined to a shared one.",
        footer = {"", "Example: saddlebar new chapel-door --title \"Chapel door\" --client \"The parish\" --paper a4"})
public final class NewCommand implements BenchCommand {
    /** Where the launcher says that the studio tables lie. */
    static final String TABLES = "saddlebar.shared";

    @Parameters(index = "0", paramLabel = "C", description = "Folder of the commission; made by this command.")
    private Path folder;

    @Option(names = "--title", required = true, paramLabel = "T", description = "What it is called.")
    private String title;

    @Option(names = "--number", paramLabel = "N", defaultValue = "", description = "The studio's number for it.")
    private String number;

    @Option(names = "--client", paramLabel = "NAME", defaultValue = "", description = "Whom it is for.")
    private String client;

    @Option(names = "--studio", paramLabel = "DIR", description = "Shared studio to join; made if it is not there.")
    private Path studio;

    @Option(names = "--units", paramLabel = "U", defaultValue = "mm", description = "Units shown and printed: mm or in; mm if not given.")
    private String units;

    @Option(names = "--paper", paramLabel = "P", split = ",", defaultValue = "letter",
            description = "Sheets in use: letter, tabloid, a4, a3; letter if not given.")
    private List<String> papers;

    @Mixin
    private CommonOptions common;

    /** The JSON document. */
    record Answer(String folder, String title, String studio, boolean ownStudio) {
    }

    @Override
    public Integer call() throws IOException {
        if (title.isBlank()) {
            throw common.wrong("--title must not be empty.");
        }
        if (Files.exists(folder) && !isEmptyFolder(folder)) {
            throw new LockedException(folder + " exists already and is not empty; nothing was changed. Name a new folder.");
        }
        List<String> known = List.of("letter", "tabloid", "a4", "a3");
        List<String> wanted = papers.stream().map(paper -> paper.strip().toLowerCase(Locale.ROOT)).toList();
        wanted.stream().filter(paper -> !known.contains(paper)).findFirst().ifPresent(paper -> {
            throw common.wrong("--paper takes " + String.join(", ", known) + ", not '" + paper + "'.");
        });
        NewCommission settings = NewCommission.titled(title).withNumber(number).forClient(client).inUnits(unitSystem()).onPapers(wanted)
                .stockedFrom(library());
        if (studio != null) {
            settings = settings.sharing(studio);
        }
        try (CommissionFolder made = CommissionFolder.create(folder, settings)) {
            made.save();
            common.answer(new Answer(made.path().toString(), title, made.studioFolder().path().toString(), made.hasOwnStudio()),
                    List.of("Commission " + title + " lies in " + made.path() + ".",
                            made.hasOwnStudio()
                                    ? "It has a studio of its own, stocked from the studio tables."
                                    : "It shares the studio in " + made.studioFolder().path() + ".",
                            "Next: saddlebar bring " + folder + " ART --window W01"));
            return DONE;
        }
    }

    private static boolean isEmptyFolder(Path path) throws IOException {
        if (!Files.isDirectory(path)) {
            return false;
        }
        try (var entries = Files.list(path)) {
            return entries.findAny().isEmpty();
        }
    }

    private UnitSystem unitSystem() {
        return switch (units.toLowerCase(Locale.ROOT)) {
            case "mm" -> UnitSystem.MM;
            case "in" -> UnitSystem.INCH;
            default -> throw common.wrong("--units takes mm or in, not '" + units + "'.");
        };
    }

    private static StudioLibrary library() throws IOException {
        String tables = System.getProperty(TABLES);
        if (tables == null) {
            throw new IllegalStateException("the launcher did not say where the studio tables lie (-D" + TABLES + "=DIR)");
        }
        return StudioLibrary.of(Path.of(tables));
    }
}
