package saddlebar.trace.suspect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

import saddlebar.model.units.Require;
import saddlebar.trace.statistics.FalseDiscovery;
import saddlebar.trace.statistics.FisherExact;
import saddlebar.trace.statistics.RankTest;
import saddlebar.trace.statistics.StratifiedOdds;
import saddlebar.trace.statistics.TwoByTwo;

/**
 * Looks for what goes with flaws. Every level of every factor is tested against all other work by Fisher's exact test, and the chances are
 * adjusted for the number of tests. The clearest then leads; each further one is looked at again within strata of those before it
 * (Mantel-Haenszel), so that a day is not accused for the mix that was used on it. Levels that always came together stand as one suspect.
 *
 * <p>Counts show what goes together, not what causes what; and no more is said of a person than of a screen.
 * Cost: O(units x factors) for the first round, O(units) for each pair that is looked at again.
 *
 * @param falseShare share of innocent ones allowed in the list, above 0 to 0.5; 0.05 by default
 * @param fewest     exposed units below which a level is shown but not tested, at least 1; 3 by default
 */
public record SuspectSearch(double falseShare, int fewest) {
    /** Strata grow with each suspect held fixed; more than so many leave nothing to compare. */
    private static final int MOST_HELD = 6;
    private static final Comparator<Suspect> CLEAREST = Comparator.comparingDouble(Suspect::p).thenComparing(s -> -s.table().ochiai())
            .thenComparing(s -> s.levels().get(0));

    public SuspectSearch {
        Require.within("falseShare", falseShare, Double.MIN_NORMAL, 0.5);
        Require.within("fewest", fewest, 1, Integer.MAX_VALUE);
    }

    public static SuspectSearch withDefaults() {
        return new SuspectSearch(0.05, 3);
    }

    public Findings among(List<WorkUnit> work) {
        int bad = (int) work.stream().filter(WorkUnit::bad).count();
        Exposures exposures = new Exposures(work);
        Map<Suspect, UnitSet> sets = new HashMap<>();
        List<Suspect> tested = new ArrayList<>();
        List<Suspect> few = new ArrayList<>();
        for (Map.Entry<UnitSet, List<Level>> group : exposures.groups().entrySet()) {
            Suspect suspect = first(group.getValue(), exposures, group.getKey());
            (suspect.standing() == Standing.TOO_FEW ? few : tested).add(suspect);
            sets.put(suspect, group.getKey());
        }
        double[] adjusted = FalseDiscovery.adjust(tested.stream().mapToDouble(Suspect::p).toArray());
        for (int i = 0; i < adjusted.length; i++) {
            Suspect with = tested.get(i).adjusted(adjusted[i]);
            sets.put(with, sets.get(tested.get(i)));
            tested.set(i, with);
        }
        tested.sort(CLEAREST);
        few.sort(Comparator.comparing((Suspect s) -> -s.table().ochiai()).thenComparing(s -> s.levels().get(0)));
        List<Suspect> all = new ArrayList<>(stand(tested, sets, exposures));
        all.addAll(few);
        List<Measured> measures = measures(work);
        return new Findings(work.size(), bad, all, measures, Cautions.of(work.size(), bad, all));
    }

    private Suspect first(List<Level> levels, Exposures exposures, UnitSet exposed) {
        TwoByTwo table = exposures.table(exposed);
        boolean enough = table.exposed() >= fewest && table.total() - table.exposed() >= fewest;
        return new Suspect(levels, table, enough ? FisherExact.moreThanChance(table) : 1, 1, enough ? Standing.CLEAR : Standing.TOO_FEW,
                Optional.empty(), List.of());
    }

