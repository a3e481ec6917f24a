import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

import saddlebar.model.index.RecordIndex;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.NewCommission;
import saddlebar.model.store.RecordDraft;
import saddlebar.model.store.RecordKind;
import saddlebar.model.store.StudioLibrary;
import saddlebar.model.work.Work;
import saddlebar.trace.history.WorkHistory;
import saddlebar.trace.lineage.Deed;
import saddlebar.trace.lineage.Exposure;
import saddlebar.trace.lineage.Lineage;
import saddlebar.trace.lineage.RecordThings;
import saddlebar.trace.lineage.Web;
import saddlebar.trace.suspect.SuspectSearch;

/** A cathedral's record, invented from a seed, at 1/16, 1/4 and all of a size: how long the index takes to build and each question to answer. */
public final class RecordBench {
    private static final int WINDOWS = 100;
    private static final int PIECES = 250;
    private static final List<String> LAYERS = List.of("trace", "matt", "stain", "enamel");
    private static final int ASKED = 40;

    private RecordBench() {
    }

    /** @param args work folder, shared tables, records of the largest size */
    public static void main(String[] args) throws IOException {
        int most = Integer.parseInt(args[2]);
        System.out.printf(Locale.ROOT, "%n## %s, the making record at %,d records%n%n%d cores, %s, Java %s, heap %d MB. Medians of %d questions; load average at the start %.1f.%n%n", java.time.LocalDate.now(),
                most, Runtime.getRuntime().availableProcessors(), System.getProperty("os.arch"), System.getProperty("java.version"),
                Runtime.getRuntime().maxMemory() >> 20, ASKED,
                java.lang.management.ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
        System.out.println("| records | index built s (processor) | its size MB | opened again ms | way back ms (worst) | way forward, mix ms (worst) | way forward, stencil ms (worst) | suspects s (processor) |");
        System.out.println("| --- | --- | --- | --- | --- | --- | --- | --- |");
        List<double[]> rows = new ArrayList<>();
        for (int records : new int[] {most / 16, most / 4, most}) {
            rows.add(measure(Path.of(args[0]).resolve("c" + records), Path.of(args[1]), records));
        }
        double[] first = rows.get(0);
        double[] last = rows.get(2);
        System.out.printf(Locale.ROOT, "%nGrowth over the 16-fold, as an exponent: build %.2f, way back %.2f, forward from a mix %.2f, suspects %.2f.%n", exponent(first, last, 0),
                exponent(first, last, 1), exponent(first, last, 2), exponent(first, last, 3));
    }

    private static double exponent(double[] first, double[] last, int at) {
        return Math.log(last[at] / first[at]) / Math.log(16);
    }

    private static double[] measure(Path folder, Path shared, int records) throws IOException {
        try (CommissionFolder made = CommissionFolder.create(folder, NewCommission.titled("Cathedral").stockedFrom(StudioLibrary.of(shared)))) {
            write(made, records);
        }
        try (CommissionFolder open = CommissionFolder.open(folder, Access.READ)) {
            long start = System.nanoTime();
            long processor = processorNs();
            RecordIndex.open(open.path(), open.records(), new RecordThings(), Work.UNWATCHED).close();
            double built = (System.nanoTime() - start) / 1e9;
            double builtProcessor = (processorNs() - processor) / 1e9;
            start = System.nanoTime();
            try (RecordIndex index = RecordIndex.open(open.path(), open.records(), new RecordThings(), Work.UNWATCHED)) {
                double opened = (System.nanoTime() - start) / 1e6;
                if (index.size() != records || index.origin() != RecordIndex.Origin.KEPT) {
                    throw new IllegalStateException(index.size() + " records, " + index.origin());
                }
                double[] back = ask(index, "defect", (lineage, deed) -> {
                    Web web = lineage.back(List.of(deed), 5000);
                    for (Deed one : web.deeds()) {
                        index.line(one.record().ordinal());
                    }
                    return web.deeds().size();
                });
                double[] mix = ask(index, "mix", (lineage, deed) -> new Exposure(lineage).ofLevel("mix", deed.word("mix")).size());
                double[] stencil = ask(index, "stencil", (lineage, deed) -> new Exposure(lineage).of(List.of(deed)).size());
                start = System.nanoTime();
                processor = processorNs();
                WorkHistory history = new WorkHistory(Optional.empty(), Optional.empty());
                index.forEach(history::take);
                int units = SuspectSearch.withDefaults().among(history.units()).units();
                double suspects = (System.nanoTime() - start) / 1e9;
                double suspectsProcessor = (processorNs() - processor) / 1e9;
                long size;
                try (var files = Files.list(folder.resolve(RecordIndex.FOLDER))) {
                    size = files.mapToLong(file -> file.toFile().length()).sum();
                }
                System.out.printf(Locale.ROOT, "| %,d (%,d prints) | %.1f (%.1f) | %.0f | %.0f | %.1f (%.1f) | %.1f (%.1f) | %.1f (%.1f) | %.1f (%.1f) |%n", records, units, built, builtProcessor,
                        size / 1e6,
                        opened, back[0], back[1], mix[0], mix[1], stencil[0], stencil[1], suspects, suspectsProcessor);
                return new double[] {built, back[0], mix[0], suspects};
            }
        }
    }

    /** What the process has used of the processors: on a machine that others use too, the clock alone says little. */
    private static long processorNs() {
        return ((com.sun.management.OperatingSystemMXBean) java.lang.management.ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }

    private interface Question {
        int ask(Lineage lineage, Deed deed) throws IOException;
    }

    /** Median and worst of many; the first few are not counted, since the compiler is still at work. */
    private static double[] ask(RecordIndex index, String kind, Question question) throws IOException {
        List<String> ids = new ArrayList<>();
        index.forEach(record -> {
            if (record.kind().equals(kind)) {
                ids.add(record.id());
            }
        });
        Random chance = new Random(7);
        double[] times = new double[ASKED];
        long found = 0;
        for (int i = -10; i < ASKED; i++) {
            Lineage lineage = new Lineage(List.of(index));
            Deed deed = lineage.record(ids.get(chance.nextInt(ids.size()))).orElseThrow();
            long start = System.nanoTime();
            found += question.ask(lineage, deed);
            if (i >= 0) {
                times[i] = (System.nanoTime() - start) / 1e6;
            }
        }
        if (found < ASKED) {
            throw new IllegalStateException("nothing was found");
        }
        Arrays.sort(times);
        return new double[] {times[ASKED / 2], times[ASKED - 1]};
    }

    private static void write(CommissionFolder made, int records) throws IOException {
        Random chance = new Random(20260314);
        List<RecordDraft> drafts = new ArrayList<>();
        int told = 0;
        int mixes = 0;
        int firings = 0;
        Instant time = Instant.parse("2016-01-04T08:00:00Z");
        for (int print = 0; told < records; print++) {
            int window = print / (PIECES * LAYERS.size()) % WINDOWS;
            int layer = print / PIECES % LAYERS.size();
            int piece = print % PIECES;
            String stencil = "stencil-" + window + "-" + layer + "-" + piece / 40;
            if (piece % 40 == 0) {
                mixes++;
                firings++;
                drafts.add(draft(RecordKind.STENCIL, time, Map.of("stencilId", stencil, "layerId", "layer-" + window + "-" + layer, "artworkSha256", "art-" + window, "lpi",
                        40.0, "angleDeg", 22.5, "method", "am")).making(List.of(stencil)));
                drafts.add(draft(RecordKind.FUSE, time, Map.of("screen", "S" + mixes % 16, "stencilId", stencil, "pressC", 121.0)));
                drafts.add(draft(RecordKind.MIX, time, Map.of("mix", "M" + mixes, "paint", LAYERS.get(layer) + " paint", "lot", "L" + mixes / 50, "powderG", 40.0)));
            }
            Map<String, Object> where = new LinkedHashMap<>();
            where.put("window", "W" + window);
            where.put("piece", String.valueOf(piece + 1));
            where.put("layer", LAYERS.get(layer));
            where.put("pieceId", "piece-" + window + "-" + piece);
            where.put("layerId", "layer-" + window + "-" + layer);
            Map<String, Object> pull = new LinkedHashMap<>(where);
            pull.putAll(Map.of("screen", "S" + mixes % 16, "mix", "M" + mixes, "stencilId", stencil, "pull", piece % 40 + 1.0, "humidity",
                    Math.rint(100 * (0.4 + 0.3 * chance.nextDouble())) / 100, "paint", LAYERS.get(layer) + " paint"));
            drafts.add(draft(RecordKind.PULL, time.plusSeconds(60 + piece % 40 * 120), pull).by("P" + mixes % 5));
            Map<String, Object> fire = new LinkedHashMap<>(where);
            fire.putAll(Map.of("firing", "F" + firings, "shelf_place", "place " + piece % 12, "peak_c", Math.rint(645 + 15 * chance.nextDouble())));
            drafts.add(draft(RecordKind.FIRE, time.plusSeconds(40_000), fire));
            if (chance.nextDouble() < (mixes % 97 == 0 ? 0.4 : 0.01)) {
                Map<String, Object> defect = new LinkedHashMap<>(where);
                defect.putAll(Map.of("defect", "thin", "severity", "light"));
                drafts.add(draft(RecordKind.DEFECT, time.plusSeconds(80_000), defect));
            }
            if (piece % 40 == 39) {
                time = time.plusSeconds(20_000);
            }
            if (drafts.size() >= 20_000 || told + drafts.size() >= records) {
                List<RecordDraft> now = drafts.subList(0, Math.min(drafts.size(), records - told));
                made.records().append(now);
                told += now.size();
                drafts.clear();
            }
        }
    }

    private static RecordDraft draft(RecordKind kind, Instant time, Map<String, Object> settings) {
        return RecordDraft.of(kind).at(time).with(settings);
    }
}
