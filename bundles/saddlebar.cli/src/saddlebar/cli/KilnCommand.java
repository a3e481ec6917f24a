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
import saddlebar.kiln.fire.Kiln;
import saddlebar.kiln.search.KilnLearning;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.production.kiln.FiringBook;
import saddlebar.production.kiln.HistoryReader;
import saddlebar.production.kiln.KilnHistory;
import saddlebar.production.kiln.KilnTeaching;
import saddlebar.production.kiln.RecordedFiring;
import saddlebar.production.kiln.StudioHeat;
import saddlebar.model.work.Work;

/** What the records and logs say of the kilns of a studio. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "kiln", sortOptions = false, description = {"Tells what the records and logs say of a studio's kilns: each firing held against its log,",
        "drift over the months, energy, hot and cold places of the shelf, and paint that has gathered too much heat over all firings of its piece."},
        footer = {"", "Example: saddlebar kiln my-panel --log F031=kiln-log.csv", "",
                "Never leave a kiln unattended near its peak; ventilate; eye protection made for kilns."})
public final class KilnCommand implements BenchCommand {
    @Parameters(index = "0", paramLabel = "C", description = "Folder of the commission.")
    private Path folder;

    @Option(names = "--log", paramLabel = "FIRING=LOG", description = "Lay a logger's file beside a firing; it is copied into the studio.")
    private List<String> logs = List.of();

    @Option(names = "--witness", paramLabel = "FIRING:PLACE=C", description = "Enter what a cone, test tile or second thermocouple at a place showed.")
    private List<String> witnesses = List.of();

    @Option(names = "--meter", paramLabel = "FIRING=KWH", description = "Enter what the kiln's meter counted.")
    private List<String> meters = List.of();

    @Option(names = "--learn", paramLabel = "KILN", description = "Learn what this kiln of the studio can do from its logs, and write it into the studio.")
    private String learn;

    @Mixin
    private CommonOptions common;

    @Override
    public Integer call() throws IOException {
        boolean writes = learn != null || !logs.isEmpty() || !witnesses.isEmpty() || !meters.isEmpty();
        StudioHeat heat = StudioHeat.installed();
        try (CommissionFolder commission = CommissionFolder.open(folder, writes ? Access.WRITE : Access.READ)) {
            enter(commission);
            Work work = common.work(1);
            KilnHistory history = HistoryReader.read(commission, heat, work);
            Optional<KilnLearning.Learnt> learnt = learn == null ? Optional.empty() : Optional.of(learnt(commission, heat, history, work));
            work.advance(1);
            KilnAnswer answer = KilnAnswer.of(history, learnt);
            common.answer(answer, answer.words());
            common.tell(history.problems());
            return history.wantsAttention() ? ATTENTION : DONE;
        }
    }

    private void enter(CommissionFolder commission) throws IOException {
        FiringBook book = new FiringBook(commission);
        for (String one : logs) {
            String[] parts = parts("--log", one, "FIRING=LOG");
            RecordedFiring firing = firing(book, parts[0]);
            double elementsW = commission.studio().getKilns().stream().filter(kiln -> kiln.getId().equals(firing.kilnId()))
                    .mapToDouble(kiln -> kiln.getPowerKw() * 1000).findFirst().orElse(Double.NaN);
            book.attach(firing, Path.of(parts[1]), elementsW);
        }
        for (String one : witnesses) {
            String[] parts = parts("--witness", one, "FIRING:PLACE=C");
            int colon = parts[0].indexOf(':');
            if (colon < 1) {
                throw common.wrong("--witness takes FIRING:PLACE=C such as F031:A1=652, not '" + one + "'.");
            }
            book.witness(firing(book, parts[0].substring(0, colon)), parts[0].substring(colon + 1), number("--witness", parts[1]));
        }
        for (String one : meters) {
            String[] parts = parts("--meter", one, "FIRING=KWH");
            book.energy(firing(book, parts[0]), number("--meter", parts[1]));
        }
    }

    private String[] parts(String option, String one, String form) {
        int at = one.indexOf('=');
        if (at < 1 || at == one.length() - 1) {
            throw common.wrong(option + " takes " + form + ", not '" + one + "'.");
        }
        return new String[] {one.substring(0, at), one.substring(at + 1)};
    }

    private double number(String option, String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException noNumber) {
            throw common.wrong(option + ": '" + text + "' is no number.");
        }
    }

    private static RecordedFiring firing(FiringBook book, String name) throws IOException {
        FiringBook.Read read = book.read();
        return read.named(name).orElseThrow(() -> new Refusal(name, "there is no such firing in the records", read.firings().isEmpty()
                ? "record a firing first"
                : "take one of " + String.join(", ", read.firings().stream().map(RecordedFiring::name).limit(20).toList())));
    }

    private KilnLearning.Learnt learnt(CommissionFolder commission, StudioHeat heat, KilnHistory history, Work work) throws IOException {
        List<saddlebar.model.commission.Kiln> kilns = commission.studio().getKilns();
        saddlebar.model.commission.Kiln kiln = kilns.stream().filter(known -> learn.equalsIgnoreCase(known.getName())).findFirst().orElseThrow(
                () -> common.wrong("--learn knows no '" + learn + "'. The studio has " + kilns.stream().map(known -> known.getName()).toList() + "."));
        Kiln start = heat.kiln(kiln);
        KilnHistory.KilnFacts facts = history.kiln(kiln.getId()).orElseThrow();
        KilnLearning.Learnt learnt = KilnTeaching.learn(start, facts, work);
        KilnTeaching.write(learnt, facts.lessons().size(), kiln);
        commission.save();
        return learnt;
    }

    /** The JSON document. */
    record KilnAnswer(List<FiringRow> firings, List<KilnRow> kilns, List<PieceRow> pieces, Learnt learnt, List<ProblemRow> problems) {
        record FiringRow(String name, String when, String kiln, String schedule, Double peakC, int pieces, String log, String verdict, Double heatWorkRatio,
                Double shiftK, Double kWh) {
        }

        record KilnRow(String name, int firings, Drift drift, Energy energy, List<Place> shelf) {
        }

        record Drift(double kPerMonth, double standardError, double nowK, boolean clear) {
        }

        record Energy(int records, double kWhAt650CIn18H) {
        }

        record Place(String place, double offK, Double standardError, int witnesses, boolean clear) {
        }

        record PieceRow(String piece, List<LayerRow> layers) {
        }

        record LayerRow(String paint, String state, int moreSuch) {
        }

        record Learnt(String kiln, double beforeK, double afterK) {
        }

        static KilnAnswer of(KilnHistory history, Optional<KilnLearning.Learnt> learnt) {
            List<FiringRow> firings = history.firings().stream().map(one -> new FiringRow(one.firing().name(), one.firing().when().toString(),
                    history.kiln(one.firing().kilnId()).map(KilnHistory.KilnFacts::name).orElse(""), one.firing().scheduleName(), one.peakC().orElse(null),
                    one.firing().pieces().size(), one.firing().logFile().orElse(null), one.review().map(review -> review.verdict().key()).orElse(null),
                    one.review().map(review -> review.heatWorkRatio()).filter(Double::isFinite).orElse(null), one.shiftK().orElse(null),
                    one.kWh().orElse(null))).toList();
            List<KilnRow> kilns = history.kilns().stream().map(kiln -> new KilnRow(kiln.name(), kiln.firings(),
                    kiln.drift().map(drift -> new Drift(drift.kPerMonth(), drift.standardError(), drift.nowK(), drift.clear())).orElse(null),
                    kiln.energy().map(model -> new Energy(kiln.firings(), model.kWh(650, 18))).orElse(null),
                    kiln.shelf().places().stream().map(place -> new Place(place.name(), place.offK(),
                            Double.isNaN(place.standardError()) ? null : place.standardError(), place.witnesses(), place.clear())).toList()))
                    .toList();
            List<PieceRow> pieces = history.pieces().stream().map(piece -> new PieceRow(piece.label(), piece.layers().stream()
                    .map(layer -> new LayerRow(layer.paint().name(), layer.maturity().words(), layer.moreSuch())).toList())).toList();
            return new KilnAnswer(firings, kilns, pieces, learnt.map(found -> new Learnt(found.kiln().name(), found.beforeK(), found.afterK())).orElse(null),
                    history.problems().stream().map(ProblemRow::of).toList());
        }

        List<String> words() {
            List<String> words = new ArrayList<>();
            if (firings.isEmpty()) {
                words.add(
                        "No firing is recorded yet. Record one with: saddlebar record C fire window=W01 piece=1 layer=trace firing=F001 schedule=\"trace 650\"");
            }
            for (FiringRow row : firings) {
                words.add(String.format(Locale.ROOT, "%s  %s  %s  %s, %d piece%s%s%s", row.name(), row.when().substring(0, 10), row.schedule(),
                        row.peakC() == null ? "peak not known" : String.format(Locale.ROOT, "%.0f degC", row.peakC()), row.pieces(),
                        row.pieces() == 1 ? "" : "s",
                        row.verdict() == null ? "" : ", " + row.verdict(), row.kWh() == null ? "" : String.format(Locale.ROOT, ", %.1f kWh", row.kWh())));
            }
            for (KilnRow kiln : kilns) {
                if (kiln.drift() != null) {
                    words.add(String.format(Locale.ROOT, "%s: %+.1f K a month (+-%.1f), now %+.1f K", kiln.name(), kiln.drift().kPerMonth(),
                            kiln.drift().standardError(), kiln.drift().nowK()));
                }
                if (kiln.energy() != null) {
                    words.add(String.format(Locale.ROOT, "%s: %.1f kWh for a peak of 650 degC within 18 h, by its own records", kiln.name(),
                            kiln.energy().kWhAt650CIn18H()));
                }
                kiln.shelf()
                        .forEach(place -> words.add(String.format(Locale.ROOT, "%s, place %s: %+.1f K by %d witness%s%s",
                                kiln.name().isEmpty() ? "a kiln not named" : kiln.name(), place.place(),
                                place.offK(), place.witnesses(), place.witnesses() == 1 ? "" : "es", place.clear() ? "" : " (not clear yet)")));
            }
            if (learnt != null) {
                words.add(String.format(Locale.ROOT, "%s is learnt: its run lies %.1f K beside its logs (%.1f K before).", learnt.kiln(), learnt.afterK(),
                        learnt.beforeK()));
            }
            return words;
        }
    }
}
