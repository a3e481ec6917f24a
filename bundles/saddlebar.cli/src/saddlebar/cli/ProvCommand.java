package saddlebar.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import saddlebar.model.file.PendingFile;
import saddlebar.model.problem.LockedException;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.RecordBook;
import saddlebar.model.store.RecordDraft;
import saddlebar.model.store.RecordLine;
import saddlebar.model.store.RecordReading;
import saddlebar.model.work.Work;
import saddlebar.trace.prov.ProvReader;
import saddlebar.trace.prov.ProvWriter;

/** The whole record in the open form of the W3C. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "prov", sortOptions = false,
        description = "Writes the whole making record, the commission's own and its studio's, as PROV-JSON (W3C), or takes one in again.",
        footer = {"", "Example: saddlebar prov my-panel --out record.json", "Example: saddlebar prov rebuilt-panel --in record.json"})
public final class ProvCommand implements BenchCommand {
    @Parameters(index = "0", paramLabel = "C", description = "Folder of the commission.")
    private Path folder;

    @Option(names = "--out", paramLabel = "F.json", description = "File to write.")
    private Path out;

    @Option(names = "--in", paramLabel = "F.json", description = "File to take in: records that are not yet here are appended with their own ids.")
    private Path in;

    @Option(names = "--replace", description = "The file of --out may be there already.")
    private boolean replace;

    @Mixin
    private CommonOptions common;

    /** The JSON document. */
    record Answer(String file, int records, int appended, int known) {
    }

    @Override
    public Integer call() throws IOException {
        if ((out == null) == (in == null)) {
            throw common.wrong("prov takes --out F.json or --in F.json.");
        }
        return out != null ? write() : take();
    }

    private int write() throws IOException {
        if (!replace && Files.exists(out)) {
            throw new LockedException(out + " exists already; nothing was changed. Name another file, or give --replace.");
        }
        Work work = common.work(1);
        try (CommissionFolder commission = CommissionFolder.open(folder, Access.READ)) {
            ProvWriter prov = new ProvWriter(false);
            List<Problem> problems = new ArrayList<>();
            int records = 0;
            for (RecordBook book : books(commission)) {
                try (RecordReading reading = book.read()) {
                    for (var line = reading.next(); line.isPresent(); line = reading.next()) {
                        work.checkpoint();
                        prov.take(line.get());
                        records++;
                    }
                    problems.addAll(reading.problems());
                }
            }
            try (PendingFile pending = PendingFile.beside(out); Writer to = new OutputStreamWriter(pending.out(), StandardCharsets.UTF_8)) {
                prov.write(to);
                pending.commit();
            }
            common.tell(problems);
            common.answer(new Answer(out.toString(), records, 0, 0), List.of(out + " holds " + records + " records."));
            return problems.isEmpty() ? DONE : ATTENTION;
        }
    }

    private static List<RecordBook> books(CommissionFolder commission) {
        return List.of(commission.records(), commission.studioFolder().records());
    }

    private int take() throws IOException {
        if (!Files.isRegularFile(in)) {
            throw new Refusal(in.toString(), "there is no such file", "name a file that prov --out wrote");
        }
        List<ProvReader.Told> told;
        try (BufferedReader reader = Files.newBufferedReader(in, StandardCharsets.UTF_8)) {
            StringBuilder text = new StringBuilder();
            char[] some = new char[1 << 16];
            for (int n = reader.read(some); n >= 0; n = reader.read(some)) {
                text.append(some, 0, n);
            }
            told = ProvReader.read(in.toString(), text.toString());
        } catch (CharacterCodingException e) {
            throw new Refusal(in.toString(), "is not UTF-8 text", "name a file that prov --out wrote", e);
        }
        try (CommissionFolder commission = CommissionFolder.open(folder, Access.WRITE)) {
            Set<String> known = new HashSet<>();
            for (RecordBook book : books(commission)) {
                try (RecordReading reading = book.read()) {
                    reading.forEach((RecordLine line) -> known.add(line.id()), common.work(1));
                }
            }
            List<RecordDraft> fresh = told.stream().filter(one -> !known.contains(one.draft().id().orElseThrow())).map(ProvCommand::draft).toList();
            commission.records().append(fresh);
            common.answer(new Answer(in.toString(), told.size(), fresh.size(), told.size() - fresh.size()),
                    List.of("Appended " + fresh.size() + " of " + told.size()
                            + " records" + (fresh.size() < told.size() ? "; the others were here already." : ".")));
            return DONE;
        }
    }

    /** The chain it now stands in is ours; who first wrote it, and when, is kept. */
    private static RecordDraft draft(ProvReader.Told told) {
        Map<String, Object> settings = new LinkedHashMap<>(told.draft().settings());
        settings.putIfAbsent("firstWriter", told.writer());
        settings.putIfAbsent("firstWritten", told.written().toString());
        return told.draft().with(settings);
    }
}
