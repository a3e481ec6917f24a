package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import saddlebar.model.store.CommissionFolder;
import saddlebar.production.trace.TraceRoom;
import saddlebar.trace.history.WorkHistory;
import saddlebar.trace.statistics.Estimate;
import saddlebar.trace.statistics.TwoByTwo;
import saddlebar.trace.suspect.Findings;
import saddlebar.trace.suspect.Level;
import saddlebar.trace.suspect.Measured;
import saddlebar.trace.suspect.Suspect;
import saddlebar.trace.suspect.SuspectSearch;

/** What goes with flaws. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "suspects", sortOptions = false, description = "Ranks what flawed work shared: screens, mixes, firings, shelf places, settings.",
        footer = {"", "Example: saddlebar suspects my-panel --kind pinholes"})
public final class SuspectsCommand implements BenchCommand {
    private static final int SHOWN = 12;

    @Parameters(index = "0", paramLabel = "C-or-STUDIO", description = "Folder of the commission, or of a studio: then of all who joined it.")
    private Path folder;

    @Option(names = "--kind", paramLabel = "K", description = "Only flaws of this kind.")
    private String kind;

    @Option(names = "--window", paramLabel = "W", description = "Only work on this window.")
    private String window;

    @Mixin
    private CommonOptions common;

    /** Odds with the suspects before it held fixed. */
    record Stratified(Double oddsRatio, double p) {
    }

    /** One suspect of the JSON document; aliases are levels that always came together with it. */
    record Row(String factor, String level, long bad, long exposed, long badOther, long other, double p, double q, double oddsRatio, List<Double> interval,
            List<String> aliases, Stratified stratified, String standing, List<String> explainedBy) {
        static Row of(Suspect suspect) {
            Level first = suspect.levels().get(0);
            Estimate odds = suspect.table().oddsRatio();
            return new Row(first.factor(), first.name(), suspect.table().badExposed(), suspect.table().exposed(), suspect.table().badOther(),
                    suspect.table().total() - suspect.table().exposed(), suspect.p(), suspect.adjusted(), odds.value(), List.of(odds.low(), odds.high()),
                    suspect.levels().stream().skip(1).map(level -> level.factor() + "=" + level.name()).toList(),
                    suspect.within().map(within -> new Stratified(finite(within.oddsRatio().value()), within.p())).orElse(null),
                    suspect.standing().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    suspect.by().stream().map(by -> by.factor() + "=" + by.name()).toList());
        }

        private static Double finite(double value) {
            return Double.isFinite(value) ? value : null;
        }
    }

    /** One number taken on the way, flawed against good. */
    record MeasureRow(String name, int bad, int good, double medianBad, double medianGood, double p, double q, double higher, double delta,
            String size) {
        static MeasureRow of(Measured m) {
            return new MeasureRow(m.name(), m.bad(), m.good(), m.medianBad(), m.medianGood(), m.test().p(), m.adjusted(), m.test().higher(),
                    m.test().delta(), m.test().size());
        }
    }

    /** The JSON document. */
    record Answer(int units, int bad, List<Row> suspects, List<MeasureRow> measures, List<String> cautions) {
    }

    @Override
    public Integer call() throws IOException {
        try (TraceRoom room = TraceRoom.open(folder, common.work(1))) {
            List<String> windows = room.commission().map(CommissionFolder::windowNames).orElse(List.of());
            if (window != null && room.commission().isPresent() && !windows.contains(window)) {
                throw common.wrong("There is no window " + window + "; take one of " + String.join(", ", windows) + ".");
            }
            common.tell(room.problems());
            WorkHistory history = new WorkHistory(Optional.ofNullable(kind), Optional.ofNullable(window));
            room.sources().forEach(source -> source.index().forEach(history::take));
            Findings findings = SuspectSearch.withDefaults().among(history.units());
            common.answer(new Answer(findings.units(), findings.bad(), findings.suspects().stream().map(Row::of).toList(),
                    findings.measures().stream().map(MeasureRow::of).toList(), findings.cautions()), words(findings));
            return room.problems().isEmpty() ? DONE : ATTENTION;
        }
    }

    private static List<String> words(Findings findings) {
        List<String> words = new ArrayList<>();
        words.add(findings.units() + " prints and firings, " + findings.bad() + " flawed.");
        if (!findings.suspects().isEmpty()) {
            words.add(String.format(Locale.ROOT, "%-34s %-16s %-16s %-9s %-9s %s", "with", "flawed with it", "flawed without", "chance", "adjusted",
                    "what follows"));
        }
        findings.suspects().stream().limit(SHOWN).forEach(suspect -> words.add(line(suspect)));
        if (findings.suspects().size() > SHOWN) {
            words.add("and " + (findings.suspects().size() - SHOWN) + " more; --json lists all");
        }
        findings.measures().forEach(m -> words.add(String.format(Locale.ROOT, "%s: median %.4g where flawed, %.4g where good; chance %.2g%s", m.name(),
                m.medianBad(), m.medianGood(), m.test().p(), m.differs() ? ", a " + m.test().size() + " difference" : "")));
        words.addAll(findings.cautions());
        return words;
    }

    private static String line(Suspect suspect) {
        TwoByTwo table = suspect.table();
        String follows = switch (suspect.standing()) {
            case LEADING -> "goes with the flaws most clearly";
            case ALSO -> "goes with flaws beside those above";
            case EXPLAINED -> "explained by " + names(suspect.by());
            case INSEPARABLE -> "cannot be told apart from " + names(suspect.by());
            case CLEAR -> "no more than chance brings";
            case TOO_FEW -> "too few to test";
        };
        return String.format(Locale.ROOT, "%-34s %-16s %-16s %-9.2g %-9.2g %s", names(suspect.levels()), table.badExposed() + " of " + table.exposed(),
                table.badOther() + " of " + (table.total() - table.exposed()), suspect.p(), suspect.adjusted(), follows);
    }

    private static String names(List<Level> levels) {
        return String.join(" / ", levels.stream().map(Level::toString).toList());
    }
}
