package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import saddlebar.model.problem.Refusal;
import saddlebar.production.trace.RemakeBatch;
import saddlebar.production.trace.RemakeSheet;
import saddlebar.production.trace.SettingRow;
import saddlebar.production.trace.TraceRoom;

/** All that is needed to make a piece again. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "remake", sortOptions = false,
        description = "Tells all that is needed to make a piece again: what was used that day, what takes its place where it is gone, and which settings are"
                + " otherwise today.",
        footer = {"", "Example: saddlebar remake my-panel W01/12", "Example: saddlebar remake my-panel --batch",
                "Paint dust may hold lead, cadmium and silica: wet-clean, fitted respirator, no food nearby."})
public final class RemakeCommand implements BenchCommand {
    @Parameters(index = "0", paramLabel = "C", description = "Folder of the commission.")
    private Path folder;

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "PIECE",
            description = "Pieces such as W01/12; with --batch all that wait for a remake if none is named.")
    private List<String> pieces = new ArrayList<>();

    @Option(names = "--batch", description = "Also group the prints that can be done in one go.")
    private boolean batch;

    @Mixin
    private CommonOptions common;

    /** One layer of the JSON document. */
    record Layer(String place, List<RemakeSheet.Need> needs, String stencil, Map<String, Object> recipe) {
    }

    /** One piece of the JSON document. */
    record Piece(String piece, List<Layer> layers, List<SettingRow> settings, List<RemakeSheet.Need> gone) {
        static Piece of(RemakeSheet sheet) {
            return new Piece(sheet.piece(),
                    sheet.layers().stream().map(layer -> new Layer(layer.place(), layer.needs(), layer.stencil(), layer.recipe())).toList(),
                    sheet.settings().rows(), sheet.gone());
        }
    }

    /** The JSON document. */
    record Answer(List<Piece> pieces, List<RemakeBatch.Run> batch) {
    }

    @Override
    public Integer call() throws IOException {
        if (pieces.isEmpty() && !batch) {
            throw common.wrong("remake takes at least one PIECE, or --batch.");
        }
        try (TraceRoom room = TraceRoom.open(folder, common.work(1))) {
            common.tell(room.problems());
            List<String> wanted = pieces.isEmpty() ? RemakeBatch.waiting(room) : pieces;
            if (wanted.isEmpty()) {
                throw new Refusal(folder.toString(), "no piece waits for a remake", "record one: saddlebar record C remake window=W01 piece=12");
            }
            List<RemakeSheet> sheets = new ArrayList<>();
            for (String piece : wanted) {
                sheets.add(RemakeSheet.of(room, piece));
            }
            RemakeBatch runs = RemakeBatch.of(room, sheets);
            List<String> words = new ArrayList<>();
            sheets.forEach(sheet -> words.addAll(words(sheet)));
            if (batch) {
                words.add("");
                words.add("In one go:");
                runs.runs().forEach(
                        run -> words.add("  " + String.join(" ", run.places()) + ": paint " + run.paint() + (run.mesh().isEmpty() ? "" : ", mesh " + run.mesh())
                                + (run.schedule().isEmpty() ? "" : ", fired by " + run.schedule()) + (run.stencils().isEmpty()
                                        ? ""
                                        : "; on one sheet: " + String.join(", ", run.stencils()))));
            }
            common.answer(new Answer(sheets.stream().map(Piece::of).toList(), batch ? runs.runs() : null), words);
            return sheets.stream().allMatch(sheet -> sheet.gone().stream().allMatch(need -> need.what().equals("mix"))) ? DONE : ATTENTION;
        }
    }

    private static List<String> words(RemakeSheet sheet) {
        List<String> words = new ArrayList<>();
        words.add(sheet.piece());
        if (sheet.layers().isEmpty()) {
            words.add("  no print of it is recorded, so nothing but today's recipe is known");
        }
        for (RemakeSheet.LayerSheet layer : sheet.layers()) {
            words.add("  " + layer.place());
            layer.needs().forEach(need -> words.add(String.format(Locale.ROOT, "    %-14s %-28s %s", need.what(), need.then(), need.there()
                    ? ""
                    : (need.instead().isEmpty() ? "gone" : need.what().equals("mix") ? need.instead() : "gone; take " + need.instead())
                            + (need.caution().isEmpty() ? "" : " (" + need.caution() + ")"))
                    .stripTrailing()));
        }
        sheet.settings().differing().forEach(row -> words.add(String.format(Locale.ROOT, "  otherwise today: %s %s was %s, is %s", row.subject(), row.setting(),
                row.then(), row.now())));
        return words;
    }
}
