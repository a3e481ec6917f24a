package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import saddlebar.model.commission.ProcessSetting;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.TonerSide;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.production.facts.CommissionFacts;
import saddlebar.production.facts.FactsReader;
import saddlebar.production.make.MadeThing;
import saddlebar.production.make.MakeBook;
import saddlebar.production.make.MakeRequest;
import saddlebar.production.make.MakeResult;
import saddlebar.production.make.Making;
import saddlebar.production.make.Stage;

/** The main job. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "make", sortOptions = false,
        description = "Makes everything that follows from the commission: pieces, stencils, sheets, cutting lists and the making record. Only what has changed.",
        footer = {"", "Example: saddlebar make demo-projects/first-panel"})
public final class MakeCommand implements BenchCommand {
    private final Making making;

    @Parameters(index = "0", paramLabel = "C", description = "Folder of the commission.")
    private Path folder;

    @Parameters(index = "1..*", paramLabel = "WINDOW", description = "Only these windows; all if none is named.")
    private List<String> windows = List.of();

    @Option(names = "--until", paramLabel = "STAGE", defaultValue = "cards",
            description = "How far: pieces, stencils, sheets, cards or reports; everything if not given. There is nothing yet beyond cards.")
    private String until;

    @Option(names = "--afresh", description = "Make also what has not changed.")
    private boolean afresh;

    @Option(names = "--toner-side", paramLabel = "SIDE",
            description = "Says once for this studio which side of the mesh its sheets touch, print or squeegee; it"
                    + " is kept. Try it first with the reading mark of a sheet printed on paper.")
    private String tonerSide;

    @Mixin
    private CommonOptions common;

    @Activate
    public MakeCommand(@Reference Making making) {
        this.making = making;
    }

    /** The JSON document. */
    record Answer(List<MadeThing> made, int kept, List<ProblemRow> problems) {
    }

    @Override
    public Integer call() throws IOException {
        MakeRequest request = new MakeRequest(windows, stage(), afresh, common.jobs());
        try (CommissionFolder commission = CommissionFolder.open(folder, Access.WRITE)) {
            if (tonerSide != null) {
                confirm(commission.studio());
            }
            CommissionFacts facts = FactsReader.read(commission.commission(), commission.path(), List.of());
            MakeResult result = making.make(facts, request, common.work(Making.WORK_UNITS));
            MakeBook.enter(commission, result);
            commission.save();
            common.answer(new Answer(result.made(), result.kept(), result.problems().stream().map(ProblemRow::of).toList()), words(commission, result));
            common.tell(result.problems());
            return result.needsAttention() ? ATTENTION : DONE;
        }
    }

    private void confirm(Studio studio) {
        TonerSide side = switch (tonerSide.toLowerCase(Locale.ROOT)) {
            case "print" -> TonerSide.PRINT;
            case "squeegee" -> TonerSide.SQUEEGEE;
            default -> throw common.wrong("--toner-side takes print or squeegee, not '" + tonerSide + "'.");
        };
        for (ProcessSetting process : studio.getProcesses()) {
            process.setTonerSide(side);
            process.setConfirmed(true);
        }
    }

    private Stage stage() {
        return switch (until.toLowerCase(Locale.ROOT)) {
            case "pieces" -> Stage.PIECES;
            case "stencils" -> Stage.STENCILS;
            case "sheets" -> Stage.SHEETS;
            case "cards", "reports" -> Stage.CARDS;
            default -> throw common.wrong("--until takes pieces, stencils, sheets or cards, not '" + until + "'.");
        };
    }

    private static List<String> words(CommissionFolder commission, MakeResult result) {
        List<String> words = new ArrayList<>();
        Path made = commission.path().resolve(Making.FOLDER);
        int pieces = result.pieces().stream().mapToInt(panel -> panel.pieces().size()).sum();
        words.add(commission.commission().getTitle() + ": " + many(pieces, "piece") + " in " + many(result.pieces().size(), "panel")
                + (result.stencils().isEmpty() ? "" : ", " + many(result.stencils().size(), "stencil"))
                + (result.sheets().isEmpty() ? "" : " on " + many(result.sheets().size(), "sheet")) + ".");
        Map<String, Integer> counts = new LinkedHashMap<>();
        result.made().forEach(thing -> counts.merge(thing.what(), 1, Integer::sum));
        if (result.made().isEmpty()) {
            words.add(result.kept() == 0
                    ? "There was nothing to make."
                    : "Nothing had changed: all " + result.kept() + " files are still good.");
        } else {
            words.add("Made now: " + String.join(", ", counts.entrySet().stream().map(e -> many(e.getValue(), fileOf(e.getKey()))).toList())
                    + "; kept " + result.kept() + " files.");
        }
        words.add("");
        words.add("Where it lies, in " + made + ":");
        if (holds(result, "pieces")) {
            words.add("  pieces/     the cutline of each window with its numbers, at true size (SVG)");
        }
        if (!result.stencils().isEmpty()) {
            words.add("  stencils/   each stencil at " + Math.round(result.stencils().get(0).planned().place().dpi()) + " dpi, 1 bit (TIFF)");
        }
        if (!result.sheets().isEmpty()) {
            words.add("  sheets/     what goes to the laser printer: PDF at exact size, TIFF with the same bits; for you, a proof (PNG) and a tape plan (PDF)");
        }
        if (holds(result, "cutting list")) {
            words.add("  cards/      cutting lists (CSV), cutline and patterns at true size (PDF)" + (holds(result, "making record")
                    ? " and making-record.txt: what was made from what, with every setting"
                    : ""));
        }
        if (holds(result, "bed plan")) {
            words.add("  beds/       for each stencil its bed at true size (PDF): where the pieces lie under the screen, stops and register crosses");
        }
        words.add("Each made thing is also recorded in " + commission.path().resolve("records") + ".");
        return words;
    }

    private static boolean holds(MakeResult result, String what) {
        return result.lists().stream().anyMatch(list -> list.what().equals(what));
    }

    private static String many(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    /** What one file of a kind of made thing is called; a sheet has several. */
    private static String fileOf(String what) {
        return switch (what) {
            case "pieces" -> "cutline drawing";
            case "stencil", "sheet" -> what + " file";
            default -> what;
        };
    }
}
