package saddlebar.ui.kiln;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executor;
import java.util.function.Function;

import saddlebar.kiln.fire.Kiln;
import saddlebar.kiln.fire.Load;
import saddlebar.kiln.glass.Glass;
import saddlebar.kiln.log.FiringLog;
import saddlebar.kiln.paint.PaintFlux;
import saddlebar.kiln.paint.PaintHistory;
import saddlebar.kiln.plate.MaxwellPlate;
import saddlebar.kiln.schedule.HeatCurve;
import saddlebar.kiln.schedule.Schedule;
import saddlebar.model.commission.FiringSchedule;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.Identified;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Studio;
import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;
import saddlebar.production.kiln.HistoryReader;
import saddlebar.production.kiln.KilnHistory;
import saddlebar.production.kiln.ReviewedFiring;
import saddlebar.production.kiln.StudioHeat;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.screening.NewestWins;

/** What lies on the Kiln bench: the schedule that is looked at, with what it is for; its simulation; the firings. On the screen's thread. */
public final class KilnDesk {
    /** From this size on a piece's own weight holds it flat: studio setting, no source. */
    private static final double FLAT_FROM_MM = 300;

    private final CommissionDesk desk;
    private final StudioHeat heat;
    private final Executor screen;
    private final NewestWins<KilnStudy.Ask> studies;
    private final NewestWins<HistoryReader> histories;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private KilnChoice choice = KilnChoice.NONE;
    private Optional<KilnStudy.Ask> asked = Optional.empty();
    private Optional<KilnStudy> study = Optional.empty();
    private Optional<KilnHistory> history = Optional.empty();
    private Optional<ShelfPlan> laid = Optional.empty();
    private String trouble = "";
    private String said = "";

    /**
     * @param beside runs one thing after the other away from the screen
     * @param screen runs on the screen's thread
     */
    public KilnDesk(CommissionDesk desk, StudioHeat heat, Executor beside, Executor screen) {
        this.desk = desk;
        this.heat = heat;
        this.screen = screen;
        this.studies = new NewestWins<>(beside, this::study);
        this.histories = new NewestWins<>(beside, this::history);
        desk.addListener(new CommissionDesk.Listener() {
            @Override
            public void opened(OpenCommission commission) {
                laid = Optional.empty();
                history = Optional.empty();
                refresh();
                readRecords();
            }

            @Override
            public void closing(OpenCommission commission) {
                studies.forget();
                histories.forget();
                choice = new KilnChoice("", "", "", "", "", choice.thicknessMm(), choice.largestMm());
                asked = Optional.empty();
                study = Optional.empty();
                history = Optional.empty();
                laid = Optional.empty();
                trouble = "";
                said = "";
                tell();
            }

            @Override
            public void changed(OpenCommission commission) {
                refresh();
            }
        });
        refresh();
        readRecords();
    }

    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    public void removeListener(Runnable listener) {
        listeners.remove(listener);
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }

    public Optional<OpenCommission> commission() {
        return desk.commission();
    }

    public boolean canEdit() {
        return desk.canEdit();
    }

    public Optional<Studio> studio() {
        return desk.commission().map(open -> open.folder().studio());
    }

    public KilnChoice choice() {
        return choice;
    }

    public void choose(KilnChoice next) {
        choice = next;
        refresh();
    }

    private <T extends Identified> Optional<T> chosen(Function<Studio, List<T>> things, String id) {
        return studio().flatMap(studio -> things.apply(studio).stream().filter(thing -> id.equals(thing.getId())).findFirst());
    }

    public Optional<FiringSchedule> schedule() {
        return chosen(Studio::getSchedules, choice.scheduleId());
    }

    public Optional<saddlebar.model.commission.Kiln> kiln() {
        return chosen(Studio::getKilns, choice.kilnId());
    }

    public Optional<GlassStock> glass() {
        return chosen(Studio::getGlass, choice.glassId());
    }

    public Optional<Paint> paint() {
        return chosen(Studio::getPaints, choice.paintId());
    }

    /** The simulation of what is shown now; empty while it is not ready, or cannot be. */
    public Optional<KilnStudy> study() {
        return study;
    }

    public Optional<KilnHistory> history() {
        return history;
    }

    /** A kiln of the studio as the physics takes it. */
    Kiln heated(saddlebar.model.commission.Kiln model) {
        return heat.kiln(model);
    }

    /** What was last brought about, in words; empty if nothing was. */
    public String said() {
        return said;
    }

    void say(String words) {
        said = words;
        tell();
    }

    /** Why there is no simulation, in words; empty if there is no reason. */
    public String trouble() {
        return trouble;
    }

    public Optional<ReviewedFiring> firing() {
        return choice.firing().isEmpty() ? Optional.empty() : history.flatMap(known -> known.firing(choice.firing()));
    }

