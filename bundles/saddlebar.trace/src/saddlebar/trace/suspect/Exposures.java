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

    /** Counts of one group within and without another. */
    List<TwoByTwo> strata(UnitSet exposed, UnitSet other) {
        int[] one = exposed.units();
        int[] two = other.units();
        long both = 0;
        long badBoth = 0;
        for (int i = 0, k = 0; i < one.length && k < two.length;) {
            if (one[i] == two[k]) {
                both++;
                badBoth += bad.get(one[i]) ? 1 : 0;
                i++;
                k++;
            } else if (one[i] < two[k]) {
                i++;
            } else {
                k++;
            }
        }
        TwoByTwo of = table(exposed);
        TwoByTwo with = table(other);
        long badOther = with.badExposed() - badBoth;
        return List.of(new TwoByTwo(badBoth, both - badBoth, badOther, with.exposed() - both - badOther),
                new TwoByTwo(of.badExposed() - badBoth, of.goodExposed() - (both - badBoth), of.badOther() - badOther,
                        of.goodOther() - (with.exposed() - both - badOther)));
    }

    /** The combinations of some sets that occur, for looking at many groups within them. */
    Cells cells(List<UnitSet> others) {
        int[] cellOf = new int[units];
        for (int bit = 0; bit < others.size(); bit++) {
            for (int unit : others.get(bit).units()) {
                cellOf[unit] |= 1 << bit;
            }
        }
        long[] all = new long[1 << others.size()];
        long[] badAll = new long[all.length];
        for (int unit = 0; unit < units; unit++) {
            all[cellOf[unit]]++;
            badAll[cellOf[unit]] += bad.get(unit) ? 1 : 0;
        }
        return new Cells(cellOf, all, badAll);
    }

    /** For each unit the combination that it belongs to, as bits, and what each combination holds. */
    final class Cells {
        private final int[] cellOf;
        private final long[] all;
        private final long[] badAll;

        private Cells(int[] cellOf, long[] all, long[] badAll) {
            this.cellOf = cellOf;
            this.all = all;
            this.badAll = badAll;
        }

        List<TwoByTwo> strata(UnitSet exposed) {
            long[] in = new long[all.length];
            long[] badIn = new long[all.length];
            for (int unit : exposed.units()) {
                in[cellOf[unit]]++;
                badIn[cellOf[unit]] += bad.get(unit) ? 1 : 0;
            }
            List<TwoByTwo> strata = new ArrayList<>();
            for (int cell = 0; cell < all.length; cell++) {
                if (all[cell] > 0) {
                    strata.add(new TwoByTwo(badIn[cell], in[cell] - badIn[cell], badAll[cell] - badIn[cell],
                            all[cell] - in[cell] - (badAll[cell] - badIn[cell])));
                }
            }
            return strata;
        }
    }
}
