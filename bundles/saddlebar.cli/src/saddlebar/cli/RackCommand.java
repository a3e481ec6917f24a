package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import saddlebar.production.trace.ScreenRack;
import saddlebar.production.trace.TraceRoom;

/** The frames as they hang. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "rack", sortOptions = false, description = "Lists the screen frames: what each carries, since when, and what to reclaim.",
        footer = {"", "Example: saddlebar rack my-panel",
                "Reclaiming chemicals: gloves, goggles and an open window; follow the maker's sheet and local rules."})
public final class RackCommand implements BenchCommand {
    @Parameters(index = "0", paramLabel = "C-or-STUDIO", description = "Folder of the commission, or of a studio.")
    private Path folder;

    @Mixin
    private CommonOptions common;

    /** One frame. */
    record Row(String frame, String mesh, double widthMm, double heightMm, String state, String carries, String since, int pulls, Integer wanted, int loads) {
        static Row of(ScreenRack.Frame frame) {
            return new Row(frame.name(), frame.mesh(), frame.widthMm(), frame.heightMm(), frame.state().words(),
                    frame.carries().isEmpty() ? null : frame.carries(),
                    frame.since().map(Object::toString).orElse(null), frame.pulls(), frame.wanted().orElse(null), frame.loads());
        }
    }

    /** The JSON document. */
    record Answer(List<Row> frames, List<String> reclaim) {
    }

    @Override
    public Integer call() throws IOException {
        try (TraceRoom room = TraceRoom.open(folder, common.work(1))) {
            common.tell(room.problems());
            ScreenRack rack = ScreenRack.of(room);
            List<String> reclaim = rack.toReclaim().stream().map(ScreenRack.Frame::name).toList();
            List<String> words = new ArrayList<>();
            words.add(String.format(Locale.ROOT, "%-8s %-14s %-18s %-28s %-11s %s", "frame", "mesh", "state", "carries", "since", "pulls"));
            rack.frames()
                    .forEach(frame -> words.add(String.format(Locale.ROOT, "%-8s %-14s %-18s %-28s %-11s %s", frame.name(), frame.mesh(), frame.state().words(),
                            frame.carries(), frame.since().map(since -> since.toString().substring(0, 10)).orElse(""), frame.since().isEmpty()
                                    ? ""
                                    : frame.pulls() + frame.wanted().map(wanted -> " of " + wanted).orElse(""))
                            .stripTrailing()));
            words.add(reclaim.isEmpty() ? "Nothing waits to be reclaimed." : "To reclaim: " + String.join(", ", reclaim) + ".");
            common.answer(new Answer(rack.frames().stream().map(Row::of).toList(), reclaim), words);
            return room.problems().isEmpty() ? DONE : ATTENTION;
        }
    }
}