    /** What lies on the shelf: as recorded, if a firing is looked at, else as it is being laid. */
    public Optional<ShelfPlan> shelf() {
        Optional<saddlebar.model.commission.Kiln> kiln = firing().flatMap(one -> chosen(Studio::getKilns, one.firing().kilnId())).or(this::kiln);
        return firing().isPresent()
                ? kiln.map(found -> ShelfPlan.of(firing().get().firing().pieces(), found, ShelfPlan.known(commission().orElseThrow().folder().windows())))
                : kiln.map(found -> laid.orElseGet(() -> ShelfPlan.empty(found)));
    }

    /** Lays pieces on the shelf in place of what lies there. */
    public void lay(List<Piece> pieces) {
        choice = choice.withFiring("");
        laid = kiln().map(found -> ShelfPlan.of(pieces, found, schedule()));
        laid.filter(plan -> !plan.pieces().isEmpty()).ifPresent(plan -> choice = choice
                .withThickness(within(plan.load().thickestMm(), KilnChoice.LEAST_THICKNESS_MM, KilnChoice.MOST_THICKNESS_MM))
                .withLargest(within(plan.load().largestMm(), KilnChoice.LEAST_LARGEST_MM, KilnChoice.MOST_LARGEST_MM)));
        refresh();
    }

    private static double within(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }

    /** Reads the records anew, after something was entered. */
    public void readRecords() {
        try {
            desk.commission().ifPresent(open -> histories.ask(new HistoryReader(open.folder(), heat)));
        } catch (Refusal cannot) { // a window that cannot be read is told where it is shown
            trouble = cannot.getMessage();
        }
    }

    private void history(HistoryReader reader, Work work) {
        try {
            KilnHistory read = reader.history(work);
            work.checkpoint();
            screen.execute(() -> {
                history = Optional.of(read);
                refresh();
            });
        } catch (IOException | Refusal cannot) {
            screen.execute(() -> {
                trouble = cannot.getMessage();
                tell();
            });
        }
    }

    /** What is asked of the simulation now; empty, with the reason as the trouble, if nothing can be. */
    Optional<KilnStudy.Ask> ask() {
        trouble = "";
        if (schedule().isEmpty() || kiln().isEmpty()) {
            return Optional.empty();
        }
        try {
            Schedule shown = firing().flatMap(one -> one.firing().asRun()).orElseGet(() -> StudioHeat.schedule(schedule().get()));
            Kiln kiln = heat.kiln(kiln().get());
            Glass glass = glass().map(heat::glass).orElseGet(Glass::floatGlass);
            Optional<PaintFlux> paint = paint().flatMap(heat::paint);
            Load load = Load.of(glass, choice.thicknessMm()).withLargestMm(choice.largestMm())
                    .held(choice.largestMm() < FLAT_FROM_MM ? MaxwellPlate.Hold.FREE : MaxwellPlate.Hold.FLAT);
            Optional<HeatCurve> log = firing().flatMap(ReviewedFiring::log).map(FiringLog::curve);
            return Optional.of(new KilnStudy.Ask(shown, load, kiln, paint, earlier(), log));
        } catch (Refusal cannot) {
            trouble = cannot.getMessage();
            return Optional.empty();
        }
    }

    /** What those pieces on the shelf went through that have been fired most often. */
    private List<PaintHistory.Fired> earlier() {
        List<PaintHistory.Fired> most = new ArrayList<>();
        if (firing().isEmpty() && laid.isPresent() && history.isPresent()) {
            laid.get().pieces().forEach(piece -> history.get().piece(piece.label()).ifPresent(heated -> {
                if (heated.firings().size() > most.size()) {
                    most.clear();
                    most.addAll(heated.firings());
                }
            }));
        }
        return most;
    }

    private void refresh() {
        settle();
        Optional<KilnStudy.Ask> next = ask();
        if (!next.equals(asked)) {
            asked = next;
            study = Optional.empty();
            if (next.isPresent()) {
                studies.ask(next.get());
            } else {
                studies.forget();
            }
        }
        tell();
    }

    /** Chooses what there is where nothing is chosen, or what was is gone. */
    private void settle() {
        if (studio().isEmpty()) {
            return;
        }
        Studio studio = studio().get();
        if (schedule().isEmpty() && !studio.getSchedules().isEmpty()) {
            choice = choice.withSchedule(studio.getSchedules().get(0).getId());
        }
        if (kiln().isEmpty() && !studio.getKilns().isEmpty()) {
            choice = choice.withKiln(studio.getKilns().get(0).getId());
        }
        if (glass().isEmpty()) {
            choice = choice.withGlass("");
        }
        if (paint().isEmpty()) {
            choice = choice.withPaint("");
        }
    }

    private void study(KilnStudy.Ask ask, Work work) {
        try {
            KilnStudy made = KilnStudy.of(ask, work);
            work.checkpoint();
            screen.execute(() -> {
                if (asked.filter(ask::equals).isPresent()) {
                    study = Optional.of(made);
                    tell();
                }
            });
        } catch (IllegalArgumentException outOfRange) {
            screen.execute(() -> {
                trouble = outOfRange.getMessage();
                tell();
            });
        }
    }
}
