package saddlebar.production.kiln;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.kiln.fire.Firing;
import saddlebar.kiln.fire.Kiln;
import saddlebar.kiln.fire.Load;
import saddlebar.kiln.fire.Simulation;
import saddlebar.kiln.glass.Glass;
import saddlebar.kiln.log.LogReview;
import saddlebar.kiln.schedule.HeatCurve;
import saddlebar.kiln.schedule.Schedule;
import saddlebar.kiln.search.KilnLearning;
import saddlebar.kiln.table.KilnTables;
import saddlebar.model.commission.FiringSchedule;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.NewCommission;
import saddlebar.model.store.RecordDraft;
import saddlebar.model.store.RecordKind;
import saddlebar.model.store.StudioLibrary;
import saddlebar.model.work.Work;

/** A studio's firings from the first entry to what they say over the months, on logs that the simulation wrote with known faults. */
class KilnHistoryTest {
    private static final StudioHeat HEAT = StudioHeat.of(KilnTables.builtIn());

    @TempDir
    private Path temp;
    private Path folder;

    @BeforeEach
    void demo() throws IOException {
        folder = temp.resolve("first-panel");
        Path demo = Path.of("../../demo-projects/first-panel");
        try (Stream<Path> files = Files.walk(demo)) {
            for (Path file : files.filter(path -> Files.isRegularFile(path) && !path.getFileName().toString().startsWith(".")).toList()) {
                Path target = folder.resolve(demo.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
    }

    private static Schedule trace(CommissionFolder open) {
        return StudioHeat.schedule(schedule(open, "trace 650"));
    }

    private static FiringSchedule schedule(CommissionFolder open, String name) {
        return open.studio().getSchedules().stream().filter(known -> known.getName().equals(name)).findFirst().orElseThrow();
    }

    private Path log(String name, HeatCurve curve, double offK) throws IOException {
        StringBuilder csv = new StringBuilder("seconds,temperature_c\n");
        for (double s = 0; s <= curve.endS(); s += 60) {
            double at = curve.at(s);
            csv.append(String.format(Locale.ROOT, "%.0f,%.2f%n", s, at + (at > 300 ? offK : 0)));
        }
        return Files.writeString(temp.resolve(name + ".csv"), csv);
    }

    private static List<FiredPiece> pieces(String layer) {
        return List.of(new FiredPiece("W01", "1", "", List.of(layer), "A1", Optional.of(40.0), Optional.of(60.0)));
    }

    @Test
    void whatIsEnteredIsReadAndALogIsHeldAgainstIt() throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, Access.WRITE)) {
            FiringBook book = new FiringBook(open);
            saddlebar.model.commission.Kiln kiln = open.studio().getKilns().get(0);
            Firing run = Simulation.run(trace(open), Load.of(Glass.floatGlass(), 3), HEAT.kiln(kiln));
            assertEquals("F001", book.enter(kiln, trace(open), pieces("trace")));
            assertEquals("F002", book.enter(kiln, trace(open), pieces("matt")));
            RecordedFiring first = book.read().named("F001").orElseThrow();
            assertEquals(trace(open), first.asRun().orElseThrow());
            assertEquals("W01/1", first.pieces().get(0).label());
            book.attach(first, log("as told", run.kilnCurve(), 0), Double.NaN);
            book.energy(book.read().named("F001").orElseThrow(), 17.5);
            book.witness(book.read().named("F001").orElseThrow(), "A1", 652);
            RecordedFiring again = book.read().named("F001").orElseThrow();
            assertEquals(Optional.of("logs/as told.csv"), again.logFile());
            assertEquals(Optional.of(17.5), again.kWh());
            assertEquals(List.of(new RecordedFiring.Witness("A1", 652)), again.witnesses());
            assertEquals(1, again.pieces().size(), "what lay there is told once, however often a line is added");
            KilnHistory history = HistoryReader.read(open, HEAT, Work.UNWATCHED);
            ReviewedFiring reviewed = history.firing("F001").orElseThrow();
            assertEquals(LogReview.Verdict.AS_SCHEDULED, reviewed.review().orElseThrow().verdict());
            assertEquals(Map.of("tracing black", saddlebar.kiln.paint.PaintFlux.Maturity.MATURE), reviewed.maturity());
            assertTrue(history.firing("F002").orElseThrow().review().isEmpty());
        }
    }

