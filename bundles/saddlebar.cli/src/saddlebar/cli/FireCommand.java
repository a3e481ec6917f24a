package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Files;
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
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import saddlebar.kiln.advice.Advisor;
import saddlebar.kiln.chart.FiringChart;
import saddlebar.kiln.chart.FiringTable;
import saddlebar.kiln.fire.Firing;
import saddlebar.kiln.fire.Kiln;
import saddlebar.kiln.fire.Load;
import saddlebar.kiln.fire.Simulation;
import saddlebar.kiln.glass.Vft;
import saddlebar.kiln.log.FiringLog;
import saddlebar.kiln.log.LogReader;
import saddlebar.kiln.log.LogReview;
import saddlebar.kiln.paint.HeatWork;
import saddlebar.kiln.paint.PaintFlux;
import saddlebar.kiln.paint.PaintHistory;
import saddlebar.kiln.schedule.HeatCurve;
import saddlebar.kiln.schedule.Schedule;
import saddlebar.kiln.schedule.ScheduleFile;
import saddlebar.kiln.search.FoundSchedule;
import saddlebar.kiln.search.KilnLearning;
import saddlebar.kiln.search.ScheduleSearch;
import saddlebar.kiln.search.SearchLimits;
import saddlebar.kiln.table.KilnTables;
import saddlebar.model.problem.LockedException;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.model.units.Units;
import saddlebar.report.chart.ChartPdf;

