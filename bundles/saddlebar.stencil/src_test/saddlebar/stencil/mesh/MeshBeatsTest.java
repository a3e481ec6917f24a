package saddlebar.stencil.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected figures were worked out apart from this code, in another language, from the formulas of the sources. */
class MeshBeatsTest {
    private static final MeshBeats BEATS_220 = new MeshBeats(new Mesh(220, 48));

    /** Amidror's frequency vectors: slowest beats of a mesh of 220 threads an inch. */
    @ParameterizedTest
    @CsvSource({"40, 0, 0, 5, 0, 1, 20.00, 1.27", "40, 22.5, 2, 5, 0, 1, 5.305, 4.79", "40, 45, 4, 4, 0, 1, 6.274, 4.05",
            "40, 15, 1, 5, 0, 1, 21.06, 1.21", "45, 22.5, 2, 5, 0, 1, 22.51, 1.13", "40, 7.5, 5, -6, 1, -1, 12.61, 2.01",
            "45, 0, 0, 5, 0, 1, 5.000, 5.08", "50, 45, 3, 3, 0, 1, 7.868, 3.23", "55, 15, 1, 4, 0, 1, 7.749, 3.28"})
    void slowest(double lpi, double angle, int i, int j, int u, int v, double cyclesPerInch, double periodMm) {
        MeshBeat beat = BEATS_220.slowest(lpi, angle);
        assertEquals(List.of(i, j, u, v), List.of(beat.i(), beat.j(), beat.u(), beat.v()));
        assertEquals(cyclesPerInch, beat.cyclesPerInch(), 0.006);
        assertEquals(periodMm, beat.periodMm(), 0.006);
    }

    @Test
    void lockedRulings() {
        for (double lpi : new double[] {44, 55}) {
            MeshBeat beat = BEATS_220.slowest(lpi, 0);
            assertTrue(beat.locked());
            assertEquals(0, beat.cyclesPerInch(), 1e-9);
            assertEquals(Double.POSITIVE_INFINITY, beat.periodMm());
        }
    }

    @Test
    void contrastAt30Percent() {
        assertEquals(0.0138, BEATS_220.slowest(40, 22.5).contrast(), 5e-5);
        assertEquals(0.0334, BEATS_220.slowest(40, 45).contrast(), 5e-5);
        assertTrue(BEATS_220.slowest(40, 22.5).visible(new Eye(2)));
        assertFalse(BEATS_220.slowest(40, 22.5).visible(new Eye(20)));
    }

    /** Worst over tones, counts and distances; order to which the reference was given: the third decimal. */
    @ParameterizedTest
    @CsvSource({"0, .120", "7.5, .105", "15, .106", "22.5, .097", "30, .047", "45, .065"})
    void fortyLinesOn220(double angle, double score) {
        assertEquals(score, BEATS_220.score(40, angle), 6e-4);
    }

    @Test
    void turningBothChangesNothing() {
        assertEquals(BEATS_220.score(40, 10), new MeshBeats(new Mesh(220, 48), 33).score(40, 43), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"156, 64, 34.29, 7.5, .014, 35.29, 7.5, .015, 33.33, 20, .019", "220, 48, 32.43, 12.5, .016, 48, 5, .016, 36.36, 25, .018",
            "280, 34, 42.86, 32.5, .000, 41.38, 12.5, .012, 42.86, 5, .013"})
    void betterRulings(double count, double thread, double lpi1, double angle1, double score1, double lpi2, double angle2, double score2,
            double lpi3, double angle3, double score3) {
        List<ScoredRuling> better = new MeshBeats(new Mesh(count, thread)).better(1200, 4);
        assertEquals(4, better.size());
        assertRuling(lpi1, angle1, score1, better.get(0));
        assertRuling(lpi2, angle2, score2, better.get(1));
        assertRuling(lpi3, angle3, score3, better.get(2));
    }

    private static void assertRuling(double lpi, double angle, double score, ScoredRuling ruling) {
        assertEquals(lpi, ruling.lpi(), 0.005);
        assertEquals(angle, ruling.angleDeg());
        assertEquals(score, ruling.score(), 6e-4);
    }

    @Test
    void coarseMeshesHaveRulingsToo() {
        assertTrue(new MeshBeats(new Mesh(110, 80)).better(1200, 3).stream().allMatch(r -> r.lpi() <= 27.5 && r.lpi() >= 110 / 7.0));
    }

    /** Mannos and Sakrison 1974, evaluated from the formula. */
    @Test
    void eye() {
        assertEquals(0.31596, Eye.sensitivity(1), 5e-6);
        assertEquals(0.81053, Eye.sensitivity(4), 5e-6);
        assertEquals(0.98078, Eye.sensitivity(8), 5e-6);
        assertEquals(0.69075, Eye.sensitivity(16), 5e-6);
        assertEquals(0.18698, Eye.sensitivity(30), 5e-6);
        assertEquals(0.00448, Eye.sensitivity(60), 5e-6);
        assertEquals(0.98088, Eye.sensitivity(7.89), 5e-6);
        assertTrue(Eye.sensitivity(7.89) >= Eye.sensitivity(7.88) - 1e-7 && Eye.sensitivity(7.89) >= Eye.sensitivity(7.90) - 1e-7);
        assertEquals(0.15, Eye.sensitivity(0.1));
        assertEquals(34.907, new Eye(2).cyclesPerDegree(1), 5e-4);
        assertEquals(8, new Eye(2).cyclesPerDegree(1 / 4.363), 1e-3);
        assertEquals(30, new Eye(2).cyclesPerDegree(1 / 1.164), 0.02);
    }

    /** Abramowitz and Stegun, Handbook of Mathematical Functions, table 9.1. */
    @Test
    void bessel() {
        assertEquals(0.4400505857, Bessel.j1(1), 1e-10);
        assertEquals(0.5767248078, Bessel.j1(2), 1e-10);
        assertEquals(-0.3275791376, Bessel.j1(5), 1e-10);
        assertEquals(0.0434727462, Bessel.j1(10), 1e-10);
        assertEquals(-0.0, Bessel.j1(0), 1e-15);
    }

    /** Closed form: 1200/45 = 80/3, 1200/40 = 30, 1200/35 = 240/7. */
    @Test
    void banding() {
        GridBanding bands = GridBanding.of(1200, 45);
        assertEquals(new GridBanding(80, 3, 1200), bands);
        assertEquals(1.6933, bands.periodMm(), 5e-5);
        assertEquals(new GridBanding(30, 1, 1200), GridBanding.of(1200, 40));
        assertTrue(GridBanding.of(1200, 40).even());
        assertEquals(new GridBanding(240, 7, 1200), GridBanding.of(1200, 35));
        assertEquals(new GridBanding(28, 1, 1200), GridBanding.of(1200, 42.857));
        assertEquals(new GridBanding(28, 1, 1200), GridBanding.of(1200, 1200 / 28.0));
    }
}
