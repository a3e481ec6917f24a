package saddlebar.production.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import saddlebar.model.index.Role;
import saddlebar.trace.lineage.Deed;
import saddlebar.trace.lineage.ExposedPiece;
import saddlebar.trace.lineage.Exposure;
import saddlebar.trace.lineage.Lineage;

/**
 * Remakes done together: the prints that take the same paint through the same mesh are one run at the print bench, and runs fired by one schedule one load.
 *
 * @param runs by paint, mesh and schedule
 */
public record RemakeBatch(List<Run> runs) {
    /**
     * Prints that are done in one go.
     *
     * @param stencils stencils of the day that are needed, by their labels; to be laid on one sheet
     * @param places   pieces and layers
     */
    public record Run(String paint, String mesh, String schedule, List<String> stencils, List<String> places) {
    }

    public RemakeBatch {
        runs = List.copyOf(runs);
    }

    /** Pieces on which a remake was decided and that were not printed again since. */
    public static List<String> waiting(TraceRoom room) {
        Lineage lineage = room.lineage();
        Exposure exposure = new Exposure(lineage);
        Set<String> pieces = new TreeSet<>();
        for (String thing : lineage.thingsFrom("window=", Integer.MAX_VALUE)) {
            for (Deed deed : lineage.naming(thing, List.of(Role.ABOUT))) {
                if (deed.kind().equals("remake")) {
                    deed.record().things(Role.USED).stream().filter(used -> used.startsWith("print=") || used.startsWith("prints=")).forEach(used -> {
                        String piece = used.substring(used.indexOf('=') + 1).replaceFirst("/.*", "");
                        exposure.ofPrints(piece).stream().filter(one -> one.state() == ExposedPiece.State.TO_REMAKE)
                                .forEach(one -> pieces.add(one.window() + "/" + one.piece()));
                    });
                }
            }
        }
        return List.copyOf(pieces);
    }

    public static RemakeBatch of(TraceRoom room, List<RemakeSheet> sheets) {
        record Way(String paint, String mesh, String schedule) implements Comparable<Way> {
            @Override
            public int compareTo(Way other) {
                return (paint + "\n" + mesh + "\n" + schedule).compareTo(other.paint + "\n" + other.mesh + "\n" + other.schedule);
            }
        }
        Map<Way, List<RemakeSheet.LayerSheet>> ways = new TreeMap<>();
        for (RemakeSheet sheet : sheets) {
            for (RemakeSheet.LayerSheet layer : sheet.layers()) {
                ways.computeIfAbsent(new Way(use(layer, "paint"), use(layer, "mesh"), use(layer, "schedule")), any -> new ArrayList<>()).add(layer);
            }
        }
        List<Run> runs = new ArrayList<>();
        ways.forEach((way, layers) -> runs.add(new Run(way.paint(), way.mesh(), way.schedule(),
                layers.stream().map(RemakeSheet.LayerSheet::stencil).filter(name -> !name.isEmpty()).distinct().sorted().toList(),
                layers.stream().map(RemakeSheet.LayerSheet::place).toList())));
        return new RemakeBatch(runs);
    }

    /** What is taken today: the thing itself, or what takes its place. */
    private static String use(RemakeSheet.LayerSheet layer, String what) {
        return layer.needs().stream().filter(need -> need.what().equals(what))
                .map(need -> need.there() || need.instead().isEmpty() ? need.then() : need.instead())
                .findFirst().orElse("");
    }
}
