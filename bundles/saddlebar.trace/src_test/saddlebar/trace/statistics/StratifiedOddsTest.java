package saddlebar.trace.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

class StratifiedOddsTest {
    /**
     * Graduate admissions at Berkeley, autumn 1973, departments A to F: admitted and rejected men, admitted and rejected women (Bickel, Hammel
     * and O'Connell, Science 187, 1975; the six departments as published with R's UCBAdmissions). Men seem favoured over all; within
     * departments they are not: Simpson's paradox.
     */
    private static final List<TwoByTwo> BERKELEY = List.of(new TwoByTwo(512, 313, 89, 19), new TwoByTwo(353, 207, 17, 8),
            new TwoByTwo(120, 205, 202, 391), new TwoByTwo(138, 279, 131, 244), new TwoByTwo(53, 138, 94, 299), new TwoByTwo(22, 351, 24, 317));

    @Test
    void berkeleyWithinDepartments() {
        StratifiedOdds corrected = StratifiedOdds.of(BERKELEY);
        assertEquals(0.90470, corrected.oddsRatio().value(), 5e-6);
        assertEquals(1.42695, corrected.chiSquare(), 5e-6);
        assertEquals(0.23226, corrected.p(), 5e-6);
        StratifiedOdds plain = StratifiedOdds.of(BERKELEY, false);
        assertEquals(1.52461, plain.chiSquare(), 5e-6);
        assertEquals(0.21692, plain.p(), 5e-6);
        assertEquals(0.003, corrected.heterogeneityP(), 0.0005);
        // R's mantelhaen.test prints 0.7719074 1.0603298 as the interval of this table (from memory)
        assertEquals(0.77191, corrected.oddsRatio().low(), 1e-4);
        assertEquals(1.06033, corrected.oddsRatio().high(), 1e-4);
    }

    @Test
    void berkeleyOverAll() {
        assertEquals(1.841, 1198.0 * 1278 / (1493.0 * 557), 5e-4);
        assertEquals(1.841, StratifiedOdds.of(List.of(new TwoByTwo(1198, 1493, 557, 1278))).oddsRatio().value(), 5e-4);
    }

    /** Penicillin in rabbits at five doses, cured and died with no delay and with a delay of 1.5 h (Agresti, Categorical Data Analysis, 1990). */
    @Test
    void rabbits() {
        StratifiedOdds rabbits = StratifiedOdds.of(List.of(new TwoByTwo(0, 6, 0, 5), new TwoByTwo(3, 3, 0, 6), new TwoByTwo(6, 0, 2, 4),
                new TwoByTwo(5, 1, 6, 0), new TwoByTwo(2, 0, 5, 0)));
        assertEquals(7, rabbits.oddsRatio().value(), 1e-9);
        assertEquals(3.9286, rabbits.chiSquare(), 5e-5);
        assertEquals(0.0475, rabbits.p(), 5e-5);
        assertEquals(3, rabbits.informative());
    }

    @Test
    void strataWithoutVariationSayNothing() {
        StratifiedOdds none = StratifiedOdds.of(List.of(new TwoByTwo(0, 4, 0, 9), new TwoByTwo(3, 0, 0, 0)));
        assertEquals(0, none.informative());
        assertEquals(1, none.p());
        assertTrue(Double.isNaN(none.oddsRatio().value()));
    }
}
