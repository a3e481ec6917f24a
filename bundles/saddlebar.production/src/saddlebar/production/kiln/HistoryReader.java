package saddlebar.production.kiln;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import saddlebar.kiln.fire.FireSettings;
import saddlebar.kiln.fire.Kiln;
import saddlebar.kiln.fire.Load;
import saddlebar.kiln.fire.Simulation;
import saddlebar.kiln.glass.Glass;
import saddlebar.kiln.glass.Vft;
import saddlebar.kiln.log.FiringLog;
import saddlebar.kiln.log.LogReview;
import saddlebar.kiln.paint.HeatWork;
import saddlebar.kiln.paint.PaintFlux;
import saddlebar.kiln.paint.PaintHistory;
import saddlebar.kiln.schedule.HeatCurve;
import saddlebar.kiln.schedule.Schedule;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.problem.Severity;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.work.Work;

/**
 * Reads all firings of a studio with their logs, and reckons what they say together. What it needs of the model it takes when it is made; the rest can be done
 * on any one thread.
 */
public final class HistoryReader {
    private static final double USUAL_THICKNESS_MM = 3;

    private final FiringBook book;
    private final Map<String, Kiln> kilns = new LinkedHashMap<>();
    private final Map<String, PaintFlux> paints = new HashMap<>();
    private final Map<String, Schedule> schedules = new HashMap<>();
    private final Map<Schedule, HeatCurve> simulated = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    public HistoryReader(CommissionFolder folder, StudioHeat heat) {
        this.book = new FiringBook(folder);
        folder.studio().getKilns().forEach(kiln -> kilns.put(kiln.getId(), heat.kiln(kiln)));
        folder.studio().getSchedules().stream().filter(known -> !known.getSegments().isEmpty()).map(StudioHeat::schedule)
                .forEach(schedule -> schedules.putIfAbsent(schedule.name(), schedule));
        for (Window window : folder.windows()) {
            for (Panel panel : window.getPanels()) {
                for (DesignLayer layer : panel.getLayers()) {
                    Optional.ofNullable(layer.getPaint()).flatMap(heat::paint).ifPresent(flux -> paints.put(window.getName() + " " + layer.getName(), flux));
                }
            }
        }
    }

    /** @param work asked whether to stop; no units are told */
    public static KilnHistory read(CommissionFolder folder, StudioHeat heat, Work work) throws IOException {
        return new HistoryReader(folder, heat).history(work);
    }

    /** To be called once. */
    public KilnHistory history(Work work) throws IOException {
        FiringBook.Read read = book.read();
        problems.addAll(read.problems());
        List<ReviewedFiring> reviewed = new ArrayList<>();
        for (RecordedFiring firing : read.firings()) {
            work.checkpoint();
            reviewed.add(review(firing));
        }
        Map<String, String> names = new LinkedHashMap<>();
        kilns.forEach((id, kiln) -> names.put(id, kiln.name()));
        List<KilnHistory.KilnFacts> facts = KilnHistory.kilns(reviewed, names);
        List<PieceHeat> pieces = pieces(reviewed, work);
        return new KilnHistory(reviewed, facts, pieces, KilnHistory.problems(problems, reviewed, facts, pieces));
    }

    /** As it was run that day, else as the studio has it today by that name. */
    private Optional<Schedule> schedule(RecordedFiring firing) {
        return firing.asRun().or(() -> Optional.ofNullable(schedules.get(firing.scheduleName())));
    }

