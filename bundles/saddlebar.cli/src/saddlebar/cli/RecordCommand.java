package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.production.record.Deed;
import saddlebar.production.record.DeedBook;
import saddlebar.production.record.DeedReader;

/** Appends what was done at the bench to the record of a commission. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "record", sortOptions = false,
        description = "Appends what was done to the record: fuse, reclaim, mix, pull, fire, glaze, defect, remake, fix or"
                + " note. Nothing is ever erased; a later record corrects an earlier one.",
        footer = {"",
                "Example: saddlebar record my-panel pull window=W01 piece=3 layer=trace screen=S04 mix=M02",
                "Example: saddlebar record my-panel --csv notebook.csv --try",
                "Paint dust may hold lead, cadmium and silica: wet-clean, fitted respirator, no food nearby."})
public final class RecordCommand implements BenchCommand {
    @Parameters(index = "0", paramLabel = "C", description = "Folder of the commission.")
    private Path folder;

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "KIND k=v", description = "The kind, then words: when, who, window, piece, layer, stencil, sheet,"
            + " screen, mesh, paint, lot, mix, medium, pull, firing, schedule, shelf_place, peak_c, humidity, defect, severity, note.")
    private List<String> words = new ArrayList<>();

    @Option(names = "--csv", paramLabel = "FILE", description = "A table instead, one row a thing done; its columns are the words above and kind.")
    private Path csv;

    @Option(names = "--create", description = "Make the windows, pieces and layers that an old notebook names and the commission lacks.")
    private boolean create;

    @Option(names = "--try", description = "Say what would happen, and append nothing.")
    private boolean trial;

    @Mixin
    private CommonOptions common;

    /** The JSON document. */
    record Answer(int records, boolean appended, List<String> created, List<ProblemRow> problems) {
    }

    @Override
    public Integer call() throws IOException {
        if ((csv == null) == words.isEmpty()) {
            throw common.wrong("record takes a kind with its words, or --csv FILE.");
        }
        DeedReader reader = new DeedReader(Instant.now(), ZoneId.systemDefault());
        List<Refusal> refused = new ArrayList<>();
        List<Deed> deeds = new ArrayList<>();
        if (csv == null) {
            deeds.add(reader.deed("record", byColumn()));
        } else {
            DeedReader.Table table = reader.table(csv);
            deeds.addAll(table.deeds());
            refused.addAll(table.refused());
        }
        try (CommissionFolder commission = CommissionFolder.open(folder, trial && !create ? Access.READ : Access.WRITE)) {
            DeedBook.Entered entered = new DeedBook(commission, create).enter(deeds, !trial && refused.isEmpty());
            refused.addAll(entered.refused());
            if (!refused.isEmpty()) {
                throw new Refusal(refused.get(0).where(), all(refused), refused.size() > 1 ? "mend these rows; nothing was appended" : refused.get(0).remedy());
            }
            common.tell(entered.warnings());
            List<String> said = new ArrayList<>();
            said.add((trial ? "Would append " : "Appended ") + entered.records() + (entered.records() == 1 ? " record." : " records."));
            if (!entered.created().isEmpty()) {
                said.add((trial ? "Would make: " : "Made: ") + String.join(", ", entered.created()) + ".");
            }
            common.answer(new Answer(entered.records(), !trial, entered.created(), entered.warnings().stream().map(ProblemRow::of).toList()), said);
            return entered.warnings().isEmpty() ? DONE : ATTENTION;
        }
    }

    /** One sentence a bad row, each row with its place. */
    private static String all(List<Refusal> refused) {
        if (refused.size() == 1) {
            return refused.get(0).what();
        }
        StringBuilder all = new StringBuilder(refused.get(0).what());
        refused.stream().skip(1).limit(200).forEach(refusal -> all.append('\n').append(refusal.where()).append(": ").append(refusal.what()));
        return all.toString();
    }

    private Map<String, String> byColumn() {
        Map<String, String> byColumn = new LinkedHashMap<>();
        byColumn.put("kind", words.get(0));
        for (String word : words.subList(1, words.size())) {
            int at = word.indexOf('=');
            if (at < 1) {
                throw common.wrong("'" + word + "' is not of the form word=value.");
            }
            byColumn.put(word.substring(0, at), word.substring(at + 1).strip());
        }
        return byColumn;
    }
}
