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

/** Reads all firings of a studio with their logs, and reckons what they say together. */
public final class HistoryReader {
    private static final double USUAL_THICKNESS_MM = 3;

    private final CommissionFolder folder;
    private final StudioHeat heat;
    private final Work work;
    private final Map<String, saddlebar.model.commission.Kiln> kilns = new LinkedHashMap<>();
    private final Map<String, PaintFlux> paints = new HashMap<>();
    private final Map<Schedule, HeatCurve> simulated = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    private HistoryReader(CommissionFolder folder, StudioHeat heat, Work work) {
        this.folder = folder;
        this.heat = heat;
        this.work = work;
    }

    /** @param work asked whether to stop; no units are told */
    public static KilnHistory read(CommissionFolder folder, StudioHeat heat, Work work) throws IOException {
        return new HistoryReader(folder, heat, work).history();
    }

    private KilnHistory history() throws IOException {
        folder.studio().getKilns().forEach(kiln -> kilns.put(kiln.getId(), kiln));
        for (Window window : folder.windows()) {
            for (Panel panel : window.getPanels()) {
                for (DesignLayer layer : panel.getLayers()) {
                    Optional.ofNullable(layer.getPaint()).flatMap(heat::paint).ifPresent(flux -> paints.put(window.getName() + " " + layer.getName(), flux));
                }
            }
        }
        FiringBook book = new FiringBook(folder);
        FiringBook.Read read = book.read();
        problems.addAll(read.problems());
        List<ReviewedFiring> reviewed = new ArrayList<>();
        for (RecordedFiring firing : read.firings()) {
            work.checkpoint();
            reviewed.add(review(book, firing));
        }
        Map<String, String> names = new LinkedHashMap<>();
        kilns.forEach((id, kiln) -> names.put(id, kiln.getName()));
        List<KilnHistory.KilnFacts> facts = KilnHistory.kilns(reviewed, names);
        List<PieceHeat> pieces = pieces(reviewed);
        return new KilnHistory(reviewed, facts, pieces, KilnHistory.problems(problems, reviewed, facts, pieces));
    }

    private ReviewedFiring review(FiringBook book, RecordedFiring firing) throws IOException {
        List<Problem> found = new ArrayList<>();
        Optional<FiringLog> log = Optional.empty();
        double elementsW = Optional.ofNullable(kilns.get(firing.kilnId())).map(kiln -> kiln.getPowerKw() * 1000).orElse(Double.NaN);
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
        Optional<LogReview> review = log.isEmpty() || firing.asRun().isEmpty()
                ? Optional.empty()
                : Optional.of(LogReview.of(firing.asRun().get(), log.get(), counts));
        review.ifPresent(one -> one.cautions().stream().filter(caution -> caution.severity() != Severity.NOTE)
                .forEach(caution -> found.add(Problem.of(caution.code(), caution.severity(), firing.name() + " " + caution.where(), caution.message()))));
        Optional<Double> shift = review.filter(one -> one.verdict() != LogReview.Verdict.UNUSABLE && one.heatWorkRatio() > 0)
                .map(one -> one.equivalentShiftK(firing.asRun().get(), counts));
        Map<String, PaintFlux.Maturity> maturity = new HashMap<>();
        log.ifPresent(curve -> fired.values().forEach(flux -> maturity.put(flux.name(),
                flux.at(HeatWork.of(curve.curve(), flux.flux())))));
        return new ReviewedFiring(firing, log, review, shift, maturity, found);
    }

    private List<PieceHeat> pieces(List<ReviewedFiring> firings) {
        Map<String, List<PaintHistory.Fired>> byPiece = new TreeMap<>();
        Map<String, Set<String>> laid = new HashMap<>();
        Map<String, StringBuilder> keys = new HashMap<>();
        for (ReviewedFiring one : firings) {
            Optional<HeatCurve> curve = curve(one);
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
    private Optional<HeatCurve> curve(ReviewedFiring one) {
        boolean usable = one.review().isEmpty() || one.review().get().verdict() != LogReview.Verdict.UNUSABLE;
        if (one.log().isPresent() && usable) {
            return Optional.of(one.log().get().curve());
        }
        Optional<Schedule> schedule = one.firing().asRun().or(() -> folder.studio().getSchedules().stream()
                .filter(known -> one.firing().scheduleName().equals(known.getName())).findFirst().map(StudioHeat::schedule));
        Kiln kiln = Optional.ofNullable(kilns.get(one.firing().kilnId())).or(() -> kilns.values().stream().findFirst()).map(heat::kiln)
                .orElseGet(Kiln::small);
        return schedule.map(known -> simulated.computeIfAbsent(known, run -> Simulation.run(run, Load.of(Glass.floatGlass(), USUAL_THICKNESS_MM), kiln,
                FireSettings.COARSE, work).faceCurve()));
    }
}
