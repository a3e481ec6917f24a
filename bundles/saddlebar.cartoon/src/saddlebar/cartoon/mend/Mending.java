package saddlebar.cartoon.mend;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;

import org.locationtech.jts.geom.Coordinate;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;

/**
 * Finds what could be mended in a cutline, and does what somebody agreed to. Proposals are made anew for the lines that earlier mends left, so that
 * they always fit; a mend that touches a line which another of the same round has changed waits for the next round. Deterministic. Near to n log n in
 * the number of points, besides one look a mm of line for doubled ones.
 */
public final class Mending {
    private static final int MOST_ROUNDS = 20;

    private Mending() {
    }

    /**
     * What could be mended; nothing is changed.
     *
     * @param cutline lines of the cutline layer in mm
     * @param work    asked whether to stop, told no units
     * @return in the order of the drawing: free ends, then doubled lines
     */
    public static List<Mend> propose(List<DrawnLine> cutline, MendSettings settings, Work work) {
        SegmentTree segments = new SegmentTree(cutline);
        List<Mend> mends = new ArrayList<>(new EndMends(cutline, settings, segments, work).all());
        mends.addAll(new DoubledStretches(cutline, settings, segments, work).all());
        return numbered(mends);
    }

    static String key(MendKind kind, DrawnLine line, Coordinate at) {
        return String.format(Locale.ROOT, "%s %s at %.2f,%.2f", kind.key(), line.element(), at.x + 0.0, at.y + 0.0);
    }

    /** Two mends of one key, as of lines without names drawn over each other, are told apart by their order. */
    private static List<Mend> numbered(List<Mend> mends) {
        Map<String, Integer> seen = new HashMap<>();
        return mends.stream().map(mend -> {
            int count = seen.merge(mend.key(), 1, Integer::sum);
            return count == 1
                    ? mend
                    : new Mend(mend.key() + " (" + count + ")", mend.kind(), mend.where(), mend.at(), mend.message(), mend.changes(),
                            mend.leansOn());
        }).toList();
    }

    /**
     * Does one proposal.
     *
     * @throws Refusal if the lines are no longer those for which it was made
     */
    public static MendedCutline accept(List<DrawnLine> cutline, Mend mend) {
        for (LineChange change : mend.changes()) {
            if (change.index() >= cutline.size() || !same(cutline.get(change.index()), change.before())) {
                throw new Refusal(mend.where(), "the line is no longer as it was when this mend was proposed", "look for mends again");
            }
        }
        Lines mended = Lines.drawn(cutline).after(List.of(mend));
        return new MendedCutline(mended.lines, mended.origins, List.of(mend), List.of());
    }

    /** Does all that can be proposed, and what can be proposed then. */
    public static MendedCutline acceptAll(List<DrawnLine> cutline, MendSettings settings, Work work) {
        return rounds(cutline, settings, mend -> true, List.of(), work);
    }

    /**
     * Does again what was agreed to at an earlier reading of the same artwork.
     *
     * @param keys of the agreed mends, in the order in which they were done
     */
    public static MendedCutline acceptAgain(List<DrawnLine> cutline, Collection<String> keys, MendSettings settings, Work work) {
        Set<String> wanted = new HashSet<>(keys);
        return rounds(cutline, settings, mend -> wanted.contains(mend.key()), keys, work);
    }

    private static MendedCutline rounds(List<DrawnLine> cutline, MendSettings settings, Predicate<Mend> agreed, Collection<String> keys, Work work) {
        Lines now = Lines.drawn(cutline);
        List<Mend> done = new ArrayList<>();
        Set<String> open = new LinkedHashSet<>(keys);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            List<Mend> batch = apart(propose(now.lines, settings, work).stream().filter(agreed).toList());
            if (batch.isEmpty()) {
                break;
            }
            now = now.after(batch);
            done.addAll(batch);
            batch.forEach(mend -> open.remove(mend.key()));
        }
        return new MendedCutline(now.lines, now.origins, done, List.copyOf(open));
    }

    /** Those that change no line which another of them changes or leans on. */
    private static List<Mend> apart(List<Mend> mends) {
        Set<Integer> changed = new HashSet<>();
        Set<Integer> leantOn = new HashSet<>();
        List<Mend> batch = new ArrayList<>();
        for (Mend mend : mends) {
            boolean clashes = mend.leansOn().stream().anyMatch(changed::contains)
                    || mend.changes().stream().anyMatch(change -> changed.contains(change.index()) || leantOn.contains(change.index()));
            if (!clashes) {
                mend.changes().forEach(change -> changed.add(change.index()));
                leantOn.addAll(mend.leansOn());
                batch.add(mend);
            }
        }
        return batch;
    }

    /** Lines, each with the index of the drawn line it comes from. */
    private record Lines(List<DrawnLine> lines, List<Integer> origins) {
        static Lines drawn(List<DrawnLine> lines) {
            return new Lines(List.copyOf(lines), IntStream.range(0, lines.size()).boxed().toList());
        }

        Lines after(List<Mend> mends) {
            Map<Integer, List<DrawnLine>> after = new HashMap<>();
            mends.forEach(mend -> mend.changes().forEach(change -> after.put(change.index(), change.after())));
            List<DrawnLine> mended = new ArrayList<>();
            List<Integer> from = new ArrayList<>();
            for (int i = 0; i < lines.size(); i++) {
                for (DrawnLine line : after.getOrDefault(i, List.of(lines.get(i)))) {
                    mended.add(line);
                    from.add(origins.get(i));
                }
            }
            return new Lines(mended, from);
        }
    }

    private static boolean same(DrawnLine one, DrawnLine other) {
        return one.element().equals(other.element()) && one.line() == other.line() && one.closed() == other.closed()
                && java.util.Arrays.equals(one.xy(), other.xy());
    }
}
