package saddlebar.production.trace;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.FiringSchedule;
import saddlebar.model.commission.FiringSegment;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.Json;
import saddlebar.model.store.RecordLine;
import saddlebar.production.facts.CommissionFacts;
import saddlebar.production.facts.FactsReader;
import saddlebar.production.facts.LayerFacts;
import saddlebar.production.facts.PanelFacts;
import saddlebar.production.facts.WindowFacts;
import saddlebar.trace.lineage.Deed;
import saddlebar.trace.lineage.Web;

/**
 * Settings of the day against those of today: of every layer whose stencil is in a lineage, and of every schedule that was run. What a record does not tell
 * is left out, not guessed; a thing that is gone today is said to be gone.
 *
 * @param rows     the same and the different, in the order of the recipe
 * @param artworks drawings that were changed since
 */
public record ThenAndNow(List<SettingRow> rows, List<ChangedArtwork> artworks) {
    /** Said of what is no longer there. */
    static final String GONE = "gone";
    /** Names for results of the day, not settings. */
    private static final Set<String> SETTINGS = new LinkedHashSet<>(List.of("layer", "role", "paint", "face", "frame", "mesh", "bleedMm", "sightLine",
            "sightLineMm", "method", "dpi", "lpi", "angleDeg", "dot", "dotMm", "filter", "course", "courseLayer", "noiseSide", "clump", "supercell", "toneMode",
            "toneFrom", "toneTo", "endLow", "endHigh", "endRule",
            "curve", "calibration", "processKey", "tonerSide", "mirror", "openMm", "bridgeMm"));

    /**
     * A drawing as it was taken then and as it is now.
     *
     * @param subject  window and layer
     * @param artLayer layer of the drawing
     * @param then     file of that day, if it is still in the commission
     * @param now      file of today
     * @param widthMm  real width of the page
     */
    public record ChangedArtwork(String subject, String artLayer, Optional<Path> then, Path now, String thenSha256, String nowSha256, double widthMm) {
    }

    public ThenAndNow {
        rows = List.copyOf(rows);
        artworks = List.copyOf(artworks);
    }

    public List<SettingRow> differing() {
        return rows.stream().filter(SettingRow::differs).toList();
    }

    /** Of a lineage. */
    public static ThenAndNow of(TraceRoom room, Web web) throws IOException {
        Comparing comparing = new Comparing(room);
        for (Deed deed : web.ofKind("stencil")) {
            comparing.stencil(deed);
        }
        for (Deed deed : web.ofKind("pull")) {
            comparing.pull(deed);
        }
        for (Deed deed : web.ofKind("fire")) {
            comparing.schedule(deed);
        }
        return new ThenAndNow(List.copyOf(comparing.rows), comparing.artworks);
    }

    private static final class Comparing {
        private final TraceRoom room;
        private final Set<SettingRow> rows = new LinkedHashSet<>();
        private final List<ChangedArtwork> artworks = new ArrayList<>();
        private final Map<Path, CommissionFacts> facts = new LinkedHashMap<>();
        private final Set<String> compared = new LinkedHashSet<>();

        Comparing(TraceRoom room) {
            this.room = room;
        }

        void stencil(Deed deed) throws IOException {
            RecordLine line = room.line(deed);
            Optional<CommissionFolder> folder = room.commissionOf(deed);
            if (folder.isEmpty()) {
                return;
            }
            Object layerId = line.settings().get("layerId");
            if (!compared.add("stencil " + layerId + " " + line.settings().get("inputSha256"))) {
                return;
            }
            Optional<Found> found = find(folder.get(), String.valueOf(layerId));
            String subject = found.map(Found::name).orElse(String.valueOf(line.settings().getOrDefault("label", layerId)));
            Map<String, Object> now = found.map(f -> f.layer().settings()).orElse(Map.of());
            for (String setting : SETTINGS) {
                if (line.settings().containsKey(setting) || now.containsKey(setting)) {
                    row(subject, setting, line.settings().get(setting), found.isEmpty() ? GONE : now.get(setting));
                }
            }
            found.ifPresent(today -> artwork(folder.get(), line, today));
        }

        private void artwork(CommissionFolder folder, RecordLine line, Found today) {
            if (line.settings().get("artworkSha256") instanceof String then && today.panel().art().isPresent()) {
                var art = today.panel().art().get();
                String now = art.path().getFileName().toString();
                row(today.name(), "artwork", art.sha256().equals(then)
                        ? now
                        : fileOf(folder, then).map(file -> file.getFileName().toString())
                                .orElse("SHA-256 " + then),
                        now);
                if (!art.sha256().equals(then)) {
                    artworks.add(
                            new ChangedArtwork(today.name(), today.layer().artLayer(), fileOf(folder, then), art.path(), then, art.sha256(), art.widthMm()));
                }
            }
        }

        private static Optional<Path> fileOf(CommissionFolder folder, String sha256) {
            return ArtworkOfDay.file(folder, sha256);
        }

