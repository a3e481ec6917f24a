package saddlebar.trace.suspect;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

/** Invented histories with planted causes: seeds are fixed, so that a run today is a run tomorrow. */
class SuspectSearchTest {
    private final SuspectSearch search = SuspectSearch.withDefaults();

    /** A year of printing: each unit has a screen of 12, a mix of 20, a firing of 15, a shelf place of 9, a person of 3, and a day that goes with the mix. */
    private static List<WorkUnit> year(long seed, int units, double usual, Level cause, double withCause) {
        Random random = new Random(seed);
        List<WorkUnit> work = new ArrayList<>();
        for (int i = 0; i < units; i++) {
            int mix = random.nextInt(20);
            Map<String, String> factors = Map.of("screen", "S" + random.nextInt(12), "mix", "M" + mix, "firing", "F" + random.nextInt(15), "place",
                    "P" + random.nextInt(9), "who", "N" + random.nextInt(3), "day", "D" + (random.nextInt(4) == 0 ? random.nextInt(20) : mix));
            boolean met = cause != null && cause.name().equals(factors.get(cause.factor()));
            boolean bad = random.nextDouble() < (met ? withCause : usual);
            work.add(new WorkUnit("u" + i, bad, factors, Map.of("peakC", 640 + 10 * random.nextGaussian() + (bad ? 0 : 4), "humidity", random.nextDouble())));
        }
        return work;
    }

    @Test
    void aPlantedCauseComesOutOnTop() {
        int found = 0;
        for (int seed = 0; seed < 40; seed++) {
            Findings findings = search.among(year(seed, 600, 0.04, new Level("mix", "M7"), 0.5));
            Suspect first = findings.suspects().get(0);
            found += first.standing() == Standing.LEADING && first.levels().contains(new Level("mix", "M7")) ? 1 : 0;
        }
        assertTrue(found >= 39, "found in " + found + " of 40");
    }

    @Test
    void theDayOfABadMixIsExplainedByTheMix() {
        Findings findings = search.among(year(3, 900, 0.04, new Level("mix", "M7"), 0.8));
        Suspect day = findings.suspects().stream().filter(s -> s.levels().contains(new Level("day", "D7"))).findFirst().orElseThrow();
        assertTrue(day.adjusted() < 0.05, "the day looks guilty alone: " + day.adjusted());
        assertEquals(Standing.EXPLAINED, day.standing());
        assertEquals(List.of(new Level("mix", "M7")), day.by());
    }

    @Test
    void whereNothingIsWrongNothingIsAccused() {
        int accused = 0;
        for (int seed = 100; seed < 300; seed++) {
            accused += search.among(year(seed, 400, 0.08, null, 0)).suspects().stream().anyMatch(s -> s.standing() == Standing.LEADING) ? 1 : 0;
        }
        assertTrue(accused <= 10, accused + " of 200 innocent years were accused; the bound is 5 in 100");
    }

    @Test
    void twoCausesAreBothFound() {
        Random random = new Random(11);
        List<WorkUnit> work = IntStream.range(0, 800).mapToObj(i -> {
            int screen = random.nextInt(10);
            int place = random.nextInt(8);
            double chance = 0.03 + (screen == 4 ? 0.35 : 0) + (place == 6 ? 0.3 : 0);
            return new WorkUnit("u" + i, random.nextDouble() < chance, Map.of("screen", "S" + screen, "place", "P" + place), Map.of());
        }).toList();
        List<Suspect> suspects = search.among(work).suspects();
        assertEquals(List.of(Standing.LEADING, Standing.ALSO), suspects.stream().limit(2).map(Suspect::standing).toList());
        assertEquals(java.util.Set.of(new Level("screen", "S4"), new Level("place", "P6")),
                java.util.Set.of(suspects.get(0).levels().get(0), suspects.get(1).levels().get(0)));
    }

    @Test
    void whatAlwaysCameTogetherIsOneSuspect() {
        List<WorkUnit> work = IntStream.range(0, 40).mapToObj(i -> new WorkUnit("u" + i, i % 20 == 0 || i < 9,
                Map.of("mix", i < 10 ? "12" : "3", "firing", i < 10 ? "9" : "1", "day", "same"), Map.of())).toList();
        Findings findings = search.among(work);
        assertEquals(List.of(new Level("firing", "9"), new Level("mix", "12")), findings.suspects().get(0).levels());
        assertTrue(findings.cautions().stream().anyMatch(words -> words.startsWith("firing 9 / mix 12 always came together")), findings.cautions().toString());
        assertTrue(findings.suspects().stream().noneMatch(s -> s.levels().contains(new Level("day", "same"))), "what all went through tells nothing");
    }

    @Test
    void fewExposedAreShownButNotTested() {
        List<WorkUnit> work = IntStream.range(0, 30).mapToObj(i -> new WorkUnit("u" + i, i < 2, Map.of("screen", i < 2 ? "new" : "old"), Map.of())).toList();
        Suspect shown = search.among(work).suspects().stream().filter(s -> s.levels().get(0).name().equals("new")).findFirst().orElseThrow();
        assertEquals(Standing.TOO_FEW, shown.standing());
        assertEquals(1, shown.p());
        assertEquals(2, shown.table().badExposed());
    }

    @Test
    void aMeasureThatDiffersIsNamed() {
        Findings findings = search.among(year(5, 600, 0.1, null, 0));
        assertEquals("peakC", findings.measures().get(0).name());
        assertTrue(findings.measures().get(0).differs());
        assertTrue(findings.measures().get(0).medianBad() < findings.measures().get(0).medianGood());
        assertFalse(findings.measures().get(1).differs());
    }

    @Test
    void cautionsSayWhatTheCountsCannot() {
        assertTrue(search.among(List.of()).cautions().get(0).startsWith("No flaw is recorded"));
        List<WorkUnit> allBad = IntStream.range(0, 9).mapToObj(i -> new WorkUnit("u" + i, true, Map.of("mix", "M" + i % 2), Map.of())).toList();
        assertTrue(search.among(allBad).cautions().get(0).startsWith("Every one of 9"));
        List<WorkUnit> byName = IntStream.range(0, 60)
                .mapToObj(i -> new WorkUnit("u" + i, i < 15, Map.of("who", i < 20 ? "A" : "B", "mix", "M" + i % 3), Map.of()))
                .toList();
        assertTrue(search.among(byName).cautions().stream().anyMatch(words -> words.contains("not who is at fault")));
    }
}
