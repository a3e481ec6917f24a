package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.production.check.FormerPieces;
import saddlebar.trace.suspect.WorkUnit;

/** The way forward: what else went through the same. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "exposed", sortOptions = false, description = "Lists every piece that shared a screen, mix, firing or setting, and its state.",
        footer = {"", "Example: saddlebar exposed my-panel mix=M07"})
public final class ExposedCommand implements BenchCommand {
    @Parameters(index = "0", paramLabel = "C", description = "Folder of the commission.")
    private Path folder;

    @Parameters(index = "1", paramLabel = "THING", description = "factor=level with the words of the record, for instance mix=M07 or firing=F031.")
    private String thing;

    @Mixin
    private CommonOptions common;

    /** One piece's layer that met the thing; {@code now} are the pieces of today's drawing that hold its glass, where that is known. */
    record Row(String window, String piece, String layer, String state, boolean bad, List<String> now) {
        static Row of(WorkUnit unit, CommissionFolder commission) {
            String[] name = unit.id().replaceFirst("#\\d+$", "").split("/", 3);
            return new Row(name[0], name.length > 1 ? name[1] : "", name.length > 2 ? name[2] : "", unit.factors().containsKey("fired_on")
                    ? "fired"
                    : "printed", unit.bad(), now(unit, commission));
        }

        static List<String> now(WorkUnit unit, CommissionFolder commission) {
            String[] name = unit.id().split("[/#]");
            if (name.length < 2 || !name[1].matches("\\d{1,6}")) {
                return List.of();
            }
            return commission.window(name[0]).map(window -> FormerPieces.numbersNow(window, Integer.parseInt(name[1])).stream()
                    .map(number -> name[0] + "/" + number).toList()).orElse(List.of());
        }
    }

    /** The JSON document. */
    record Answer(String thing, List<Row> pieces) {
    }

    @Override
    public Integer call() throws IOException {
        int at = thing.indexOf('=');
        if (at < 1 || at == thing.length() - 1) {
            throw common.wrong("'" + thing + "' is not of the form factor=level, such as mix=M07.");
        }
        String factor = thing.substring(0, at);
        String level = thing.substring(at + 1);
        try (CommissionFolder commission = CommissionFolder.open(folder, Access.READ)) {
            WorkReading reading = WorkReading.of(commission, Optional.empty(), Optional.empty(), common.work(1));
            common.tell(reading.problems());
            List<WorkUnit> units = reading.units();
            if (units.stream().noneMatch(unit -> unit.factors().containsKey(factor))) {
                throw new Refusal(thing, "no record names a " + factor, "take one of "
                        + String.join(", ", units.stream().flatMap(unit -> unit.factors().keySet().stream()).distinct().sorted().toList()));
            }
            List<WorkUnit> met = units.stream().filter(unit -> level.equals(unit.factors().get(factor))).toList();
            if (met.isEmpty()) {
                throw new Refusal(thing, "no record names this " + factor, "take one of " + String.join(", ",
                        units.stream().map(unit -> unit.factors().get(factor)).filter(found -> found != null).distinct().sorted().limit(40).toList()));
            }
            List<String> words = new ArrayList<>();
            words.add(met.size() + " met " + thing + ", " + met.stream().filter(WorkUnit::bad).count() + " of them flawed:");
            met.forEach(unit -> words.add("  " + unit.id() + (unit.bad() ? "  flawed" : "") + today(unit, commission)));
            common.answer(new Answer(thing, met.stream().map(unit -> Row.of(unit, commission)).toList()), words);
            return reading.problems().isEmpty() ? DONE : ATTENTION;
        }
    }

    /** Said only where the drawing has been revised since. */
    private static String today(WorkUnit unit, CommissionFolder commission) {
        List<String> now = Row.now(unit, commission);
        String piece = unit.id().replaceFirst("^([^/]*/[^/#]*).*", "$1");
        return now.isEmpty() || now.equals(List.of(piece)) ? "" : "  now " + String.join(", ", now);
    }
}