    private List<Suspect> stand(List<Suspect> sorted, Map<Suspect, UnitSet> sets, Exposures exposures) {
        List<Suspect> guilty = new ArrayList<>(sorted.stream().filter(s -> s.adjusted() <= falseShare).toList());
        List<Suspect> done = new ArrayList<>();
        List<Suspect> held = new ArrayList<>();
        if (!guilty.isEmpty()) {
            Suspect lead = guilty.remove(leader(guilty, sets, exposures));
            done.add(lead.standing(Standing.LEADING, Optional.empty(), List.of()));
            held.add(lead);
        }
        while (!guilty.isEmpty()) {
            done.add(next(guilty, held, sets, exposures, sorted.size()));
        }
        sorted.stream().filter(s -> s.adjusted() > falseShare).forEach(done::add);
        return done;
    }

    /** The clearest, unless another one takes all its guilt away and keeps its own. */
    private int leader(List<Suspect> guilty, Map<Suspect, UnitSet> sets, Exposures exposures) {
        int lead = 0;
        for (int other = 1; other < guilty.size(); other++) {
            UnitSet leads = sets.get(guilty.get(lead));
            UnitSet others = sets.get(guilty.get(other));
            StratifiedOdds leadWithin = StratifiedOdds.of(exposures.strata(leads, List.of(others)));
            StratifiedOdds otherWithin = StratifiedOdds.of(exposures.strata(others, List.of(leads)));
            if (leadWithin.informative() > 0 && !grave(leadWithin, falseShare) && grave(otherWithin, falseShare)) {
                lead = other;
            }
        }
        return lead;
    }

    private static boolean grave(StratifiedOdds odds, double most) {
        return odds.p() <= most && odds.oddsRatio().value() > 1;
    }

    /** Of those left, the one that is clearest with the held ones fixed; when none is left that way, the clearest of all. */
    private Suspect next(List<Suspect> guilty, List<Suspect> held, Map<Suspect, UnitSet> sets, Exposures exposures, int tested) {
        double most = falseShare * (held.size() + 1) / tested; // as the step-up rule asks of the next in the list
        int[] cells = exposures.cells(held.stream().map(sets::get).toList());
        List<Level> by = held.stream().flatMap(s -> s.levels().stream()).toList();
        int best = -1;
        List<StratifiedOdds> within = guilty.stream().map(s -> StratifiedOdds.of(exposures.strata(sets.get(s), cells, 1 << held.size()))).toList();
        for (int i = 0; i < guilty.size(); i++) {
            if (grave(within.get(i), most) && (best < 0 || within.get(i).p() < within.get(best).p())) {
                best = i;
            }
        }
        if (best >= 0 && held.size() < MOST_HELD) {
            Suspect found = guilty.remove(best);
            held.add(found);
            return found.standing(Standing.ALSO, Optional.of(within.get(best)), List.of());
        }
        StratifiedOdds odds = within.get(0);
        return guilty.remove(0).standing(odds.informative() == 0 ? Standing.INSEPARABLE : Standing.EXPLAINED, Optional.of(odds), by);
    }

    private List<Measured> measures(List<WorkUnit> work) {
        List<Measured> found = new ArrayList<>();
        TreeSet<String> names = new TreeSet<>();
        work.forEach(unit -> names.addAll(unit.measures().keySet()));
        for (String name : names) {
            double[] bad = values(work, name, true);
            double[] good = values(work, name, false);
            if (bad.length >= fewest && good.length >= fewest) {
                found.add(new Measured(name, bad.length, good.length, median(bad), median(good), RankTest.of(bad, good), 1, false));
            }
        }
        double[] adjusted = FalseDiscovery.adjust(found.stream().mapToDouble(m -> m.test().p()).toArray());
        for (int i = 0; i < adjusted.length; i++) {
            Measured m = found.get(i);
            found.set(i, new Measured(m.name(), m.bad(), m.good(), m.medianBad(), m.medianGood(), m.test(), adjusted[i], adjusted[i] <= falseShare));
        }
        found.sort(Comparator.comparingDouble((Measured m) -> m.test().p()).thenComparing(Measured::name));
        return found;
    }

    private static double[] values(List<WorkUnit> work, String name, boolean bad) {
        return work.stream().filter(unit -> unit.bad() == bad && unit.measures().containsKey(name)).mapToDouble(unit -> unit.measures().get(name))
                .toArray();
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }
}
