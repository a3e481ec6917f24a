package saddlebar.trace.lineage;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

import saddlebar.model.index.IndexedRecord;
import saddlebar.model.index.RecordIndex;
import saddlebar.model.index.Role;

/**
 * The lineage of one question, over the record books of a commission and of the studio that it shares (or of a studio and all who joined it).
 *
 * <p>A record L follows from a record E if L used a thing and E was the last before L that generated it: the screen as it was loaded last, the print as it
 * was fired last. Superseded records are passed over; their corrections stand for them. {@code back} and {@code forward} walk this one relation in its two
 * directions, so that each contains what the other says. Cost: what is found, times the records that generated the same things. Not for several threads at
 * once; make one a question.
 */
public final class Lineage {
    private final List<RecordIndex> sources;
    private final Map<String, List<Deed>> makers = new HashMap<>();

    /** @param sources their order settles what came first of two records of one moment */
    public Lineage(List<RecordIndex> sources) {
        this.sources = List.copyOf(sources);
    }

    /** The record of this id, or the one that corrects it. */
    public Optional<Deed> record(String id) {
        String wanted = id;
        for (int step = 0; step < 100; step++) { // a ring of corrections ends here
            Optional<String> correction = correctionOf(wanted);
            if (correction.isEmpty()) {
                break;
            }
            wanted = correction.get();
        }
        for (int i = 0; i < sources.size(); i++) {
            OptionalInt at = sources.get(i).ordinalOf(wanted);
            if (at.isPresent()) {
                return Optional.of(new Deed(i, sources.get(i).record(at.getAsInt())));
            }
        }
        return Optional.empty();
    }

    private Optional<String> correctionOf(String id) {
        return sources.stream().flatMap(source -> source.correctionOf(id).stream()).findFirst();
    }

    /** Records that speak of a thing in one of these roles, in the order of time. */
    public List<Deed> naming(String thing, Collection<Role> roles) {
        Set<Deed> found = new TreeSet<>(Deed.IN_TIME);
        for (int i = 0; i < sources.size(); i++) {
            RecordIndex source = sources.get(i);
            for (Role role : roles) {
                for (int ordinal : source.naming(role, thing)) {
                    if (!source.isSuperseded(ordinal)) {
                        found.add(new Deed(i, source.record(ordinal)));
                    }
                }
            }
        }
        return List.copyOf(found);
    }

    /** Names of things that begin so. */
    public List<String> thingsFrom(String prefix, int most) {
        Set<String> found = new TreeSet<>();
        sources.forEach(source -> found.addAll(source.thingsFrom(prefix, most)));
        return found.stream().limit(most).toList();
    }

    /** All that these records follow from, themselves among it. */
    public Web back(Collection<Deed> from, int most) {
        return walk(from, most, this::before);
    }

    /** All that follows from these records, themselves among it. */
    public Web forward(Collection<Deed> from, int most) {
        return walk(from, most, this::after);
    }

    private interface Direction {
        List<Web.Strand> strands(Deed deed);
    }

    private static Web walk(Collection<Deed> from, int most, Direction direction) {
        Set<Deed> seen = new HashSet<>(from);
        Deque<Deed> todo = new ArrayDeque<>(new LinkedHashSet<>(from));
        Set<Web.Strand> strands = new LinkedHashSet<>();
        boolean cut = false;
        while (!todo.isEmpty()) {
            Deed deed = todo.poll();
            for (Web.Strand strand : direction.strands(deed)) {
                Deed other = strand.later().equals(deed) ? strand.earlier() : strand.later();
                if (!seen.contains(other)) {
                    if (seen.size() >= most) {
                        cut = true;
                        continue;
                    }
                    seen.add(other);
                    todo.add(other);
                }
                strands.add(strand);
            }
        }
        return new Web(seen.stream().sorted(Deed.IN_TIME).toList(), List.copyOf(strands), cut);
    }

    private List<Web.Strand> before(Deed later) {
        List<Web.Strand> strands = new ArrayList<>();
        for (String thing : later.record().things(Role.USED)) {
            for (String one : meant(thing)) {
                lastMaker(one, later).ifPresent(earlier -> strands.add(new Web.Strand(later, earlier, one)));
            }
        }
        return strands;
    }

    private List<Web.Strand> after(Deed earlier) {
        List<Web.Strand> strands = new ArrayList<>();
        for (String thing : made(earlier)) {
            Set<Deed> users = new LinkedHashSet<>(naming(thing, Set.of(Role.USED)));
            if (thing.startsWith("print=")) { // also who speaks of all that is on the piece
                users.addAll(naming("prints=" + thing.substring("print=".length(), thing.indexOf('/')), Set.of(Role.USED)));
            }
            for (Deed later : users) {
                if (Deed.IN_TIME.compare(earlier, later) < 0 && lastMaker(thing, later).filter(earlier::equals).isPresent()) {
                    strands.add(new Web.Strand(later, earlier, thing));
                }
            }
        }
        return strands;
    }

    /** What a record generated, and itself: by its own id and by the ids of those that it corrects. */
    private Set<String> made(Deed deed) {
        Set<String> made = new LinkedHashSet<>(deed.record().things(Role.MADE));
        Deque<IndexedRecord> todo = new ArrayDeque<>(List.of(deed.record()));
        while (!todo.isEmpty()) {
            IndexedRecord record = todo.poll();
            if (made.add("id=" + record.id())) {
                for (String thing : record.things(Role.ABOUT)) {
                    if (thing.startsWith(RecordThings.CORRECTS)) {
                        String id = thing.substring(RecordThings.CORRECTS.length());
                        if (!made.contains("id=" + id)) {
                            sources.forEach(source -> source.ordinalOf(id).ifPresent(at -> todo.add(source.record(at))));
                        }
                    }
                }
            }
        }
        return made;
    }

    /** All prints of a piece stand for each of them. */
    private List<String> meant(String thing) {
        return thing.startsWith("prints=") ? thingsFrom("print=" + thing.substring("prints=".length()) + "/", Integer.MAX_VALUE) : List.of(thing);
    }

    private Optional<Deed> lastMaker(String thing, Deed before) {
        List<Deed> all = makers.computeIfAbsent(thing, this::makersOf);
        int low = 0;
        int high = all.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (Deed.IN_TIME.compare(all.get(middle), before) < 0) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low == 0 ? Optional.empty() : Optional.of(all.get(low - 1));
    }

    private List<Deed> makersOf(String thing) {
        List<Deed> all = new ArrayList<>(naming(thing, Set.of(Role.MADE)));
        if (thing.startsWith("id=")) {
            record(thing.substring(3)).filter(deed -> !all.contains(deed)).ifPresent(all::add);
            all.sort(Deed.IN_TIME);
        }
        return all;
    }
}
