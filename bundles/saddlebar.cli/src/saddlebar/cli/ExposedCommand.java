package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.CommissionFolder;
import saddlebar.production.check.FormerPieces;
import saddlebar.production.trace.TraceRoom;
import saddlebar.trace.history.WorkHistory;
import saddlebar.trace.lineage.Deed;
import saddlebar.trace.lineage.ExposedPiece;
import saddlebar.trace.lineage.Exposure;
import saddlebar.trace.lineage.Lineage;

/** The way forward: what else went through the same. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "exposed", sortOptions = false, description = "Lists every piece that shared a screen, mix, firing or setting, and its state.",
        footer = {"", "Example: saddlebar exposed my-panel mix=M07"})
public final class ExposedCommand implements BenchCommand {
    @Parameters(index = "0", paramLabel = "C-or-STUDIO", description = "Folder of the commission, or of a studio: then of all who joined it.")
    private Path folder;

    @Parameters(index = "1", paramLabel = "THING", description = "factor=level with the words of the record, for instance mix=M07 or firing=F031; or a"
            + " record's id.")
    private String thing;

    @Mixin
    private CommonOptions common;

    /** One piece's layer that met the thing; {@code now} are the pieces of today's drawing that hold its glass, where that is known. */
    record Row(String window, String piece, String layer, String state, boolean bad, List<String> now) {
        static Row of(ExposedPiece met, Optional<CommissionFolder> commission) {
            return new Row(met.window(), met.piece(), met.layer(), met.state().words(), met.bad(), ExposedCommand.now(met, commission));
        }
    }

    /** The JSON document. */
    record Answer(String thing, List<Row> pieces) {
    }

    @Override
    public Integer call() throws IOException {
        try (TraceRoom room = TraceRoom.open(folder, common.work(1))) {
            common.tell(room.problems());
            Lineage lineage = room.lineage();
            Optional<Deed> record = lineage.record(thing);
            List<ExposedPiece> met = record.isPresent() ? new Exposure(lineage).of(List.of(record.get())) : ofLevel(lineage);
            List<String> words = new ArrayList<>();
            words.add(met.size() + " met " + thing + ", " + met.stream().filter(ExposedPiece::bad).count() + " of them flawed:");
            met.forEach(piece -> words.add(String.format(Locale.ROOT, "  %-24s %-10s %-6s%s", piece.name(), piece.state().words(),
                    piece.bad() ? "flawed" : "", today(piece, room.commission())).stripTrailing()));
            common.answer(new Answer(thing, met.stream().map(piece -> Row.of(piece, room.commission())).toList()), words);
            return room.problems().isEmpty() ? DONE : ATTENTION;
        }
    }

    private List<ExposedPiece> ofLevel(Lineage lineage) {
        int at = thing.indexOf('=');
        if (at < 1 || at == thing.length() - 1) {
            throw common.wrong("'" + thing + "' is neither of the form factor=level, such as mix=M07, nor the id of a record.");
        }
        String factor = thing.substring(0, at);
        String level = thing.substring(at + 1);
        Exposure exposure = new Exposure(lineage);
        List<String> levels = exposure.levels(factor, Integer.MAX_VALUE);
        List<String> factors = Stream.concat(WorkHistory.FACTORS.stream(), Stream.of("when", "fired_on", "fired_by")).filter(one -> !exposure.levels(one, 1)
                .isEmpty()).sorted().toList();
        if (levels.isEmpty() || !WorkHistory.FACTORS.contains(factor) && !List.of("when", "fired_on", "fired_by").contains(factor)) {
            throw new Refusal(thing, "no record names a " + factor,
                    factors.isEmpty() ? "record what was done first" : "take one of " + String.join(", ", factors));
        }
        if (!levels.contains(level)) {
            throw new Refusal(thing, "no record names this " + factor, "take one of " + String.join(", ", levels.stream().limit(40).toList()));
        }
        return exposure.ofLevel(factor, level);
    }

    private static List<String> now(ExposedPiece met, Optional<CommissionFolder> commission) {
        if (!met.piece().matches("\\d{1,6}")) {
            return List.of();
        }
        return commission.flatMap(folder -> folder.window(met.window())).map(window -> FormerPieces.numbersNow(window, Integer.parseInt(met.piece()))
                .stream().map(number -> met.window() + "/" + number).toList()).orElse(List.of());
    }

    /** Said only where the drawing has been revised since. */
    private static String today(ExposedPiece met, Optional<CommissionFolder> commission) {
        List<String> now = now(met, commission);
        return now.isEmpty() || now.equals(List.of(met.window() + "/" + met.piece())) ? "" : "  now " + String.join(", ", now);
    }
}
