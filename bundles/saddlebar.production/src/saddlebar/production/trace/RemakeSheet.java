package saddlebar.production.trace;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import saddlebar.model.commission.Paint;
import saddlebar.model.commission.PaintLot;
import saddlebar.model.commission.ScreenFrame;
import saddlebar.model.commission.Studio;
import saddlebar.model.file.Hashes;
import saddlebar.model.store.RecordLine;
import saddlebar.trace.lineage.Deed;
import saddlebar.trace.lineage.Lineage;
import saddlebar.trace.lineage.Web;

/**
 * All that is needed to make a piece again: what was used that day, what of it is still there, and what takes its place where it is not.
 *
 * @param piece    as it was asked for
 * @param layers   in the order in which they were printed
 * @param settings of that day against today's
 */
public record RemakeSheet(String piece, List<LayerSheet> layers, ThenAndNow settings) {
    /**
     * One layer.
     *
     * @param needs   what it takes
     * @param stencil the stencil of the day, as its record names it; empty if none does
     * @param recipe  the recipe of the day, whole
     */
    public record LayerSheet(String place, List<Need> needs, String stencil, Map<String, Object> recipe) {
        public LayerSheet {
            needs = List.copyOf(needs);
        }
    }

    /**
     * One thing.
     *
     * @param what    paint, lot, mix, screen, mesh, sheet, schedule, …
     * @param then    what was used
     * @param there   whether the studio still has it
     * @param instead what takes its place; empty if nothing does or nothing need
     * @param caution what is otherwise with that; empty if nothing is known to be
     */
    public record Need(String what, String then, boolean there, String instead, String caution) {
    }

    public RemakeSheet {
        layers = List.copyOf(layers);
    }

    /** Of the print that is there now: the last of each layer. */
    public static RemakeSheet of(TraceRoom room, String piece) throws IOException {
        Lineage lineage = room.lineage();
        TraceTarget target = TraceTarget.of(lineage, piece);
        Map<String, Deed> last = new LinkedHashMap<>();
        target.deeds().stream().filter(deed -> deed.kind().equals("pull")).forEach(deed -> {
            last.remove(deed.word("layer"));
            last.put(deed.word("layer"), deed);
        });
        List<LayerSheet> layers = new ArrayList<>();
        Set<Deed> all = new LinkedHashSet<>();
        for (Deed pull : last.values()) {
            Web back = lineage.back(List.of(pull), 2000);
            List<Deed> fires = target.deeds().stream().filter(deed -> deed.kind().equals("fire") && deed.word("layer").equals(pull.word("layer"))
                    && !deed.record().time().isBefore(pull.record().time())).toList();
            all.addAll(back.deeds());
            all.addAll(fires);
            layers.add(layer(room, pull, back, fires));
        }
        Web web = new Web(all.stream().sorted(Comparator.comparing((Deed deed) -> deed.record().time())).toList(), List.of(), false);
        return new RemakeSheet(piece, layers, ThenAndNow.of(room, web));
    }

    private static LayerSheet layer(TraceRoom room, Deed pull, Web back, List<Deed> fires) throws IOException {
        Studio studio = room.studio().studio();
        RecordLine line = room.line(pull);
        List<Need> needs = new ArrayList<>();
        Optional<RecordLine> mix = last(room, back, "mix");
        String paint = word(line, "paint").or(() -> mix.flatMap(m -> word(m, "paint"))).orElse("");
        if (!paint.isEmpty()) {
            needs.add(paint(studio, paint));
        }
        word(line, "lot").or(() -> mix.flatMap(m -> word(m, "lot"))).ifPresent(lot -> needs.add(lot(studio, paint, lot)));
        word(line, "mix").ifPresent(name -> needs.add(new Need("mix", name, false, mix.map(RemakeSheet::mixAgain).orElse("mix it anew"),
                mix.isPresent() ? "" : "no record says how it was mixed")));
        word(line, "medium").or(() -> mix.flatMap(m -> word(m, "medium"))).ifPresent(medium -> needs.add(named("medium", medium,
                studio.getMedia().stream().map(one -> one.getName()).toList())));
        word(line, "screen").ifPresent(screen -> needs.add(screen(studio, screen, word(line, "mesh"))));
        word(line, "mesh").ifPresent(mesh -> needs.add(named("mesh", mesh, studio.getMeshes().stream().map(one -> one.getName()).toList())));
        Optional<RecordLine> stencil = last(room, back, "stencil");
        stencil.ifPresent(made -> needs.add(stencil(room, pull, made)));
        for (Deed fire : fires) {
            word(room.line(fire), "schedule").ifPresent(schedule -> needs.add(named("schedule", schedule,
                    studio.getSchedules().stream().map(one -> one.getName()).toList())));
            Object peak = room.line(fire).settings().get("peak_c");
            if (peak instanceof Number number) {
                needs.add(new Need("peak reached", number + " degC", true, "", ""));
            }
        }
        return new LayerSheet(pull.place(), List.copyOf(new LinkedHashSet<>(needs)),
                stencil.map(made -> String.valueOf(made.settings().getOrDefault("label", "")))
                        .orElse(""),
                stencil.map(RecordLine::settings).orElse(Map.of()));
    }

