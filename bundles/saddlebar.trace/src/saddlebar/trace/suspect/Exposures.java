package saddlebar.trace.suspect;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import saddlebar.trace.statistics.TwoByTwo;

/** Which units met which level; levels that met the very same units stand together. */
final class Exposures {
    private final int units;
    private final BitSet bad;
    private final int badCount;
    private final Map<UnitSet, List<Level>> groups;

    Exposures(List<WorkUnit> work) {
        units = work.size();
        bad = new BitSet(units);
        Map<String, Map<String, UnitSet.Gathering>> byFactor = new HashMap<>();
        for (int i = 0; i < units; i++) {
            WorkUnit unit = work.get(i);
            bad.set(i, unit.bad());
            for (Map.Entry<String, String> factor : unit.factors().entrySet()) {
                byFactor.computeIfAbsent(factor.getKey(), any -> new HashMap<>()).computeIfAbsent(factor.getValue(), any -> new UnitSet.Gathering()).add(i);
            }
        }
        badCount = bad.cardinality();
        Map<Level, UnitSet> byLevel = new TreeMap<>();
        byFactor.forEach((factor, levels) -> levels.forEach((name, met) -> byLevel.put(new Level(factor, name), met.done())));
        groups = new LinkedHashMap<>();
        byLevel.forEach((level, exposed) -> {
            if (exposed.size() < units) { // what everything went through cannot tell anything apart
                groups.computeIfAbsent(exposed, set -> new ArrayList<>()).add(level);
            }
        });
    }

    Map<UnitSet, List<Level>> groups() {
        return groups;
    }

    /** Counts of one group among all units. */
    TwoByTwo table(UnitSet exposed) {
        long badIn = 0;
        for (int unit : exposed.units()) {
            badIn += bad.get(unit) ? 1 : 0;
        }
        return new TwoByTwo(badIn, exposed.size() - badIn, badCount - badIn, units - exposed.size() - (badCount - badIn));
    }

    /** Counts of one group within each combination of the others that occurs. */
    List<TwoByTwo> strata(UnitSet exposed, List<UnitSet> others) {
        return strata(exposed, cells(others), 1 << others.size());
    }

    /** For each unit the combination of these sets that it belongs to, as bits. */
    int[] cells(List<UnitSet> others) {
        int[] cells = new int[units];
        for (int bit = 0; bit < others.size(); bit++) {
            for (int unit : others.get(bit).units()) {
                cells[unit] |= 1 << bit;
            }
        }
        return cells;
    }

    /** As {@link #strata(UnitSet, List)}, with the cells known. */
    List<TwoByTwo> strata(UnitSet exposed, int[] cells, int count) {
        long[] all = new long[count];
        long[] badAll = new long[count];
        long[] in = new long[count];
        long[] badIn = new long[count];
        for (int unit = 0; unit < units; unit++) {
            all[cells[unit]]++;
            badAll[cells[unit]] += bad.get(unit) ? 1 : 0;
        }
        for (int unit : exposed.units()) {
            in[cells[unit]]++;
            badIn[cells[unit]] += bad.get(unit) ? 1 : 0;
        }
        List<TwoByTwo> strata = new ArrayList<>();
        for (int cell = 0; cell < count; cell++) {
            if (all[cell] > 0) {
                strata.add(new TwoByTwo(badIn[cell], in[cell] - badIn[cell], badAll[cell] - badIn[cell], all[cell] - in[cell] - (badAll[cell] - badIn[cell])));
            }
        }
        return strata;
    }
}