/** A firing simulated, advised on, and held against what the kiln did. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "fire", sortOptions = false, description = "Simulates a firing schedule, advises on it, and holds a kiln's log against it.",
        footer = {"", "Example: saddlebar fire demo-projects/firing/trace-650.csv --log demo-projects/firing/kiln-log.csv --paint \"tracing black\" "
                + "--chart firing.svg", "",
                "SCHEDULE has the columns segment,rate_k_per_h,target_c,soak_min; an empty rate is as fast as the kiln goes.",
                "LOG has time (ISO 8601), seconds or minutes, and temperature_c, temperature_f or thermocouple_mv (type K) with cold_junction_c.", "",
                "Never leave a kiln unattended near its peak; ventilate; eye protection made for kilns."})
public final class FireCommand implements BenchCommand {
    private static final double TABLE_EVERY_MIN = 5;

    @Parameters(index = "0", paramLabel = "SCHEDULE", description = "The schedule as CSV.")
    private Path schedule;

    @Option(names = "--log", paramLabel = "LOG", description = "What the kiln did, as CSV of its logger.")
    private Path log;

    @Mixin
    private FireLoad lying;

    @Option(names = "--paint", paramLabel = "NAME",
            description = "Paint of the studio's tables that is new in this firing; its flux then counts the heat work.")
    private String paintName;

    @Option(names = "--kiln", paramLabel = "NAME", defaultValue = "small kiln", description = "Kiln of the studio's tables; small kiln if not given.")
    private String kilnName;

    @Option(names = "--earlier", paramLabel = "PAINT=SCHEDULE",
            description = "An earlier firing of the same piece and its paint; several in their order.")
    private List<String> earlier = List.of();

    @Option(names = "--optimise", paramLabel = "OUT",
            description = "Look for the shortest schedule that keeps to all limits and write it to OUT (CSV).")
    private Path optimise;

    @Option(names = "--lesson", paramLabel = "SCHEDULE=LOG",
            description = "Learn what the kiln can do from a schedule and its log before all else; several if given again.")
    private List<String> lessons = List.of();

    @Option(names = "--chart", paramLabel = "OUT", description = "Draw temperatures and stress to OUT (SVG, PNG or PDF by its ending).")
    private Path chart;

    @Option(names = "--table", paramLabel = "OUT", description = "Write the chart in numbers to OUT (CSV), a row for every five minutes.")
    private Path table;

    @Option(names = "--replace", description = "Replace OUT if it exists.")
    private boolean replace;

    @Mixin
    private CommonOptions common;

    @Override
    public Integer call() throws IOException {
        checkWords();
        KilnTables tables = tables();
        Load load = lying.load(tables, common);
        Optional<PaintFlux> paint = paintName == null
                ? Optional.empty()
                : Optional.of(FireLoad.named("--paint", paintName, tables.paint(paintName), tables.paintNames(), common));
        Kiln kiln = FireLoad.named("--kiln", kilnName, tables.kiln(kilnName), tables.kilnNames(), common);
        Schedule asked = ScheduleFile.read(schedule);
        Optional<FiringLog> read = log == null ? Optional.empty() : Optional.of(LogReader.read(log, kiln.powerW()));
        Optional<KilnLearning.Learnt> learnt = learnt(kiln);
        kiln = learnt.map(found -> found.kiln().withoutLoad(load.shelf())).orElse(kiln);
        List<PaintHistory.Fired> before = earlierFirings(tables, load, kiln);
        Vft counts = paint.map(PaintFlux::flux).orElse(load.glass().viscosity());

        Firing firing = Simulation.run(asked, load, kiln);
        List<Problem> advice = Stream.concat(Advisor.on(firing, paint, before).stream(), lying.cautions().stream()).sorted(Problem.WORST_FIRST).toList();
        Optional<LogReview> review = read.map(found -> LogReview.of(asked, found, counts));
        Optional<FoundSchedule> shortest = Optional.empty();
        if (optimise != null) {
            shortest = Optional
                    .of(ScheduleSearch.shortest(asked, load, kiln, SearchLimits.usual(load, paint), common.work(ScheduleSearch.WORK_UNITS)));
            ScheduleFile.write(shortest.get().schedule(), optimise, replace);
        }
        Optional<HeatCurve> curve = read.map(FiringLog::curve);
        if (chart != null && ending(chart).equals(".pdf")) {
            ChartPdf.write(FiringChart.drawing(firing, curve), asked.name(), chart, "Saddlebar");
        } else if (chart != null) {
            FiringChart.write(firing, curve, chart, replace);
        }
        if (table != null) {
            FiringTable.write(FiringTable.rows(firing, curve, TABLE_EVERY_MIN), table, replace);
        }
        double written = HeatWork.of(asked.asWritten(), counts);
        FireAnswer answer = FireAnswer.of(firing, written, counts, advice, read, review, paint, shortest, learnt, optimise, chart);
        common.answer(answer, words(firing, answer, read, review, shortest));
        List<Problem> all = Stream.concat(advice.stream(), review.map(LogReview::cautions).orElse(List.of()).stream()).sorted(Problem.WORST_FIRST)
                .toList();
        common.tell(all);
        return all.stream().anyMatch(problem -> problem.severity() != Severity.NOTE) ? ATTENTION : DONE;
    }

    private void checkWords() throws LockedException {
        if (chart != null && !List.of(".svg", ".png", ".pdf").contains(ending(chart))) {
            throw common.wrong("--chart takes a name that ends in .svg, .png or .pdf, not '" + chart + "'.");
        }
        csvOnly("--table", table);
        csvOnly("--optimise", optimise);
        for (Path out : new Path[] {optimise, chart, table}) { // before a search of seconds, not behind it
            if (out != null && Files.exists(out) && !replace) {
                throw new LockedException(out + " exists already; nothing was written. Give --replace to replace it, or another name.");
            }
        }
    }

    private void csvOnly(String option, Path out) {
        if (out != null && !ending(out).equals(".csv")) {
            throw common.wrong(option + " takes a name that ends in .csv, not '" + out + "'.");
        }
    }

    /** In small letters, with its point. */
    private static String ending(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return name.substring(Math.max(0, name.lastIndexOf('.')));
    }

    private static KilnTables tables() throws IOException {
        String folder = System.getProperty(NewCommand.TABLES);
        return folder == null ? KilnTables.builtIn() : KilnTables.read(Path.of(folder));
    }

    private Optional<KilnLearning.Learnt> learnt(Kiln kiln) throws IOException {
        List<KilnLearning.Lesson> found = new ArrayList<>();
        for (String one : lessons) {
            int at = one.indexOf('=');
            if (at < 1 || at == one.length() - 1) {
                throw common.wrong("--lesson takes SCHEDULE=LOG such as trace-650.csv=kiln-log.csv, not '" + one + "'.");
            }
            found.add(new KilnLearning.Lesson(ScheduleFile.read(Path.of(one.substring(0, at))), LogReader.read(Path.of(one.substring(at + 1)), kiln.powerW())
                    .curve()));
        }
        return found.isEmpty() ? Optional.empty() : Optional.of(KilnLearning.from(kiln, found, common.work(1)));
    }

    private List<PaintHistory.Fired> earlierFirings(KilnTables tables, Load load, Kiln kiln) throws IOException {
        List<PaintHistory.Fired> before = new ArrayList<>();
        for (String one : earlier) {
            int at = one.indexOf('=');
            if (at < 1 || at == one.length() - 1) {
                throw common.wrong("--earlier takes PAINT=SCHEDULE such as \"tracing black=trace-650.csv\", not '" + one + "'.");
            }
            String name = one.substring(0, at);
            PaintFlux paint = FireLoad.named("--earlier", name, tables.paint(name), tables.paintNames(), common);
            Schedule fired = ScheduleFile.read(Path.of(one.substring(at + 1)));
            before.add(new PaintHistory.Fired(fired.name(), List.of(paint), Simulation.run(fired, load, kiln).faceCurve()));
        }
        return before;
    }

    private List<String> words(Firing firing, FireAnswer answer, Optional<FiringLog> read, Optional<LogReview> review,
            Optional<FoundSchedule> shortest) {
        List<String> words = new ArrayList<>();
        words.add(String.format(Locale.ROOT, "%s in the %s, %s mm of %s", firing.schedule().name(), firing.kiln().name(),
                Units.plain(firing.load().thicknessMm()),
                firing.load().glass().name()));
        words.add(String.format(Locale.ROOT, "%.1f h, may be opened after %.1f h; peak %.0f degC, painted face %.0f degC; %.1f kWh", answer.hours(),
                answer.hoursToOpen(),
                answer.peakC(), answer.facePeakC(), answer.kWh()));
        words.add(
                String.format(Locale.ROOT, "heat work %.3g 1/Pa as written, %.3g simulated; core lag %.1f K; stress %.2f MPa; %s", answer.heatWork(),
                        answer.heatWorkSimulated(), answer.coreLagMaxK(), answer.stressMaxMpa(), answer.annealed() ? "annealed" : "not annealed"));
        review.ifPresent(found -> words.add(
                String.format(Locale.ROOT, "%s: %s; %.2f times the heat work of the schedule, overshoot %.1f K, %.0f min near the peak, %d gap%s",
                        read.orElseThrow().name(), found.verdict().key(), found.heatWorkRatio(), found.overshootK(), found.minutesNearPeak(),
                        answer.log().gaps(),
                        answer.log().gaps() == 1 ? "" : "s")));
        shortest.ifPresent(found -> {
            words.add(String.format(Locale.ROOT, "%s: %.1f h until it may be opened, in place of %.1f h; %.1f kWh in place of %.1f kWh; held back by %s",
                    optimise, found.firing().hoursToOpen(), firing.hoursToOpen(), found.firing().energy().kWh(), firing.energy().kWh(),
                    found.heldBackBy().isEmpty() ? "nothing" : String.join(", ", found.heldBackBy())));
            words.add("Fire a test piece by it before you trust a window to it.");
        });
        if (answer.learnt() != null) {
            words.add(String.format(Locale.ROOT, "Learnt from %d log%s: the run lies %.1f K beside them (%.1f K by the table).", lessons.size(),
                    lessons.size() == 1 ? "" : "s", answer.learnt().afterK(), answer.learnt().beforeK()));
        }
        if (chart != null) {
            words.add("Chart: " + chart);
        }
        if (table != null) {
            words.add("Table: " + table);
        }
        return words;
    }
}
