package saddlebar.ui.kiln;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleConsumer;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;

import saddlebar.kiln.schedule.Schedule;
import saddlebar.kiln.schedule.Segment;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.FiringSchedule;
import saddlebar.model.commission.FiringSegment;
import saddlebar.model.commission.Studio;
import saddlebar.production.kiln.StudioHeat;
import saddlebar.ui.desk.Edits;

/** The schedule as it is typed in: each change one step that can be taken back; what cannot be is said in words. Knows no widget. */
public final class ScheduleSheet {
    private final Edits edits;
    private final Locale locale;

    public ScheduleSheet(Edits edits, Locale locale) {
        this.edits = edits;
        this.locale = locale;
    }

    /** A column that can be typed in. */
    public enum Field {
        NAME, RATE, TARGET, SOAK
    }

    public static String value(FiringSegment segment, Field field, Locale locale) {
        return switch (field) {
            case NAME -> segment.getName() == null ? "" : segment.getName();
            case RATE -> TypedHeat.RATE.words(segment.getRateKPerH() == null ? 0 : segment.getRateKPerH(), locale);
            case TARGET -> TypedHeat.TEMPERATURE.words(segment.getTargetC(), locale);
            case SOAK -> TypedHeat.TIME.words(segment.getSoakMin(), locale);
        };
    }

    /** @return what is wrong with what was typed; empty if it was taken */
    public Optional<String> take(FiringSegment segment, Field field, String typed) {
        if (typed.strip().equals(value(segment, field, locale))) {
            return Optional.empty();
        }
        return switch (field) {
            case NAME -> {
                edits.perform(Messages.Edit_segment, segment, () -> segment.setName(typed.strip()));
                yield Optional.empty();
            }
            case RATE -> number(TypedHeat.RATE, typed, 0, Segment.MOST_RATE, Messages.Wrong_rate, value -> edits.perform(Messages.Edit_segment, segment,
                    () -> segment.setRateKPerH(value == 0 ? null : Double.valueOf(value))));
            case TARGET -> number(TypedHeat.TEMPERATURE, typed, Segment.LEAST_C, Segment.MOST_C, Messages.Wrong_target,
                    value -> edits.perform(Messages.Edit_segment, segment, () -> segment.setTargetC(value)));
            case SOAK -> number(TypedHeat.TIME, typed, 0, Segment.MOST_SOAK_MIN, Messages.Wrong_soak,
                    value -> edits.perform(Messages.Edit_segment, segment, () -> segment.setSoakMin(value)));
        };
    }

    private static Optional<String> number(TypedHeat kind, String typed, double least, double most, String wrong, DoubleConsumer take) {
        OptionalDouble read = kind.read(typed);
        if (read.isEmpty() || !(read.getAsDouble() >= least && read.getAsDouble() <= most)) {
            return Optional.of(NLS.bind(wrong, typed.strip()));
        }
        take.accept(read.getAsDouble());
        return Optional.empty();
    }

    /** Opens or shuts the vent. */
    public void vent(FiringSegment segment, boolean open) {
        edits.perform(Messages.Edit_segment, segment, () -> segment.setVent(open));
    }

    /** A segment behind another, at its temperature; the first one of an empty schedule goes to 540 degC. */
    public FiringSegment add(FiringSchedule schedule, int behind) {
        FiringSegment segment = CommissionFactory.eINSTANCE.createFiringSegment();
        List<FiringSegment> segments = schedule.getSegments();
        int at = Math.max(0, Math.min(segments.size(), behind + 1));
        segment.setName(Messages.Schedule_newSegment);
        segment.setRateKPerH(100.0);
        segment.setTargetC(at == 0 ? 540 : segments.get(at - 1).getTargetC());
        edits.perform(Messages.Edit_addSegment, schedule, () -> segments.add(at, segment));
        return segment;
    }

    public void remove(FiringSegment segment) {
        FiringSchedule schedule = segment.getSchedule();
        edits.perform(Messages.Edit_removeSegment, schedule, () -> schedule.getSegments().remove(segment));
    }

    /** @param by -1 up, 1 down; nothing happens at the ends */
    public void move(FiringSegment segment, int by) {
        FiringSchedule schedule = segment.getSchedule();
        int to = schedule.getSegments().indexOf(segment) + by;
        if (to >= 0 && to < schedule.getSegments().size()) {
            edits.perform(Messages.Edit_moveSegment, schedule, () -> schedule.getSegments().move(to, segment));
        }
    }

    /** A copy under a name that the studio does not have yet. */
    public FiringSchedule copy(FiringSchedule schedule) {
        FiringSchedule copy = EcoreUtil.copy(schedule);
        copy.setId(null);
        return added(schedule.getStudio(), copy, schedule.getName());
    }

    /** A schedule that was found, as a new one of the studio; vents and notes as in the one it comes from. */
    public FiringSchedule keep(Schedule found, FiringSchedule from, String name) {
        FiringSchedule made = CommissionFactory.eINSTANCE.createFiringSchedule();
        made.setPurpose(from.getPurpose());
        made.setSource(Messages.Schedule_found);
        made.getSegments().addAll(StudioHeat.segments(found, from.getSegments()));
        return added(from.getStudio(), made, name);
    }

    private FiringSchedule added(Studio studio, FiringSchedule schedule, String stem) {
        schedule.setName(freeName(studio, stem));
        edits.perform(Messages.Edit_addSchedule, studio, () -> studio.getSchedules().add(schedule));
        return schedule;
    }

    private static String freeName(Studio studio, String stem) {
        String name = stem;
        for (int n = 2; has(studio, name); n++) {
            name = stem + " " + n;
        }
        return name;
    }

    private static boolean has(Studio studio, String name) {
        return studio.getSchedules().stream().anyMatch(known -> name.equalsIgnoreCase(known.getName()));
    }

    /** @return what is wrong with the name; empty if it was taken */
    public Optional<String> rename(FiringSchedule schedule, String typed) {
        String name = typed.strip();
        if (name.isEmpty() || !name.equalsIgnoreCase(schedule.getName()) && has(schedule.getStudio(), name)) {
            return Optional.of(NLS.bind(Messages.Wrong_name, name));
        }
        if (!name.equals(schedule.getName())) {
            edits.perform(Messages.Edit_renameSchedule, schedule, () -> schedule.setName(name));
        }
        return Optional.empty();
    }

    public void remove(FiringSchedule schedule) {
        Studio studio = schedule.getStudio();
        edits.perform(Messages.Edit_removeSchedule, studio, () -> studio.getSchedules().remove(schedule));
    }
}
