package saddlebar.ui.print;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

import saddlebar.model.commission.Paint;
import saddlebar.model.work.Work;
import saddlebar.production.check.CommissionStatus;
import saddlebar.production.trace.ScreenRack;
import saddlebar.production.trace.TraceRoom;
import saddlebar.trace.lineage.Lineage;

/**
 * The print bench as the records and the studio tell it.
 *
 * @param frames  as they hang
 * @param today   layers on which something is still to be printed
 * @param next    what can be done next, in words
 * @param mixes   names, the latest first
 * @param firings names, the latest first
 * @param paints  of the studio
 * @param people  who were met in the records, and the studio's own
 * @param places  shelf places that were used
 */
record BenchState(List<ScreenRack.Frame> frames, List<Job> today, List<String> next, List<String> mixes, List<String> firings, List<PaintChoice> paints,
        List<String> people, List<String> places) {
    static final BenchState NONE = new BenchState(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
    private static final int MOST = 500;

    /** One layer that waits. */
    record Job(String window, String layer, String state, int stencils, int prints) {
    }

    /** A paint and how much medium it wants: g of powder to one g of medium. */
    record PaintChoice(String name, double powderToMedium, List<String> lots) {
    }

    static BenchState read(Path folder, Work work) throws IOException {
        try (TraceRoom room = TraceRoom.open(folder, work)) {
            Lineage lineage = room.lineage();
            List<Job> today = new ArrayList<>();
            List<String> next = List.of();
            if (room.commission().isPresent()) {
                CommissionStatus status = CommissionStatus.of(room.commission().get());
                next = status.next();
                status.windows().forEach(window -> window.layers().stream().filter(layer -> layer.stencils() > 0 && !layer.state().equals("fired"))
                        .forEach(layer -> today.add(new Job(window.name(), layer.name(), layer.state(), layer.stencils(), layer.prints()))));
            }
            List<String> people = new ArrayList<>(levels(lineage, "who="));
            room.studio().studio().getPeople().stream().map(person -> person.getName()).filter(name -> name != null && !people.contains(name))
                    .forEach(people::add);
            List<PaintChoice> paints = room.studio().studio().getPaints().stream()
                    .map((Paint paint) -> new PaintChoice(paint.getName(), paint.getPowderToMedium(),
                            paint.getLots().stream().map(lot -> lot.getName()).toList()))
                    .toList();
            return new BenchState(ScreenRack.of(room).frames(), today, next, reversed(levels(lineage, "mix=")), reversed(levels(lineage, "firing=")), paints,
                    people,
                    levels(lineage, "shelf_place="));
        }
    }

    private static List<String> levels(Lineage lineage, String start) {
        return lineage.thingsFrom(start, MOST).stream().map(thing -> thing.substring(start.length())).toList();
    }

    private static List<String> reversed(List<String> names) {
        List<String> reversed = new ArrayList<>(names);
        Collections.reverse(reversed);
        return reversed;
    }

    /** A name for the next mix: one more than the highest number that was used. */
    String nextMix() {
        int most = mixes.stream().filter(name -> name.matches("M\\d{1,6}")).mapToInt(name -> Integer.parseInt(name.substring(1))).max().orElse(0);
        int digits = mixes.stream().filter(name -> name.matches("M\\d{1,6}")).mapToInt(name -> name.length() - 1).max().orElse(2);
        return "M" + String.format(Locale.ROOT, "%0" + digits + "d", most + 1);
    }
}
