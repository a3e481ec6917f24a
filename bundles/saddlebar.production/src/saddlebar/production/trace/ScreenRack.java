package saddlebar.production.trace;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import saddlebar.model.commission.ScreenFrame;
import saddlebar.model.commission.Stencil;
import saddlebar.model.index.Role;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.RecordLine;
import saddlebar.trace.lineage.Deed;
import saddlebar.trace.lineage.Lineage;

/**
 * The frames as they hang: what each carries, since when, and which can be reclaimed.
 *
 * @param frames by name; those that only the records know last
 */
public record ScreenRack(List<Frame> frames) {
    /** What a frame is. */
    public enum State {
        EMPTY("empty"), LOADED("loaded"), TO_RECLAIM("to reclaim"), OUT_OF_USE("out of use"), NOT_OF_STUDIO("not of this studio");

        private final String words;

        State(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * One frame.
     *
     * @param carries what was fused to it, in words; empty if nothing
     * @param since   when it was loaded
     * @param pulls   prints on it since
     * @param wanted  prints that its stencils are for; nothing if the record does not say which they are
     * @param loads   how often it was loaded in all
     */
    public record Frame(String name, String mesh, double widthMm, double heightMm, State state, String carries, Optional<Instant> since, int pulls,
            Optional<Integer> wanted, int loads) {
    }

    public ScreenRack {
        frames = List.copyOf(frames);
    }

    public static ScreenRack of(TraceRoom room) throws IOException {
        Lineage lineage = room.lineage();
        Map<String, ScreenFrame> own = new TreeMap<>();
        room.studio().studio().getFrames().forEach(frame -> own.put(frame.getName(), frame));
        List<Frame> frames = new ArrayList<>();
        for (ScreenFrame frame : own.values()) {
            frames.add(frame(room, lineage, frame.getName(), Optional.of(frame)));
        }
        for (String thing : lineage.thingsFrom("screen=", Integer.MAX_VALUE)) {
            String name = thing.substring("screen=".length());
            if (!own.containsKey(name)) {
                frames.add(frame(room, lineage, name, Optional.empty()));
            }
        }
        return new ScreenRack(frames);
    }

    private static Frame frame(TraceRoom room, Lineage lineage, String name, Optional<ScreenFrame> own) throws IOException {
        List<Deed> made = new ArrayList<>(lineage.naming("screen=" + name, List.of(Role.MADE)));
        own.ifPresent(frame -> lineage.naming("id=" + frame.getId(), List.of(Role.MADE)).stream().filter(deed -> !made.contains(deed)).forEach(made::add));
        made.sort(Comparator.comparing((Deed deed) -> deed.record().time()));
        Optional<Deed> last = made.isEmpty() ? Optional.empty() : Optional.of(made.get(made.size() - 1));
        boolean loaded = last.filter(deed -> deed.kind().equals("fuse")).isPresent();
        Instant since = last.map(deed -> deed.record().time()).orElse(Instant.EPOCH);
        int pulls = (int) lineage.naming("screen=" + name, List.of(Role.USED)).stream()
                .filter(deed -> deed.kind().equals("pull") && !deed.record().time().isBefore(since)).count();
        Optional<Integer> wanted = loaded ? wanted(room, last.get()) : Optional.empty();
        State state = own.isEmpty()
                ? State.NOT_OF_STUDIO
                : own.get().isOutOfUse()
                        ? State.OUT_OF_USE
                        : !loaded
                                ? State.EMPTY
                                : wanted.filter(prints -> pulls >= prints).isPresent()
                                        ? State.TO_RECLAIM
                                        : State.LOADED;
        return new Frame(name, own.map(frame -> frame.getMesh() == null ? "" : frame.getMesh().getName()).orElse(""),
                own.map(ScreenFrame::getImageWidthMm).orElse(0.0), own.map(ScreenFrame::getImageHeightMm).orElse(0.0), state,
                loaded ? carries(room.line(last.get())) : "", loaded ? Optional.of(since) : Optional.empty(), loaded ? pulls : 0, wanted,
                (int) made.stream().filter(deed -> deed.kind().equals("fuse")).count());
    }

    private static String carries(RecordLine line) {
        List<String> words = new ArrayList<>();
        for (String name : List.of("window", "layer", "stencil", "sheet")) {
            if (line.settings().get(name) instanceof String word && !word.isEmpty()) {
                words.add(name.equals("window") || name.equals("layer") ? word : name + " " + word);
            }
        }
        return words.isEmpty() ? line.note().isEmpty() ? "a stencil" : line.note() : String.join(" ", words);
    }

    private static Optional<Integer> wanted(TraceRoom room, Deed fuse) throws IOException {
        RecordLine line = room.line(fuse);
        List<String> ids = new ArrayList<>();
        if (line.settings().get("stencilIds") instanceof List<?> list) {
            list.forEach(id -> ids.add(String.valueOf(id)));
        }
        if (line.settings().get("stencilId") instanceof String id) {
            ids.add(id);
        }
        Optional<CommissionFolder> folder = room.commissionOf(fuse);
        if (folder.isEmpty() || ids.isEmpty()) {
            return Optional.empty();
        }
        int prints = 0;
        for (String id : ids) {
            Optional<Stencil> stencil = folder.get().links().byId(id).filter(Stencil.class::isInstance).map(Stencil.class::cast);
            if (stencil.isEmpty()) {
                return Optional.empty();
            }
            prints += stencil.get().getPrints();
        }
        return Optional.of(prints);
    }

    /** Frames that can be reclaimed together. */
    public List<Frame> toReclaim() {
        return frames.stream().filter(frame -> frame.state() == State.TO_RECLAIM).toList();
    }

    /** How many there are of each state. */
    public Map<State, Integer> counts() {
        Map<State, Integer> counts = new LinkedHashMap<>();
        frames.forEach(frame -> counts.merge(frame.state(), 1, Integer::sum));
        return counts;
    }
}