    private static Optional<RecordLine> last(TraceRoom room, Web back, String kind) throws IOException {
        List<Deed> found = back.ofKind(kind);
        return found.isEmpty() ? Optional.empty() : Optional.of(room.line(found.get(found.size() - 1)));
    }

    private static Optional<String> word(RecordLine line, String name) {
        return line.settings().get(name) instanceof String word && !word.isEmpty() ? Optional.of(word) : Optional.empty();
    }

    private static String mixAgain(RecordLine mix) {
        Object powder = mix.settings().getOrDefault("powder_g", mix.settings().get("powderG"));
        Object medium = mix.settings().getOrDefault("medium_g", mix.settings().get("mediumG"));
        return powder instanceof Number && medium instanceof Number ? powder + " g powder to " + medium + " g medium" : "mix it anew";
    }

    private static Need paint(Studio studio, String name) {
        Optional<Paint> there = studio.getPaints().stream().filter(paint -> name.equals(paint.getName())).findFirst();
        if (there.isPresent()) {
            return new Need("paint", name, true, "", "");
        }
        Optional<Paint> near = studio.getPaints().stream().filter(paint -> shared(paint.getName(), name) > 0)
                .max(Comparator.comparingLong((Paint paint) -> shared(paint.getName(), name)).thenComparing(Paint::getName, Comparator.reverseOrder()));
        return new Need("paint", name, false, near.map(Paint::getName).orElse(""), near.isPresent()
                ? "another paint, the nearest by name: fire a test beside a piece of the day before it is used"
                : "no paint of the studio is like it");
    }

    /** Words that two names have in common. */
    private static long shared(String one, String two) {
        Set<String> words = Set.of(two.toLowerCase(Locale.ROOT).split("\\W+"));
        return Arrays.stream(one.toLowerCase(Locale.ROOT).split("\\W+")).distinct().filter(words::contains).count();
    }

    private static Need lot(Studio studio, String paint, String lot) {
        List<PaintLot> lots = studio.getPaints().stream().filter(one -> paint.isEmpty() || paint.equals(one.getName())).flatMap(one -> one.getLots().stream())
                .toList();
        if (lots.stream().anyMatch(one -> lot.equals(one.getName()))) {
            return new Need("lot", lot, true, "", "");
        }
        Optional<PaintLot> newest = lots.stream().filter(one -> one.getReceived() != null).max(Comparator.comparing(PaintLot::getReceived));
        return new Need("lot", lot, false, newest.map(PaintLot::getName).orElse(""), newest.isPresent()
                ? "another lot of the same paint: its shade may differ, fire a test first"
                : "no lot of this paint is in the list");
    }

    private static Need screen(Studio studio, String screen, Optional<String> mesh) {
        Optional<ScreenFrame> there = studio.getFrames().stream().filter(frame -> screen.equals(frame.getName()) && !frame.isOutOfUse()).findFirst();
        if (there.isPresent()) {
            return new Need("screen", screen, true, "", "");
        }
        Optional<ScreenFrame> same = studio.getFrames().stream().filter(frame -> !frame.isOutOfUse() && frame.getMesh() != null)
                .filter(frame -> mesh.isEmpty() || mesh.get().equals(frame.getMesh().getName())).min(Comparator.comparing(ScreenFrame::getName));
        return new Need("screen", screen, false, same.map(ScreenFrame::getName).orElse(""),
                same.isPresent() ? mesh.isPresent() ? "" : "the record does not say its mesh" : "no frame in use has this mesh");
    }

    private static Need named(String what, String name, List<String> names) {
        boolean there = names.contains(name);
        return new Need(what, name, there, "", there ? "" : "the studio's list no longer has it");
    }

    private static Need stencil(TraceRoom room, Deed pull, RecordLine made) {
        String label = String.valueOf(made.settings().getOrDefault("label", "stencil"));
        Optional<Path> file = room.commissionOf(pull).flatMap(folder -> made.settings().get("file") instanceof String name
                ? Optional.of(folder.path().resolve(name))
                : Optional.empty());
        boolean there = file.filter(path -> {
            try {
                return Files.isRegularFile(path) && Hashes.sha256(path).equals(made.settings().get("sha256"));
            } catch (IOException e) {
                return false;
            }
        }).isPresent();
        return new Need("stencil", label, there, there ? "" : "make it again from the recipe of the day", there
                ? ""
                : "today's make may come out otherwise: see the settings that differ");
    }

    /** Things that are gone, of all layers. */
    public List<Need> gone() {
        return layers.stream().flatMap(layer -> layer.needs().stream()).filter(need -> !need.there()).distinct().toList();
    }
}
