package saddlebar.trace.suspect;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import saddlebar.trace.statistics.TwoByTwo;

/** Which units met which level, as bit sets over the units in their order; levels that met the very same units stand together. */
final class Exposures {
    private final int units;
    private final BitSet bad;
    private final Map<BitSet, List<Level>> groups;

    Exposures(List<WorkUnit> work) {
        units = work.size();
        bad = new BitSet(units);
        Map<Level, BitSet> byLevel = new TreeMap<>();
        for (int i = 0; i < units; i++) {
            WorkUnit unit = work.get(i);
            bad.set(i, unit.bad());
            for (Map.Entry<String, String> factor : unit.factors().entrySet()) {
                byLevel.computeIfAbsent(new Level(factor.getKey(), factor.getValue()), level -> new BitSet(units)).set(i);
            }
        }
        groups = new LinkedHashMap<>();
        byLevel.forEach((level, exposed) -> {
            if (exposed.cardinality() < units) { // what everything went through cannot tell anything apart
                groups.computeIfAbsent(exposed, set -> new ArrayList<>()).add(level);
            }
        });
    }

    Map<BitSet, List<Level>> groups() {
        return groups;
    }

    /** Counts of one group among all units. */
    TwoByTwo table(BitSet exposed) {
        return table(exposed, all());
    }

    private BitSet all() {
        BitSet all = new BitSet(units);
        all.set(0, units);
        return all;
    }

    private TwoByTwo table(BitSet exposed, BitSet among) {
        BitSet in = and(exposed, among);
        long badIn = and(in, bad).cardinality();
        long badAll = and(among, bad).cardinality();
        long exposedAll = in.cardinality();
        return new TwoByTwo(badIn, exposedAll - badIn, badAll - badIn, among.cardinality() - exposedAll - (badAll - badIn));
    }

    /** Counts of one group within each combination of the others that occurs. */
    List<TwoByTwo> strata(BitSet exposed, List<BitSet> others) {
        List<BitSet> cells = List.of(all());
        for (BitSet other : others) {
            List<BitSet> finer = new ArrayList<>();
            for (BitSet cell : cells) {
                BitSet with = and(cell, other);
                BitSet without = (BitSet) cell.clone();
                without.andNot(other);
                if (!with.isEmpty()) {
                    finer.add(with);
                }
                if (!without.isEmpty()) {
                    finer.add(without);
                }
            }
            cells = finer;
        }
        return cells.stream().map(cell -> table(exposed, cell)).toList();
    }

    private static BitSet and(BitSet one, BitSet two) {
        BitSet both = (BitSet) one.clone();
        both.and(two);
        return both;
    }
}
