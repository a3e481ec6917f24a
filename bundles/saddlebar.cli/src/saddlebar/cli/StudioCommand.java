package saddlebar.cli;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.Access;
import saddlebar.model.store.RecordDraft;
import saddlebar.model.store.RecordKind;
import saddlebar.model.store.StudioFolder;
import saddlebar.model.work.Work;
import saddlebar.production.trace.StudioUse;
import saddlebar.production.trace.TraceRoom;

/** What each person used of a shared studio. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "studio", sortOptions = false,
        description = "use: shows what each person used of paint, screens, film, kiln and hours in a studio that several share. charge and waive: settle it for one"
                + " person; the record of it stands in the studio.",
        footer = {"", "Example: saddlebar studio use our-studio", "Example: saddlebar studio use our-studio --person Tove",
                "Example: saddlebar studio waive our-studio --person Tove --reason \"first panel\""})
public final class StudioCommand implements BenchCommand {
    @Parameters(index = "0", paramLabel = "WHAT", description = "use, charge or waive.")
    private String what;

    @Parameters(index = "1", paramLabel = "STUDIO", description = "Folder of the studio, or of a commission that shares it.")
    private Path folder;

    @Option(names = "--person", paramLabel = "NAME", description = "Only this person's: nothing of anybody else is shown.")
    private String person;

    @Option(names = "--from", paramLabel = "DAY", description = "First day, such as 2026-03-01.")
    private String from;

    @Option(names = "--to", paramLabel = "DAY", description = "Last day.")
    private String to;

    @Option(names = "--reason", paramLabel = "TEXT", defaultValue = "", description = "Why it is waived, or a word beside the charge.")
    private String reason;

    @Mixin
    private CommonOptions common;

    /** One row of the JSON document; money as decimal text. */
    record Row(String person, String commission, double paintG, int screens, int film, double firings, double hours, String amount, List<String> unpriced) {
        static Row of(StudioUse.Row row) {
            return new Row(row.person(), row.commission(), row.paintG(), row.screens(), row.film(), row.firings(), row.hours(), row.amount().toPlainString(),
                    row.unpriced());
        }
    }

    /** What was settled with a person. */
    record Settled(String person, String charged, String waived, String open) {
    }

    /** The JSON document. */
    record Answer(String currency, List<Row> use, List<Settled> settled) {
    }

    @Override
    public Integer call() throws IOException {
        if (!List.of("use", "charge", "waive").contains(what)) {
            throw common.wrong("studio takes use, charge or waive, not '" + what + "'.");
        }
        if (!what.equals("use") && person == null) {
            throw common.wrong("studio " + what + " needs --person NAME.");
        }
        Instant first = from == null ? Instant.EPOCH : day(from).atStartOfDay(ZoneId.systemDefault()).toInstant();
        Instant end = to == null ? Instant.now().plusSeconds(1) : day(to).plusDays(1).atStartOfDay(ZoneId.systemDefault()).toInstant();
        Work work = common.work(1);
        StudioUse use;
        List<StudioUse.Settled> settled;
        Path studio;
        try (TraceRoom room = TraceRoom.open(folder, work)) {
            common.tell(room.problems());
            use = StudioUse.of(room, first, end, Optional.ofNullable(person), work);
            settled = StudioUse.settled(room, Optional.ofNullable(person), work);
            studio = room.studio().path();
        }
        List<String> words = new ArrayList<>();
        if (!what.equals("use")) {
            settled = settle(studio, use, settled, words);
        }
        List<Settled> all = new ArrayList<>();
        for (StudioUse.Settled one : settled) {
            BigDecimal used = use.rows().stream().filter(row -> row.person().equals(one.person())).map(StudioUse.Row::amount).reduce(BigDecimal.ZERO,
                    BigDecimal::add);
            all.add(new Settled(one.person(), one.charged().toPlainString(), one.waived().toPlainString(),
                    used.subtract(one.charged()).subtract(one.waived()).toPlainString()));
        }
        words.addAll(words(use, all));
        common.answer(new Answer(use.currency(), use.rows().stream().map(Row::of).toList(), all), words);
        return DONE;
    }

    private LocalDate day(String word) {
        try {
            return LocalDate.parse(word);
        } catch (DateTimeException e) {
            throw common.wrong("'" + word + "' is no day; write it as 2026-03-01.");
        }
    }

    /** What is still open is charged or waived; a record of the studio says so. */
    private List<StudioUse.Settled> settle(Path studio, StudioUse use, List<StudioUse.Settled> before, List<String> words) throws IOException {
        BigDecimal charged = before.stream().map(StudioUse.Settled::charged).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal waived = before.stream().map(StudioUse.Settled::waived).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal open = use.total().subtract(charged).subtract(waived);
        if (open.signum() <= 0) {
            throw new Refusal(person, "has nothing open to " + what, "see what was used: saddlebar studio use " + folder + " --person " + person);
        }
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("sourceKey", StudioUse.SOURCE);
        settings.put("person", person);
        settings.put("waived", what.equals("waive"));
        settings.put("amount", open.toPlainString());
        settings.put("currency", use.currency());
        try (StudioFolder writing = StudioFolder.open(studio, Access.WRITE)) {
            writing.records().append(RecordDraft.of(RecordKind.COST).with(settings).noting(reason));
        }
        words.add((what.equals("waive") ? "Waived " : "Charged ") + open.toPlainString() + " " + use.currency() + " of " + person + ".");
        return List.of(new StudioUse.Settled(person, what.equals("charge") ? charged.add(open) : charged, what.equals("waive") ? waived.add(open) : waived));
    }

    private static List<String> words(StudioUse use, List<Settled> settled) {
        List<String> words = new ArrayList<>();
        if (use.rows().isEmpty()) {
            words.add("Nothing that can be counted is recorded: mixes with powder_g, fused screens, firings, and hours.");
            return words;
        }
        words.add(
                String.format(Locale.ROOT, "%-12s %-24s %9s %8s %6s %8s %7s %10s  %s", "person", "commission", "paint g", "screens", "film", "firings", "hours",
                        use.currency(), "without a price"));
        use.rows()
                .forEach(row -> words.add(String
                        .format(Locale.ROOT, "%-12s %-24s %9.0f %8d %6d %8.2f %7.1f %10s  %s", row.person(), row.commission(), row.paintG(),
                                row.screens(), row.film(), row.firings(), row.hours(), row.amount().toPlainString(), String.join(", ", row.unpriced()))
                        .stripTrailing()));
        settled.forEach(one -> words.add(one.person() + ": charged " + one.charged() + ", waived " + one.waived() + ", open " + one.open()));
        return words;
    }
}