    private ReviewedFiring review(RecordedFiring firing) throws IOException {
        List<Problem> found = new ArrayList<>();
        Optional<FiringLog> log = Optional.empty();
        double elementsW = Optional.ofNullable(kilns.get(firing.kilnId())).map(Kiln::powerW).orElse(Double.NaN);
        try {
            log = book.log(firing, elementsW);
        } catch (Refusal | IOException cannot) {
            found.add(Problem.of("log-unreadable", Severity.WARNING, firing.name(), "Its log " + firing.logFile().orElse("") + " cannot be read: "
                    + cannot.getMessage()));
        }
        Map<String, PaintFlux> fired = new TreeMap<>();
        firing.pieces().forEach(piece -> piece.layers().forEach(layer -> Optional.ofNullable(paints.get(piece.window() + " " + layer))
                .ifPresent(flux -> fired.put(flux.name(), flux))));
        Vft counts = fired.isEmpty() ? Glass.DGG_I : fired.values().iterator().next().flux();
        Optional<Schedule> schedule = schedule(firing);
        Optional<LogReview> review = log.isEmpty() || schedule.isEmpty() ? Optional.empty() : Optional.of(LogReview.of(schedule.get(), log.get(), counts));
        if (review.isPresent() && firing.asRun().isEmpty()) {
            found.add(Problem.of("schedule-of-today", Severity.NOTE, firing.name(), "The record does not hold its schedule as it was run; today's schedule '"
                    + firing.scheduleName() + "' is held against its log."));
        }
        review.ifPresent(one -> one.cautions().stream().filter(caution -> caution.severity() != Severity.NOTE)
                .forEach(caution -> found.add(Problem.of(caution.code(), caution.severity(), firing.name() + " " + caution.where(), caution.message()))));
        Optional<Double> shift = review.filter(one -> one.verdict() != LogReview.Verdict.UNUSABLE && one.heatWorkRatio() > 0)
                .map(one -> one.equivalentShiftK(schedule.get(), counts));
        Map<String, PaintFlux.Maturity> maturity = new HashMap<>();
        log.ifPresent(curve -> fired.values().forEach(flux -> maturity.put(flux.name(),
                flux.at(HeatWork.of(curve.curve(), flux.flux())))));
        return new ReviewedFiring(firing, log, review, shift, maturity, found);
    }

    private List<PieceHeat> pieces(List<ReviewedFiring> firings, Work work) {
        Map<String, List<PaintHistory.Fired>> byPiece = new TreeMap<>();
        Map<String, Set<String>> laid = new HashMap<>();
        Map<String, StringBuilder> keys = new HashMap<>();
        for (ReviewedFiring one : firings) {
            Optional<HeatCurve> curve = curve(one, work);
            Map<String, Set<String>> layers = new TreeMap<>();
            one.firing().pieces().forEach(piece -> layers.computeIfAbsent(piece.label(), label -> new TreeSet<>()).addAll(piece.layers()));
            if (curve.isEmpty()) {
                if (!layers.isEmpty()) {
                    problems.add(Problem.of("firing-untold", Severity.NOTE, one.firing().name(),
                            "It has neither log nor schedule; its heat is not counted for the pieces in it."));
                }
                continue;
            }
            layers.forEach((label, names) -> {
                List<PaintFlux> fresh = names.stream().filter(laid.computeIfAbsent(label, l -> new HashSet<>())::add)
                        .map(name -> paints.get(label.substring(0, label.lastIndexOf('/')) + " " + name)).filter(Objects::nonNull).toList();
                byPiece.computeIfAbsent(label, l -> new ArrayList<>()).add(new PaintHistory.Fired(one.firing().name(), fresh, curve.get()));
                keys.computeIfAbsent(label, l -> new StringBuilder()).append(one.firing().name()).append(fresh.stream().map(PaintFlux::name).toList());
            });
        }
        Map<String, PieceHeat> same = new HashMap<>(); // pieces that went the same way are reckoned once
        List<PieceHeat> pieces = new ArrayList<>();
        byPiece.forEach((label, fired) -> {
            work.checkpoint();
            pieces.add(same.computeIfAbsent(keys.get(label).toString(), key -> PieceHeat.of(label, fired)).named(label));
        });
        return pieces;
    }

    /** What the glass went through: by the log, where that can be used; else the firing as it was run, else the schedule that the studio has by that name. */
    private Optional<HeatCurve> curve(ReviewedFiring one, Work work) {
        boolean usable = one.review().isEmpty() || one.review().get().verdict() != LogReview.Verdict.UNUSABLE;
        if (one.log().isPresent() && usable) {
            return Optional.of(one.log().get().curve());
        }
        Optional<Schedule> schedule = schedule(one.firing());
        Kiln kiln = Optional.ofNullable(kilns.get(one.firing().kilnId())).or(() -> kilns.values().stream().findFirst()).orElseGet(Kiln::small);
        return schedule.map(known -> simulated.computeIfAbsent(known, run -> Simulation.run(run, Load.of(Glass.floatGlass(), USUAL_THICKNESS_MM), kiln,
                FireSettings.COARSE, work).faceCurve()));
    }
}