        /** What the words of a pull say of the layer's own settings; where its stencil is known, that says more. */
        void pull(Deed deed) throws IOException {
            Optional<CommissionFolder> folder = room.commissionOf(deed);
            RecordLine line = room.line(deed);
            Object layerId = line.settings().get("layerId");
            if (folder.isEmpty() || !(layerId instanceof String id)) {
                return;
            }
            if (!compared
                    .add("pull " + id + " " + List.of("paint", "mesh", "lot", "medium").stream().map(line.settings()::get).map(String::valueOf).toList())) {
                return;
            }
            Optional<DesignLayer> layer = folder.get().links().byId(id).filter(DesignLayer.class::isInstance).map(DesignLayer.class::cast);
            String subject = layer.map(l -> l.getPanel().getWindow().getName() + " " + l.getName()).orElse(id);
            word(subject, "paint", line, layer.map(l -> l.getPaint() == null ? "" : l.getPaint().getName()));
            word(subject, "mesh", line, layer.map(l -> l.getMesh() == null ? "" : l.getMesh().getName()));
            word(subject, "medium", line, layer.map(l -> l.getMedium() == null ? "" : l.getMedium().getName()));
            if (line.settings().get("lot") instanceof String lot) {
                boolean there = room.studio().studio().getPaints().stream().flatMap(paint -> paint.getLots().stream()).anyMatch(l -> lot.equals(l.getName()));
                row(subject, "lot", lot, there ? lot : GONE);
            }
        }

        private void word(String subject, String setting, RecordLine line, Optional<String> now) {
            boolean knownByStencil = rows.stream().anyMatch(row -> row.subject().equals(subject) && row.setting().equals(setting));
            if (!knownByStencil && line.settings().get(setting) instanceof String then && now.filter(text -> !text.isEmpty()).isPresent()) {
                row(subject, setting, then, now.get());
            }
        }

        void schedule(Deed deed) throws IOException {
            RecordLine line = room.line(deed);
            Object name = line.settings().getOrDefault("schedule", line.settings().get("scheduleId"));
            if (!(name instanceof String word) || !compared.add("schedule " + word + line.settings().get("segments"))) {
                return;
            }
            Optional<FiringSchedule> now = room.studio().studio().getSchedules().stream()
                    .filter(schedule -> word.equals(schedule.getName()) || word.equals(schedule.getId())).findFirst();
            String subject = "schedule " + now.map(FiringSchedule::getName).orElse(word);
            row(subject, "schedule", word, now.isEmpty() ? GONE : word);
            if (line.settings().get("segments") instanceof List<?> then && now.isPresent()) {
                List<String> run = then.stream().map(segment -> segment instanceof Map<?, ?> map
                        ? segment(map.get("rateKPerH"), map.get("targetC"), map.get("soakMin"))
                        : String.valueOf(segment)).toList();
                List<String> today = now.get().getSegments().stream().map((FiringSegment s) -> segment(s.getRateKPerH(), s.getTargetC(), s.getSoakMin()))
                        .toList();
                for (int i = 0; i < Math.max(run.size(), today.size()); i++) {
                    row(subject, "segment " + (i + 1), i < run.size() ? run.get(i) : null, i < today.size() ? today.get(i) : GONE);
                }
            }
        }

        private static String segment(Object rate, Object target, Object soak) {
            return (rate == null || rate instanceof Number n && n.doubleValue() == 0 ? "as fast as it goes" : plain(rate) + " K/h") + " to " + plain(target)
                    + " degC, "
                    + plain(soak) + " min";
        }

        private void row(String subject, String setting, Object then, Object now) {
            String was = plain(then);
            String is = plain(now);
            rows.add(new SettingRow(subject, setting, was, is, !was.isEmpty() && !same(then, now)));
        }

        private static boolean same(Object then, Object now) {
            if (then instanceof Number one && now instanceof Number two) {
                return Double.compare(one.doubleValue(), two.doubleValue()) == 0;
            }
            return Objects.equals(plain(then), plain(now));
        }

        private static String plain(Object value) {
            if (value == null) {
                return "";
            }
            if (value instanceof Number number) {
                double one = number.doubleValue();
                return one == Math.rint(one) && Math.abs(one) < 1e15 ? String.valueOf((long) one) : String.valueOf(one);
            }
            return value instanceof String text ? text : Json.write(value);
        }

        private record Found(WindowFacts window, PanelFacts panel, LayerFacts layer) {
            String name() {
                return window.name() + " " + layer.name();
            }
        }

        private Optional<Found> find(CommissionFolder folder, String layerId) {
            CommissionFacts all = facts.computeIfAbsent(folder.path(), path -> {
                folder.windows();
                return FactsReader.read(folder.commission(), path, List.of());
            });
            return all.windows().stream().flatMap(window -> window.panels().stream().flatMap(panel -> panel.layers().stream()
                    .filter(layer -> layer.id().equals(layerId)).map(layer -> new Found(window, panel, layer)))).findFirst();
        }
    }
}
