package saddlebar.production.kiln;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import saddlebar.kiln.log.EnergyModel;
import saddlebar.kiln.log.KilnDrift;
import saddlebar.kiln.search.KilnLearning;
import saddlebar.kiln.shelf.ShelfPlaces;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;

/**
 * What a studio's firings say together: of each firing, of each kiln over the months, and of each piece over all its firings.
 *
 * @param firings  earliest first
 * @param kilns    by name
 * @param pieces   by label
 * @param problems worst first
 */
public record KilnHistory(List<ReviewedFiring> firings, List<KilnFacts> kilns, List<PieceHeat> pieces, List<Problem> problems) {
    private static final double SECONDS_A_DAY = 86_400;

    public KilnHistory {
        firings = List.copyOf(firings);
        kilns = List.copyOf(kilns);
        pieces = List.copyOf(pieces);
        problems = List.copyOf(problems);
    }

    /**
     * One kiln over its firings.
     *
     * @param id      in the studio; empty for firings that name none
     * @param drift   of its heat over the months, from four firings with schedule and log on
     * @param energy  kWh on peak and hours, from five firings with a meter's reading on
     * @param shelf   hot and cold places by its witnesses
     * @param lessons schedules with what the kiln did, for learning what it can
     */
    public record KilnFacts(String id, String name, int firings, Optional<KilnDrift> drift, Optional<EnergyModel> energy, ShelfPlaces shelf,
            List<KilnLearning.Lesson> lessons) {
    }

    public Optional<KilnFacts> kiln(String id) {
        return kilns.stream().filter(kiln -> kiln.id().equals(id)).findFirst();
    }

    public Optional<PieceHeat> piece(String label) {
        return pieces.stream().filter(piece -> piece.label().equals(label)).findFirst();
    }

    public Optional<ReviewedFiring> firing(String name) {
        return firings.stream().filter(one -> one.firing().name().equalsIgnoreCase(name)).findFirst();
    }

    /** @param names of the studio's kilns by id */
    static List<KilnFacts> kilns(List<ReviewedFiring> firings, Map<String, String> names) {
        Map<String, List<ReviewedFiring>> byKiln = new LinkedHashMap<>();
        names.keySet().forEach(id -> byKiln.put(id, new ArrayList<>()));
        firings.forEach(one -> byKiln.computeIfAbsent(one.firing().kilnId(), id -> new ArrayList<>()).add(one));
        List<KilnFacts> kilns = new ArrayList<>();
        byKiln.forEach((id, all) -> kilns.add(facts(id, names.getOrDefault(id, ""), all)));
        return kilns;
    }

    private static KilnFacts facts(String id, String name, List<ReviewedFiring> firings) {
        List<KilnDrift.Seen> seen = new ArrayList<>();
        List<EnergyModel.Reading> readings = new ArrayList<>();
        List<ShelfPlaces.Witness> witnesses = new ArrayList<>();
        List<KilnLearning.Lesson> lessons = new ArrayList<>();
        for (ReviewedFiring one : firings) {
            one.shiftK().ifPresent(shift -> seen.add(new KilnDrift.Seen(one.firing().when().getEpochSecond() / SECONDS_A_DAY, shift)));
            if (one.kWh().isPresent() && one.peakC().isPresent() && one.hours().isPresent()) {
                readings.add(new EnergyModel.Reading(one.peakC().get(), one.hours().get(), one.kWh().get()));
            }
            one.firing().witnesses().forEach(witness -> witnesses.add(new ShelfPlaces.Witness(one.firing().name(), witness.place(), witness.shownC())));
            if (one.firing().asRun().isPresent() && one.log().isPresent()) {
                lessons.add(new KilnLearning.Lesson(one.firing().asRun().get(), one.log().get().curve()));
            }
        }
        return new KilnFacts(id, name, firings.size(), KilnDrift.of(seen), EnergyModel.of(readings), ShelfPlaces.of(witnesses), lessons);
    }

    static List<Problem> problems(List<Problem> read, List<ReviewedFiring> firings, List<KilnFacts> kilns, List<PieceHeat> pieces) {
        List<Problem> all = new ArrayList<>(read);
        firings.forEach(one -> all.addAll(one.problems()));
        for (KilnFacts kiln : kilns) {
            String name = kiln.name().isEmpty() ? "kiln" : kiln.name();
            kiln.drift().flatMap(drift -> drift.caution(name)).ifPresent(all::add);
            kiln.shelf().cautions().forEach(caution -> all.add(Problem.of(caution.code(), caution.severity(), name + " " + caution.where(),
                    caution.message())));
        }
        Map<String, Integer> same = new LinkedHashMap<>(); // what many pieces share is told once, with how many
        Map<String, Problem> first = new LinkedHashMap<>();
        for (PieceHeat piece : pieces) {
            for (Problem problem : piece.problems()) {
                String key = problem.code() + problem.where() + problem.message();
                same.merge(key, 1, Integer::sum);
                first.putIfAbsent(key, Problem.of(problem.code(), problem.severity(), piece.label() + " " + problem.where(), problem.message()));
            }
        }
        first.forEach((key, problem) -> all.add(same.get(key) == 1
                ? problem
                : Problem.of(problem.code(), problem.severity(), problem.where() + String.format(Locale.ROOT, " and %d more pieces", same.get(key) - 1),
                        problem.message())));
        all.sort(Problem.WORST_FIRST);
        return all;
    }

    /** Whether anything wants attention. */
    public boolean wantsAttention() {
        return problems.stream().anyMatch(problem -> problem.severity() != Severity.NOTE);
    }
}
