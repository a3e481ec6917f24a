package saddlebar.production.trace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import saddlebar.model.index.Role;
import saddlebar.model.problem.Refusal;
import saddlebar.trace.lineage.Deed;
import saddlebar.trace.lineage.Lineage;

/**
 * What a trace begins from.
 *
 * @param name  as it was asked for
 * @param deeds the last record of each print asked for, or the one record
 */
public record TraceTarget(String name, List<Deed> deeds) {
    public TraceTarget {
        deeds = List.copyOf(deeds);
    }

    /**
     * Finds what is meant.
     *
     * @param word id of a record, or its beginning if no other begins so; a piece {@code W01/12}; a layer on it {@code W01/12/matt}
     * @throws Refusal if no record speaks of it
     */
    public static TraceTarget of(Lineage lineage, String word) {
        Optional<Deed> record = lineage.record(word);
        if (record.isPresent()) {
            return new TraceTarget(word, List.of(record.get()));
        }
        String[] parts = word.split("/", 3);
        if (parts.length < 2 || parts[0].isEmpty() || parts[1].isEmpty()) {
            throw new Refusal(word, "is neither the id of a record nor a piece",
                    "write a piece as W01/12, a layer on it as W01/12/matt, or copy a record's id");
        }
        List<Deed> ofPiece = ofPiece(lineage, parts[0], parts[1]);
        if (ofPiece.isEmpty()) {
            throw new Refusal(word, "no record speaks of this piece", "look at its number on the cutline, or record what was done to it");
        }
        List<Deed> all = withFormer(lineage, ofPiece);
        List<Deed> wanted = parts.length < 3 ? all : all.stream().filter(deed -> parts[2].equals(deed.word("layer"))).toList();
        if (wanted.isEmpty()) {
            throw new Refusal(word, "no record speaks of this layer", "take one of "
                    + String.join(", ", all.stream().map(deed -> deed.word("layer")).filter(layer -> !layer.isEmpty()).distinct().sorted().toList()));
        }
        return new TraceTarget(word, wanted);
    }

    private static List<Deed> ofPiece(Lineage lineage, String window, String piece) {
        Set<Deed> inWindow = new LinkedHashSet<>(lineage.naming("piece=" + piece, List.of(Role.ABOUT)));
        return inWindow.stream().filter(deed -> window.equals(deed.word("window")) && !deed.kind().equals("note")).toList();
    }

    /** Also what was done to the pieces that it was split or joined from. */
    private static List<Deed> withFormer(Lineage lineage, List<Deed> ofPiece) {
        Set<Deed> all = new TreeSet<>(Comparator.comparing((Deed deed) -> deed.record().time()).thenComparing(Deed::source)
                .thenComparing(deed -> deed.record().ordinal()));
        all.addAll(ofPiece);
        List<String> todo = new ArrayList<>(ids(ofPiece));
        for (int i = 0; i < todo.size(); i++) {
            String start = "former=" + todo.get(i) + ":";
            for (String thing : lineage.thingsFrom(start, Integer.MAX_VALUE)) {
                String former = thing.substring(start.length());
                if (!todo.contains(former)) {
                    todo.add(former);
                    all.addAll(lineage.naming("id=" + former, List.of(Role.USED, Role.MADE)));
                }
            }
        }
        return List.copyOf(all);
    }

    private static Set<String> ids(List<Deed> deeds) {
        Set<String> ids = new LinkedHashSet<>();
        for (Deed deed : deeds) {
            for (Role role : List.of(Role.USED, Role.MADE)) {
                deed.record().things(role).stream().filter(thing -> thing.startsWith("print=") || thing.startsWith("prints="))
                        .forEach(thing -> ids.add(thing.substring(thing.indexOf('=') + 1).replaceFirst("/.*", "")));
            }
        }
        return ids;
    }
}
