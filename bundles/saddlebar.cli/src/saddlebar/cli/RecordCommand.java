package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
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
import saddlebar.model.store.Access;
import saddlebar.model.store.CardText;
import saddlebar.model.store.CommissionFolder;
import saddlebar.production.record.Deed;
import saddlebar.production.record.DeedBook;
import saddlebar.production.record.DeedReader;
import saddlebar.production.record.HeaderMapping;

/** Appends what was done at the bench to the record of a commission. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "record", sortOptions = false,
        description = "Appends what was done to the record: fuse, reclaim, mix, pull, fire, glaze, defect, remake, fix or"
                + " note. Nothing is ever erased; a later record corrects an earlier one.",
        footer = {"",
                "Example: saddlebar record my-panel pull window=W01 piece=3 layer=trace screen=S04 mix=M02",
                "Example: saddlebar record my-panel --csv notebook.csv --try",
                "Example: saddlebar record my-panel defect --code \"saddlebar piece W01/3 trace\" defect=pinholes at=40,25 --photo flaw.jpg",
                "Paint dust may hold lead, cadmium and silica: wet-clean, fitted respirator, no food nearby."})
public final class RecordCommand implements BenchCommand {
    @Parameters(index = "0", paramLabel = "C", description = "Folder of the commission.")
    private Path folder;

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "KIND k=v", description = "The kind, then words: when, who, window, piece, layer, stencil, sheet,"
            + " screen, mesh, paint, lot, mix, medium, pull, firing, schedule, shelf_place,"
            + " peak_c, heat_work, temperature_c, humidity, powder_g, medium_g, hours, defect, severity, disposition, at (X,Y in mm), note; x:WORD for your own.")
    private List<String> words = new ArrayList<>();

    @Option(names = "--csv", paramLabel = "FILE", description = "A table instead, one row a thing done; its columns are the words above and kind.")
    private Path csv;

    @Option(names = "--map", paramLabel = "HEADING=WORD,...", split = ",", description = "What the headings of an old notebook mean; --try proposes it.")
    private List<String> map = new ArrayList<>();

    @Option(names = "--dates", paramLabel = "ORDER", description = "dmy or mdy, where a notebook writes dates with strokes.")
    private String dates;

    @Option(names = "--code", paramLabel = "TEXT", description = "What the code on a sheet, frame, mix or piece card says; may be given several times.")
    private List<String> codes = new ArrayList<>();

    @Option(names = "--corrects", paramLabel = "ID", description = "The record that this one corrects; the old one stays and no longer counts.")
    private String corrects;

    @Option(names = "--photo", paramLabel = "FILE", description = "A photo, kept with the record.")
    private Path photo;

    @Option(names = "--create", description = "Make the windows, pieces and layers that an old notebook names and the commission lacks.")
    private boolean create;

    @Option(names = "--try", description = "Say what would happen, and append nothing.")
    private boolean trial;

    @Mixin
    private CommonOptions common;

    /** The JSON document. */
    record Answer(int records, boolean appended, List<String> ids, List<String> created, Map<String, String> mapping, List<Refused> refused,
            List<ProblemRow> problems) {
    }

    /** One bad row. */
    record Refused(String where, String what, String remedy) {
    }

    @Override
    public Integer call() throws IOException {
        if ((csv == null) == words.isEmpty()) {
            throw common.wrong("record takes a kind with its words, or --csv FILE.");
        }
        if (dates != null && !List.of("dmy", "mdy").contains(dates)) {
            throw common.wrong("--dates takes dmy or mdy, not '" + dates + "'.");
        }
        DeedReader reader = new DeedReader(Instant.now(), ZoneId.systemDefault());
        HeaderMapping mapping = csv == null ? HeaderMapping.OWN : mapping();
        List<Refusal> refused = new ArrayList<>();
        List<Deed> deeds = new ArrayList<>();
        if (csv == null) {
            deeds.add(reader.deed("record", byColumn()));
        } else {
            DeedReader.Table table = reader.table(csv, mapping);
            deeds.addAll(table.deeds());
            refused.addAll(table.refused());
        }
        try (CommissionFolder commission = CommissionFolder.open(folder, trial && !create ? Access.READ : Access.WRITE)) {
            DeedBook.Entered entered = new DeedBook(commission, create).enter(deeds, !trial && refused.isEmpty());
            refused.addAll(entered.refused());
            if (!refused.isEmpty() && !(trial && common.json())) {
                throw new Refusal(refused.get(0).where(), all(refused), refused.size() > 1 ? "mend these rows; nothing was appended" : refused.get(0).remedy());
            }
            common.tell(entered.warnings());
            common.answer(new Answer(entered.records(), !trial, entered.ids(), entered.created(), mapping.columns(),
                    refused.stream().map(one -> new Refused(one.where(), one.what(), one.remedy())).toList(),
                    entered.warnings().stream().map(ProblemRow::of).toList()), said(entered, mapping));
            return entered.warnings().isEmpty() && refused.isEmpty() ? DONE : ATTENTION;
        }
    }

    /** What the headings mean: as told, or as they seem to where it is only tried. */
    private HeaderMapping mapping() throws IOException {
        HeaderMapping proposed = HeaderMapping.propose(csv);
        if (!map.isEmpty()) {
            Map<String, String> told = new LinkedHashMap<>();
            proposed.columns().keySet().forEach(heading -> told.put(heading, DeedReader.COLUMNS.contains(heading) ? heading : DeedReader.FREE + heading));
            for (String one : map) {
                int at = one.lastIndexOf('=');
                if (at < 1 || !told.containsKey(one.substring(0, at).strip())) {
                    throw common.wrong(
                            "--map '" + one + "' names no heading of " + csv.getFileName() + "; these are there: " + String.join(", ", told.keySet()) + ".");
                }
                told.put(one.substring(0, at).strip(), one.substring(at + 1).strip());
            }
            return new HeaderMapping(told, dates == null ? "" : dates);
        }
        if (proposed.isOwn()) {
            return HeaderMapping.OWN;
        }
        if (trial) {
            return proposed.withDates(dates == null ? "" : dates);
        }
        List<String> foreign = proposed.columns().keySet().stream().filter(heading -> !DeedReader.COLUMNS.contains(heading)).toList();
        throw new Refusal(csv.getFileName() + ":1", "there is no column '" + foreign.get(0) + "'",
                "take of: " + String.join(", ", DeedReader.COLUMNS) + "; or, if this is what the headings mean, give --map \"" + proposed.text() + "\"");
    }

    private List<String> said(DeedBook.Entered entered, HeaderMapping mapping) {
        List<String> said = new ArrayList<>();
        if (trial && !mapping.columns().isEmpty()) {
            said.add("The headings seem to mean:");
            mapping.columns().forEach((heading, column) -> said.add(String.format(Locale.ROOT, "  %-24s %s", heading,
                    column.startsWith(DeedReader.FREE) ? column + " (kept as it stands)" : column)));
            said.add("If so, run it without --try and with --map \"" + mapping.text() + "\"");
        }
        said.add((trial ? "Would append " : "Appended ") + entered.records() + (entered.records() == 1 ? " record." : " records."));
        if (entered.records() == 1 && !entered.ids().isEmpty()) {
            said.add("Its id is " + entered.ids().get(0) + ".");
        }
        if (!entered.created().isEmpty()) {
            said.add((trial ? "Would make: " : "Made: ") + made(entered.created()) + ".");
        }
        return said;
    }

    /** Each by its name while they are few, else how many of a kind. */
    private static String made(List<String> created) {
        if (created.size() <= 12) {
            return String.join(", ", created);
        }
        Map<String, Integer> kinds = new LinkedHashMap<>();
        created.forEach(one -> kinds.merge(one.substring(0, one.indexOf(' ')), 1, Integer::sum));
        return String.join(", ", kinds.entrySet().stream().map(kind -> kind.getValue() + " " + kind.getKey() + (kind.getValue() > 1 ? "s" : "")).toList());
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
        for (String code : codes) {
            byColumn.putAll(CardText.words(code));
        }
        if (corrects != null) {
            byColumn.put("corrects", corrects);
        }
        if (photo != null) {
            byColumn.put("photo", photo.toString());
        }
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