    @Test
    void aFileThatIsNoLogIsRefusedAndNothingIsKept() throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, Access.WRITE)) {
            FiringBook book = new FiringBook(open);
            book.enter(open.studio().getKilns().get(0), trace(open), List.of());
            RecordedFiring firing = book.read().firings().get(0);
            Path bad = Files.writeString(temp.resolve("bad.csv"), "seconds,temperature_x\n0,20\n60,30\n");
            assertTrue(assertThrows(Refusal.class, () -> book.attach(firing, bad, Double.NaN)).getMessage().contains("bad.csv"));
            assertFalse(Files.exists(folder.resolve("studio/logs")));
            assertEquals(Optional.empty(), book.read().firings().get(0).logFile());
            assertThrows(Refusal.class, () -> book.witness(firing, "A1", 2000));
            assertThrows(Refusal.class, () -> book.energy(firing, -3));
            assertEquals(firing, book.read().firings().get(0));
        }
    }

    /** A thermocouple that ages by 3 K a month: the line must find it again from the logs alone; six months, one firing each. */
    @Test
    void driftEnergyAndShelfAreFoundAgain() throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, Access.WRITE)) {
            FiringBook book = new FiringBook(open);
            saddlebar.model.commission.Kiln kiln = open.studio().getKilns().get(0);
            Schedule schedule = trace(open);
            HeatCurve written = schedule.asWritten();
            for (int month = 0; month < 6; month++) {
                book.enter(kiln, schedule, List.of());
                RecordedFiring entered = book.read().named("F00" + (month + 1)).orElseThrow();
                RecordedFiring dated = new RecordedFiring(entered.name(), entered.when().minusSeconds((6 - month) * 30L * 86_400), entered.kilnId(),
                        entered.scheduleName(), entered.asRun(), entered.pieces(), entered.logFile(), entered.peakC(), entered.kWh(), entered.witnesses(),
                        entered.headId(), "");
                book.attach(dated, log("m" + month, written, 3 * month), Double.NaN);
                book.energy(book.read().named(entered.name()).orElseThrow(), 10 + month);
                book.witness(book.read().named(entered.name()).orElseThrow(), "A1", 650 + 3 * month + 8 + 0.3 * (month % 2));
                book.witness(book.read().named(entered.name()).orElseThrow(), "B2", 650 + 3 * month);
            }
            KilnHistory.KilnFacts facts = HistoryReader.read(open, HEAT, Work.UNWATCHED).kiln(kiln.getId()).orElseThrow();
            assertEquals(3, facts.drift().orElseThrow().kPerMonth(), 0.2);
            assertTrue(facts.drift().get().clear());
            assertEquals(6, facts.lessons().size());
            assertEquals(4, facts.shelf().places().get(0).offK(), 0.2);
            assertTrue(facts.shelf().places().get(0).clear());
            assertTrue(facts.energy().isPresent());
            assertTrue(HistoryReader.read(open, HEAT, Work.UNWATCHED).problems().stream().anyMatch(problem -> problem.code().equals("kiln-drifts")));
        }
    }

    /** The same layer fired again and again gathers heat work until it burns; the last one to go is told before it is done. */
    @Test
    void aLayerThatBurnsOutOverAllFiringsIsTold() throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, Access.WRITE)) {
            FiringBook book = new FiringBook(open);
            for (int i = 0; i < 6; i++) {
                book.enter(open.studio().getKilns().get(0), trace(open), pieces(i == 0 ? "trace" : "matt"));
            }
            KilnHistory history = HistoryReader.read(open, HEAT, Work.UNWATCHED);
            PieceHeat piece = history.piece("W01/1").orElseThrow();
            assertEquals(6, piece.firings().size());
            assertEquals(2, piece.layers().size());
            assertTrue(piece.problems().stream().anyMatch(problem -> problem.code().equals("earlier-layer-burns")), piece.problems().toString());
            assertTrue(history.wantsAttention());
        }
    }

    /** Rows of a notebook name their firing; its schedule is the studio's by that name. */
    @Test
    void rowsOfANotebookAreOneFiring() throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, Access.WRITE)) {
            for (String piece : List.of("1", "2")) {
                open.records().append(RecordDraft.of(RecordKind.FIRE).with(Map.of("firing", "F077", "schedule", "trace 650", "window", "W01", "piece", piece,
                        "layer", "trace", "shelf_place", "B" + piece, "peak_c", 651.0)));
            }
            KilnHistory history = HistoryReader.read(open, HEAT, Work.UNWATCHED);
            assertEquals(1, history.firings().size());
            assertEquals(Optional.of(651.0), history.firings().get(0).peakC());
            assertEquals(List.of("W01/1", "W01/2"), history.pieces().stream().map(PieceHeat::label).toList());
            assertEquals(1, history.piece("W01/2").orElseThrow().firings().size(), "its heat is reckoned from the studio's schedule");
        }
    }

    /** A kiln of half the power with a lining twice as heavy, learnt from one log of a firing with a load: the run by what was learnt comes near that log. */
    @Test
    void aKilnIsLearntAndKept() throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, Access.WRITE)) {
            FiringBook book = new FiringBook(open);
            saddlebar.model.commission.Kiln kiln = open.studio().getKilns().get(0);
            Kiln start = HEAT.kiln(kiln);
            Kiln real = new Kiln("real", start.maxC(), start.powerW(), 1.6 * start.chamberJPerK(), 1.8 * start.liningJPerK(), start.toLiningWPerK(),
                    start.toRoomWPerK(), start.shelfM2());
            Schedule hard = new Schedule("hard", List.of(new saddlebar.kiln.schedule.Segment("up", 0, 650, 10), new saddlebar.kiln.schedule.Segment("down", 0,
                    100, 0)));
            Firing run = Simulation.run(hard, Load.of(Glass.floatGlass(), 3), real);
            book.enter(kiln, hard, List.of());
            book.attach(book.read().firings().get(0), log("hard", run.kilnCurve(), 0), Double.NaN);
            KilnHistory.KilnFacts facts = HistoryReader.read(open, HEAT, Work.UNWATCHED).kiln(kiln.getId()).orElseThrow();
            KilnLearning.Learnt learnt = KilnTeaching.learn(start, facts, Work.UNWATCHED);
            assertTrue(learnt.afterK() < learnt.beforeK() / 3, learnt.beforeK() + " K before, " + learnt.afterK() + " K after");
            double before = apartK(Simulation.run(hard, Load.of(Glass.floatGlass(), 3), start).kilnCurve(), run.kilnCurve());
            KilnTeaching.write(learnt, 1, kiln);
            double after = apartK(Simulation.run(hard, Load.of(Glass.floatGlass(), 3), HEAT.kiln(kiln)).kilnCurve(), run.kilnCurve());
            assertTrue(after < before / 3, before + " K before, " + after + " K after");
            KilnTeaching.forget(kiln);
            assertEquals(start, HEAT.kiln(kiln));
            KilnHistory.KilnFacts none = new KilnHistory.KilnFacts("", "", 0, Optional.empty(), Optional.empty(), facts.shelf(), List.of());
            assertThrows(Refusal.class, () -> KilnTeaching.learn(start, none, Work.UNWATCHED));
        }
    }

    private static double apartK(HeatCurve one, HeatCurve other) {
        double sum = 0;
        for (int i = 0; i < 200; i++) {
            double s = Math.min(one.endS(), other.endS()) * i / 199;
            sum += Math.pow(one.at(s) - other.at(s), 2);
        }
        return Math.sqrt(sum / 200);
    }

    @Test
    void theStudiosOwnWordsComeBeforeTheTables() throws IOException {
        Path made = temp.resolve("made");
        CommissionFolder.create(made, NewCommission.titled("Kiln").stockedFrom(StudioLibrary.of(Path.of("../../shared")))).close();
        StudioHeat heat = StudioHeat.of(KilnTables.read(Path.of("../../shared")));
        try (CommissionFolder open = CommissionFolder.open(made, Access.READ)) {
            var glass = open.studio().getGlass().get(0);
            assertEquals(542.7, heat.glass(glass).viscosity().annealingC(), 0.1, "DGG I: Encyclopedia of Glass Science, Wiley 2021");
            glass.setHeatModel("soft art glass");
            assertEquals(502.7, heat.glass(glass).viscosity().annealingC(), 0.1);
            assertEquals(9.6e-6, heat.glass(glass).expansionPerK(), 1e-12);
            glass.setViscosityA(-2.9733);
            glass.setViscosityBK(4937.42);
            glass.setViscosityT0C(215.25);
            assertEquals(515.0, heat.glass(glass).viscosity().strainC(), 0.1, "SRM 710A: Fluegel 2007, Table 12");
            glass.setViscosityBK(-1.0);
            assertThrows(Refusal.class, () -> heat.glass(glass));
            FiringSchedule empty = open.studio().getSchedules().get(0);
            empty.getSegments().clear();
            assertTrue(assertThrows(Refusal.class, () -> StudioHeat.schedule(empty)).getMessage().contains("no segment"));
            assertTrue(open.studio().getPaints().stream().allMatch(paint -> heat.paint(paint).isPresent()));
        }
    }
}
